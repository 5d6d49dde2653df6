using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Screen.Painting;

/// <summary>
/// Forecasts as one says them: what is likely, and how far it may come otherwise, never one without the other (O15). Each in as many ways
/// as a row may have room for, the longest first.
/// </summary>
internal static class Saying
{
    /// <summary>From so many minutes on, hours are told.</summary>
    private const double InHours = 100;

    /// <summary>Something that comes: <c>Draw in about 15 min, not before 5 min</c>.</summary>
    /// <param name="what">What comes.</param>
    /// <param name="likely">Minutes until then, most likely.</param>
    /// <param name="soonest">The same, at the soonest.</param>
    public static IReadOnlyList<string> NotBefore(string what, double likely, double soonest)
    {
        if (likely < 1)
        {
            return [$"{what} about now"];
        }

        var (time, bound) = Times(likely, soonest);
        return soonest < 1 ? [$"{what} in about {time}, or any moment now", $"{what} in {time}, or any moment"]
            : bound == Number(likely) ? [$"{what} in about {time}"]
            : [$"{what} in about {time}, not before {bound} {time.Split(' ')[^1]}", $"{what} in {time}, soonest {bound}"];
    }

    /// <summary>Something that comes to an end: <c>Boil stops in about 15 min, 20 at most</c>.</summary>
    /// <param name="what">What ends.</param>
    /// <param name="likely">Minutes until then, most likely.</param>
    /// <param name="latest">The same, at the latest.</param>
    public static IReadOnlyList<string> AtMost(string what, double likely, double latest)
    {
        if (latest < 1)
        {
            return [$"{what} about now"];
        }

        if (likely < 1)
        {
            return [$"{what} about now, in {Times(latest, latest).Time} at most", $"{what} soon, {Times(latest, latest).Time} at most"];
        }

        var (time, bound) = Times(likely, latest);
        return bound == Number(likely)
            ? [$"{what} in about {time}"]
            : [$"{what} in about {time}, {bound} at most", $"{what} in {time}, {bound} at most"];
    }

    /// <summary>Water that leaves: <c>2 gal will still boil away, 2.5 at most</c>.</summary>
    /// <param name="likely">So much, most likely.</param>
    /// <param name="most">So much at the most.</param>
    /// <param name="unit">The unit of both.</param>
    /// <param name="isFiring">Whether wood still goes in, or a burner burns: then this is what would be, and is said so.</param>
    /// <param name="without">What would have to be for it, as it is said on this rig.</param>
    public static IReadOnlyList<string> BoilsAway(double likely, double most, Unit unit, bool isFiring, string without = "With no more wood")
    {
        var amount = Amount.Shown(new(likely, unit));
        var bound = most <= likely ? "hardly more" : $"{Number(most)} at most";
        return likely <= 0 ? [$"Hardly any more will boil away, {Amount.Shown(new(most, unit))} at most", $"Hardly any boils away, {Number(most)} at most"]
            : isFiring ? [$"{without} {amount} will still boil away, {bound}", $"Heat left boils off {amount}, {bound}", $"{amount} can boil off, {bound}"]
            : [$"{amount} will still boil away, {bound}", $"{amount} still {(likely <= 1 ? "boils" : "boil")} away, {bound}", $"{amount} to boil away, {bound}"];
    }

    /// <summary>Two times in one unit: <c>15 min</c> and <c>5</c>, <c>3.9 h</c> and <c>2.2</c>.</summary>
    private static (string Time, string Bound) Times(double likely, double bound) => likely < InHours
        ? (Number(likely) + " min", Number(bound))
        : (Number(likely / 60) + " h", Number(bound / 60));

    private static string Number(double number) => Painting.Times.Number(number);
}
