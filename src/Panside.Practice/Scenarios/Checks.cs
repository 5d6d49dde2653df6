using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Practice.Scenarios;

/// <summary>What a person is asked to try in a practice: one at a time in their order, whatever was tried unasked left out.</summary>
/// <param name="all">All of them, in their order.</param>
public sealed class Checks(IReadOnlyList<Check> all)
{
    private readonly HashSet<Check> _done = [];

    /// <summary>The next one with its number, as it is told; null where none is left.</summary>
    public string? Cue => all.Index().Where(one => !_done.Contains(one.Item))
        .Select(one => $"{one.Index + 1} of {all.Count}, {one.Item.Name}: {one.Item.Text}").FirstOrDefault();

    /// <summary>How many were tried, and what was not; null where there are none.</summary>
    public string? Told => all.Count == 0 ? null
        : _done.Count == all.Count ? $"All {all.Count} checks were tried."
        : $"{_done.Count} of {all.Count} checks were tried; left out: {string.Join(", ", all.Where(one => !_done.Contains(one)).Select(one => one.Name))}.";

    /// <summary>A line was heard.</summary>
    /// <returns>Whether another one is next.</returns>
    public bool Hear(SessionState before, SessionState after, IReadOnlyList<LineOut> answers)
    {
        var next = Cue;
        _done.UnionWith(all.Where(one => one.IsSeen(before, after, answers)));
        return Cue != next;
    }
}
