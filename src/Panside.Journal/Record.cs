using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>A record read into exchanges. Lines that are damaged are told by number; the rest is kept.</summary>
/// <param name="Exchanges">The exchanges in order.</param>
/// <param name="Header">What the session runs on; null where the record has no session line.</param>
/// <param name="Damaged">The numbers of the lines that could not be read.</param>
public sealed record Record(IReadOnlyList<Exchange> Exchanges, SessionHeader? Header, IReadOnlyList<int> Damaged)
{
    /// <summary>The first lines, of which a damaged session line may be one.</summary>
    public IReadOnlyList<string> Head { get; init; } = [];

    /// <summary>Reads lines.</summary>
    public static Record Of(IEnumerable<string> lines)
    {
        var reader = new Exchanges();
        IReadOnlyList<Exchange> all = [.. reader.Of(lines)];
        return new(all, reader.Header, reader.Damaged) { Head = reader.Head };
    }
}
