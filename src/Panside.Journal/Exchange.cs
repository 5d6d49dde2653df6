using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>A line of a record.</summary>
/// <param name="Number">Its number in the file, from 1.</param>
/// <param name="Text">The line as written.</param>
public readonly record struct RecordedLine(int Number, string Text);

/// <summary>One line in with the answers that the record holds for it.</summary>
/// <param name="LineNumber">The number of its first line in the file, from 1.</param>
/// <param name="Text">The line in as it stands in the record; null where only a refusal was kept.</param>
/// <param name="Answers">The lines out.</param>
/// <param name="Ready">The mark after the last answer; null where it is missing.</param>
public sealed record Exchange(int LineNumber, string? Text, IReadOnlyList<RecordedLine> Answers, RecordedLine? Ready)
{
    /// <summary>The line in as it was said; null where only a refusal was kept.</summary>
    public string? Raw => Text is null ? null : KeptLine.Said(Text);

    /// <summary>The line in; null where only a refusal was kept.</summary>
    public LineIn? Line => Text is null
        ? null
        : KeptLine.Read(Text, () => Answers.Count > 0 && !Answers.Any(answer => LineShape.Of(answer.Text).Key == "refused"));

    /// <summary>Whether the mark after the last answer is there.</summary>
    public bool IsComplete => Ready is not null;

    /// <summary>The number of its last line.</summary>
    public int LastNumber => Ready?.Number ?? (Answers.Count > 0 ? Answers[^1].Number : LineNumber);
}
