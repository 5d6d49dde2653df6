using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>
/// Makes exchanges of a record's lines, one after the other, so that no more of it is in memory than one of them. Lines that are
/// damaged are told by number; the rest is kept.
/// </summary>
/// <param name="number">Lines before the first one.</param>
/// <param name="sequence">The number of the last line out before it.</param>
/// <param name="damaged">Damaged lines among those before.</param>
public sealed class Exchanges(int number = 0, int sequence = 0, IEnumerable<int>? damaged = null)
{
    /// <summary>In so many lines a session line stands, and the first answers to show that it is a record at all.</summary>
    public const int HeadLines = 64;

    private readonly List<int> _damaged = [.. damaged ?? []];
    private readonly List<string> _head = [];

    /// <summary>What the session runs on; null where no session line was met so far.</summary>
    public SessionHeader? Header { get; private set; }

    /// <summary>The first lines, of which a damaged session line may be one.</summary>
    public IReadOnlyList<string> Head => _head;

    /// <summary>The numbers of the lines that could not be read so far.</summary>
    public IReadOnlyList<int> Damaged => _damaged;

    /// <summary>Lines so far.</summary>
    public int Number { get; private set; } = number;

    /// <summary>Reads lines.</summary>
    public IEnumerable<Exchange> Of(IEnumerable<string> lines)
    {
        (int Number, string? Text, List<RecordedLine> Answers)? open = null;
        var (last, damagedSince) = (sequence, false);
        foreach (var text in lines)
        {
            Number++;
            var shape = LineShape.Of(text);
            Header ??= shape.Header;
            if (_head.Count < HeadLines)
            {
                _head.Add(text);
            }

            // Somebody may have said what only the assistant says: a line in, heard and refused. After a whole exchange the
            // assistant speaks first only to refuse a line that was not kept, or where lines before it are damaged.
            var isSaid = open is null && !damagedSince && shape.Kind switch
            {
                LineKind.Ready => true,
                LineKind.Out => !(shape.Key == "refused" && shape.Sequence == last + 1),
                _ => false,
            };
            switch (isSaid ? LineKind.In : shape.Kind)
            {
                case LineKind.In:
                    if (open is { } before)
                    {
                        yield return new(before.Number, before.Text, before.Answers, null);
                    }

                    (open, damagedSince) = ((Number, text, []), false);
                    break;
                case LineKind.Out:
                    open ??= (Number, null, []);
                    open.Value.Answers.Add(new(Number, text));
                    last = shape.Sequence;
                    break;
                case LineKind.Ready:
                    if (open is { } whole)
                    {
                        yield return new(whole.Number, whole.Text, whole.Answers, new(Number, text));
                    }

                    (open, damagedSince) = (null, false);
                    break;
                default:
                    _damaged.Add(Number);
                    damagedSince = true;
                    break;
            }
        }

        if (open is { } end)
        {
            yield return new(end.Number, end.Text, end.Answers, null);
        }
    }
}
