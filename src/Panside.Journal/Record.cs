using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>A line of a record.</summary>
/// <param name="Number">Its number in the file, from 1.</param>
/// <param name="Text">The line as written.</param>
public readonly record struct RecordedLine(int Number, string Text);

/// <summary>One line in with the answers that the record holds for it.</summary>
/// <param name="LineNumber">The number of its first line in the file, from 1.</param>
/// <param name="Raw">The line in as written; null where only a refusal was kept.</param>
/// <param name="Answers">The lines out.</param>
/// <param name="Ready">The mark after the last answer; null where it is missing.</param>
public sealed record Exchange(int LineNumber, string? Raw, IReadOnlyList<RecordedLine> Answers, RecordedLine? Ready)
{
    /// <summary>The line in; null where only a refusal was kept.</summary>
    public LineIn? Line => Raw is null ? null : LineReader.Read(Raw);

    /// <summary>Whether the mark after the last answer is there.</summary>
    public bool IsComplete => Ready is not null;

    /// <summary>The number of its last line.</summary>
    public int LastNumber => Ready?.Number ?? (Answers.Count > 0 ? Answers[^1].Number : LineNumber);
}

/// <summary>A record read into exchanges. Lines that are damaged are told by number; the rest is kept.</summary>
/// <param name="Exchanges">The exchanges in order.</param>
/// <param name="Header">What the session runs on; null where the record has no session line.</param>
/// <param name="Damaged">The numbers of the lines that could not be read.</param>
public sealed record Record(IReadOnlyList<Exchange> Exchanges, SessionHeader? Header, IReadOnlyList<int> Damaged)
{
    /// <summary>Reads lines.</summary>
    public static Record Of(IReadOnlyList<string> lines)
    {
        var exchanges = new List<Exchange>();
        var damaged = new List<int>();
        SessionHeader? header = null;
        (int Number, string? Raw, List<RecordedLine> Answers)? open = null;
        var (sequence, damagedSince) = (0, false);
        void Close(RecordedLine? ready)
        {
            if (open is { } one)
            {
                exchanges.Add(new(one.Number, one.Raw, one.Answers, ready));
            }

            (open, damagedSince) = (null, false);
        }

        for (var number = 1; number <= lines.Count; number++)
        {
            var text = lines[number - 1];
            var shape = LineShape.Of(text);
            header ??= shape.Header;

            // Somebody may have said what only the assistant says: a line in, heard and refused. After a whole exchange the
            // assistant speaks first only to refuse a line that was not kept, or where lines before it are damaged.
            var isSaid = open is null && !damagedSince && shape.Kind switch
            {
                LineKind.Ready => true,
                LineKind.Out => !(shape.Key == "refused" && shape.Sequence == sequence + 1),
                _ => false,
            };
            switch (isSaid ? LineKind.In : shape.Kind)
            {
                case LineKind.In:
                    Close(null);
                    open = (number, text, []);
                    break;
                case LineKind.Out:
                    open ??= (number, null, []);
                    open.Value.Answers.Add(new(number, text));
                    sequence = shape.Sequence;
                    break;
                case LineKind.Ready:
                    Close(new(number, text));
                    break;
                default:
                    damaged.Add(number);
                    damagedSince = true;
                    break;
            }
        }

        Close(null);
        return new(exchanges, header, damaged);
    }
}
