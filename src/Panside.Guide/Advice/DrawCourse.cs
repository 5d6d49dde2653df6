using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>The course of the draw-off's thermometer since the last draw: a line through its readings, and what it says of now and of the next minutes.</summary>
/// <param name="state">The session.</param>
/// <param name="expected">Minutes until the draw point as the members have it, and how far under it the last reading stands, in K; null where they tell nothing.</param>
internal sealed class DrawCourse(SessionState state, Func<Temperature, (double Minutes, double Under)?> expected)
{
    /// <summary>A draw-off temperature older than this calls for another one, not for a draw. No source.</summary>
    public const int ReadingMinutes = 15;

    /// <summary>A reading told within so many seconds of another puts it right. No source.</summary>
    private const double Corrects = 20;

    /// <summary>A course is taken no further on than this, in minutes. No source.</summary>
    private const double Longest = 4;

    /// <summary>In K: so far under boiling water nothing boils there, whatever the thermometer is off by. No source.</summary>
    private const double Cold = 0.6;

    /// <summary>No pan holds more that still runs, in Brix: no source.</summary>
    private const double Most = 76;

    /// <summary>In K a minute: how much a course bends, how slow and fast it can be, and what it is where nothing is known. No source.</summary>
    private const double Bends = 0.03;

    private const double LeastRise = 0.02;

    private const double MostRise = 0.4;

    private const double RiseDoubt = 0.06;

    private const double UsualRise = 0.1;

    /// <summary>Tonight's rise and the members' are off by so much of themselves, as a standard deviation, beside <see cref="RiseDoubt"/>. No source.</summary>
    private const double OfTonight = 0.5;

    private const double OfMembers = 0.7;

    private readonly Lazy<RisingLine?> _line = new(() => Fit(state, expected));

    /// <summary>The last reading since the last draw; null where there is none.</summary>
    public Noted<Measure>? Last => LastOf(state);

    /// <summary>Minutes since that; 0 where there is none.</summary>
    public double MinutesSinceRead => state.Now is { } now && Last is { } last ? (now.Time - last.At.Time).TotalMinutes : 0;

    /// <summary>The readings since the last draw of the last quarter of an hour; one that was told again within seconds takes the place of the first.</summary>
    public IReadOnlyList<Noted<Measure>> Readings => ReadingsOf(state);

    /// <summary>The line, in °C and minutes; null where the draw-off was not read since the last draw, or nothing boils.</summary>
    public RisingLine? Line => _line.Value;

    /// <summary>How fast it rose before the last draw, in K a minute; null before any.</summary>
    public double? LastRise => LastRiseOf(state);

    /// <summary>How fast it rises, in K a minute; null where the course tells nothing.</summary>
    public TemperatureRise? Rises => Line is { } line ? TemperatureRise.FromCelsius(line.Slope) : null;

    /// <summary>What stands at the draw-off now, in Brix by the thermometer; null where the course tells nothing.</summary>
    public double? Brix => Line is { } line
        && DrawPoint.SugarAt(state, Temperature.FromCelsius(line.After(double.Min(MinutesSinceRead, Longest)))) is { } sugar
            ? double.Min(sugar.Brix, Most)
            : null;

    /// <summary>Minutes from now until it comes to a temperature, less than nothing where it has; null where it does not rise.</summary>
    public double? MinutesTo(Temperature point) => Line is { Slope: > 0 } line ? ((point.Celsius - line.Level) / line.Slope) - MinutesSinceRead : null;

    /// <summary>Whether it stands at a temperature or over it so many seconds from now.</summary>
    public bool IsOverIn(double seconds, Temperature point) => Line is { } line && line.After(MinutesSinceRead + (seconds / 60)) >= point.Celsius;

    private static Noted<Measure>? LastOf(SessionState state) => state.Last(ReadingName.DrawTemperature) is { } read
        && !(state.DrawEnded?.Time >= read.At.Time)
            ? read
            : null;

    /// <summary>
    /// What was cooled by a pour comes back to the boil faster than any sugar rises: readings from before it, and those under the boiling point of today's
    /// water, are no part of a course.
    /// </summary>
    private static List<Noted<Measure>> ReadingsOf(SessionState state)
    {
        var (kept, shut) = (new List<Noted<Measure>>(), state.DrawEnded?.Time);
        foreach (var one in state.Readings.GetValueOrDefault(ReadingName.DrawTemperature, []).Reverse()
                     .TakeWhile(one => !(shut >= one.At.Time) && !(state.ChilledAt?.Time >= one.At.Time) && state.MinutesSince(one.At) < ReadingMinutes)
                     .Where(one => (UnitSystem.Temperature(one.Value) - state.Rig.Boiling).Celsius > -Cold))
        {
            if (kept.Count == 0 || kept[0].At.Time - one.At.Time > TimeSpan.FromSeconds(Corrects))
            {
                kept.Insert(0, one);
            }
        }

        return kept;
    }

    private static double? LastRiseOf(SessionState state) => state.Syrup.Select(draw => draw.RisesKelvin).LastOrDefault(rise => rise is > 0);

    private static RisingLine? Fit(SessionState state, Func<Temperature, (double Minutes, double Under)?> expected)
    {
        var read = ReadingsOf(state);
        if (read.Count == 0 || !state.Rig.IsBoiling)
        {
            return null;
        }

        var last = read[^1];
        return RisingLine.Through(
            read.Select(one => ((one.At.Time - last.At.Time).TotalMinutes, UnitSystem.Temperature(one.Value).Celsius)),
            ThermometerScale.Error(state),
            Rise(LastRiseOf(state), expected(UnitSystem.Temperature(last.Value))),
            Bends);
    }

    /// <summary>What is expected of the rise before the readings tell: that of the draw before, else the members' own.</summary>
    private static (double Mean, double Deviation) Rise(double? before, (double Minutes, double Under)? expected)
    {
        if (before is { } tonight)
        {
            return (tonight, (OfTonight * tonight) + RiseDoubt);
        }

        if (expected is not var (minutes, under))
        {
            return (UsualRise, UsualRise);
        }

        var mean = double.Clamp(under / double.Max(minutes, 1), LeastRise, MostRise);
        return (mean, (OfMembers * mean) + RiseDoubt);
    }
}
