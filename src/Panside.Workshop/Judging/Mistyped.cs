using Panside.Guide.Lines;

namespace Panside.Workshop.Judging;

/// <summary>How the assistant took what was typed.</summary>
internal enum Treatment
{
    /// <summary>It asked whether that is so.</summary>
    Questioned,

    /// <summary>It said why that cannot be, or that it did not understand.</summary>
    Refused,

    /// <summary>It acted on a warning of danger at once, and told what was expected and how to take it back.</summary>
    Warned,

    /// <summary>It took it.</summary>
    Taken,
}

/// <summary>One text that was typed.</summary>
/// <param name="Kind">The kind of slip; null where it is what was read.</param>
/// <param name="Text">The text.</param>
/// <param name="Reading">The reading that it was understood as; null where it was none.</param>
/// <param name="Off">Standard deviations over what was expected; null where nothing was, or it was no reading.</param>
/// <param name="Treatment">How it was taken.</param>
internal sealed record Mistyped(string? Kind, string Text, string? Reading, double? Off, Treatment Treatment)
{
    /// <summary>A value so many standard deviations off is to be questioned.</summary>
    public const double Beyond = 6;

    /// <summary>Whether it lies beyond them.</summary>
    public bool IsBeyond => Off is { } off && double.Abs(off) > Beyond;

    /// <summary>How answers treat a line.</summary>
    public static Treatment Of(IReadOnlyList<LineOut> answers)
    {
        if (answers.Any(answer => answer is QuestionLine))
        {
            return Treatment.Questioned;
        }

        if (answers.Any(answer => answer is RefusedLine))
        {
            return Treatment.Refused;
        }

        return answers.Any(answer => answer is ToldLine told && told.Text.Contains("'undo'", StringComparison.Ordinal))
            ? Treatment.Warned
            : Treatment.Taken;
    }
}
