using System.Globalization;

namespace Panside.Picturing;

/// <summary>An axis: from where to where, and how far its ticks are apart.</summary>
public sealed record Axis(double From, double To, double Step)
{
    private const int MinutesOfDay = 24 * 60;

    private const int ClockTicksAtMost = 10;

    /// <summary>An axis of what is nowhere more than nothing still has a length.</summary>
    private const double LeastCovered = 0.1;

    /// <summary>Steps of the clock that a person reads.</summary>
    private static readonly double[] ClockSteps = [5, 10, 15, 30, 60, 120, 240];

    /// <summary>Where a tick stands.</summary>
    public IEnumerable<double> Ticks
    {
        get
        {
            var first = (int)double.Ceiling(From / Step);
            var last = (int)double.Floor((To / Step) + 1e-9);
            return Enumerable.Range(first, last - first + 1).Select(tick => tick * Step);
        }
    }

    /// <summary>From nothing to the next tick at or over the most that is shown, in steps of 1, 2 or 5.</summary>
    /// <param name="most">The most.</param>
    /// <param name="steps">So many steps at most.</param>
    public static Axis FromZero(double most, int steps)
    {
        var covered = double.Max(most, LeastCovered);
        var power = Math.Pow(10, double.Floor(double.Log10(covered / steps)));
        var step = new[] { 1, 2, 5, 10 }.First(times => times * power * steps >= covered) * power;
        return new(0, double.Ceiling((covered / step) - 1e-9) * step, step);
    }

    /// <summary>From the tick at or under the least to the one at or over the most, in steps of 1, 2 or 5.</summary>
    /// <param name="least">The least that is shown.</param>
    /// <param name="most">The most.</param>
    /// <param name="steps">So many steps at most, or one more.</param>
    public static Axis Between(double least, double most, int steps)
    {
        var step = FromZero(most - least, steps).Step;
        var from = double.Floor((least / step) + 1e-9) * step;
        return new(from, double.Max(double.Ceiling((most / step) - 1e-9) * step, from + step), step);
    }

    /// <summary>Clock time, in minutes from midnight.</summary>
    public static Axis Clock(double from, double to) =>
        new(from, to, ClockSteps.FirstOrDefault(step => (to - from) / step <= ClockTicksAtMost, ClockSteps[^1]));

    /// <summary>How far along a value stands: 0 at the beginning, 1 at the end.</summary>
    public double Share(double value) => (value - From) / (To - From);

    /// <summary>A number at a tick.</summary>
    public static string Number(double tick) => tick.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Minutes from midnight as the clock shows them.</summary>
    public static string Time(double minute)
    {
        var whole = (int)double.Round(minute) % MinutesOfDay;
        return string.Create(CultureInfo.InvariantCulture, $"{whole / 60:00}:{whole % 60:00}");
    }
}
