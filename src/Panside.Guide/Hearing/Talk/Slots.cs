using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Talk;

/// <summary>Which amounts a kind of meaning takes: by the rows of readings and deeds, and of a time for what lasts.</summary>
internal static class Slots
{
    /// <summary>Whether a kind can stand with amounts: what needs one has one that fits, what takes none has none.</summary>
    public static bool Take(string kind, IReadOnlyList<SpokenAmount> amounts) => Slot(kind) switch
    {
        (true, _, _) => true,
        (_, { } dimension, var isNeeded) => amounts.Count == 0 ? !isNeeded : amounts.Count == 1 && amounts[0].Fits(dimension),
        (_, null, true) => amounts.Any(amount => amount.Hint == AmountHint.Clock || amount.Unit is null),
        _ => amounts.Count == 0,
    };

    /// <summary>The amount that a kind makes use of; null where it uses none.</summary>
    public static SpokenAmount? Amount(string kind, IReadOnlyList<SpokenAmount> amounts) => Slot(kind) switch
    {
        (_, { } dimension, _) => amounts.FirstOrDefault(amount => amount.Fits(dimension)),
        (false, null, true) => OfClock(amounts),
        _ => null,
    };

    /// <summary>What a kind takes: whatever stands there; a dimension, and whether it is needed; a time of day where needed without one.</summary>
    private static (bool IsAny, Dimension? Dimension, bool IsNeeded) Slot(string kind)
    {
        var parts = kind.Split(':');
        return parts[0] switch
        {
            "reading" => (false, KnownReadings.BuiltIn.Find(parts[1])?.Kind, true),
            "did" => (false, DeedName.FromCode(parts[1])?.Kind, false),
            "added" => (false, Dimension.Volume, true),
            "away" => (false, Dimension.Time, false),
            "gone-by" => (false, null, true),
            "ask" => parts[1] == "if-away" ? (true, Dimension.Time, false) : (true, null, false),
            "none" or "cry" or "define" or "measure" or "unknown" => (true, null, false),
            _ => (false, null, false),
        };
    }

    /// <summary>A time of day: as said so, or as one or two bare numbers, <c>ten thirty</c>.</summary>
    private static SpokenAmount? OfClock(IReadOnlyList<SpokenAmount> amounts)
    {
        if (amounts.FirstOrDefault(amount => amount.Hint == AmountHint.Clock) is { } clock)
        {
            return clock;
        }

        var numbers = amounts.Where(amount => amount.Unit is null).ToList();
        if (numbers is [{ Value: >= 100 and < 2400 } run] && run.Value == double.Truncate(run.Value) && run.Value % 100 < 60)
        {
            // Gone by 2230.
            return new((double.Truncate(run.Value / 100) * 60) + (run.Value % 100), null, AmountHint.Clock) { IsEither = run.Value is >= 100 and < 1300 };
        }

        return numbers is [var hour, ..] && hour.Value is >= 1 and <= 24
            ? new((hour.Value * 60) + (numbers is [_, var minute] && minute.Value is > 0 and < 60 ? minute.Value : 0), null, AmountHint.Clock) { IsEither = hour.Value <= 12 }
            : null;
    }
}
