using Panside.Guide.Measures;
using Panside.Reckon;
using Panside.Reckoning.Ensemble;

namespace Panside.Plan;

/// <summary>A planned boil on the clock: when to light, when the last charge goes in, when the boil is still.</summary>
internal static class PlanClock
{
    private const int Five = 5;
    private const int Day = 24 * 60;

    /// <summary>Minutes to the five that a forecast is honest to.</summary>
    public static double ToFive(double minutes) => double.Round(minutes / Five) * Five;

    /// <summary>The latest lighting with which 95 of 100 members end in time, in minutes of the end's day; rounded to the early side.</summary>
    public static int LightBy(PlannedBoil boil, ClockTime end) =>
        (int)double.Floor((end.Minutes - boil.StillMinutes.At(0.95)) / Five) * Five;

    /// <summary>The figures that a lighting or an end settles.</summary>
    /// <param name="boil">The boil.</param>
    /// <param name="last">What ends the firing: the last charge, or that the burner is shut off.</param>
    /// <param name="lit">When it is lit; null where it is not said.</param>
    /// <param name="end">When it is to end; null where it is not said.</param>
    public static IEnumerable<Figure> Figures(PlannedBoil boil, string last, ClockTime? lit, ClockTime? end)
    {
        if (end is { } wanted)
        {
            yield return Show.Word("light-by", Clock(LightBy(boil, wanted)));
        }

        var start = lit?.Minutes ?? (end is { } ends ? LightBy(boil, ends) : null as int?);
        if (start is { } lighting)
        {
            yield return Show.Word(last, Clock(lighting + boil.LastChargeMinutes.At(0.5)));
            yield return Show.Word($"{last}-soonest", Clock(lighting + boil.LastChargeMinutes.At(0.05)));
            yield return Show.Word("still", Clock(lighting + boil.StillMinutes.At(0.5)));
            yield return Show.Word("still-latest", Clock(lighting + boil.StillMinutes.At(0.95)));
        }
    }

    /// <summary>What they mean.</summary>
    public static IEnumerable<string> Notes(PlannedBoil boil, ClockTime? lit, ClockTime? end)
    {
        if (end is { } wanted)
        {
            var by = LightBy(boil, wanted);
            var before = by < 0 ? $" {(by < -Day ? $"{(-by + Day - 1) / Day} days" : "the day")} before" : "";
            yield return $"Lit by {Clock(by)}{before}, 95 of 100 such rigs are still by {wanted}.";
            if (lit is { } told)
            {
                var until = wanted.Minutes - told.Minutes is > 0 and var left ? left : wanted.Minutes - told.Minutes + Day;
                yield return until >= boil.StillMinutes.At(0.95) ? $"Lit at {told} it ends in time."
                    : until >= boil.StillMinutes.At(0.5) ? $"Lit at {told} it can end too late."
                    : $"Lit at {told} it is too late for {wanted}.";
            }
        }
    }

    /// <summary>Says that the lighting that an end asks for is past; null where it is not. The end is the next such time of day.</summary>
    /// <param name="lightBy">The time of day by which to light.</param>
    /// <param name="end">The end.</param>
    /// <param name="now">The time of day.</param>
    public static string? Past(ClockTime lightBy, ClockTime end, ClockTime now)
    {
        var left = (end.Minutes - now.Minutes + Day) % Day;
        var takes = (end.Minutes - lightBy.Minutes + Day) % Day;
        return takes > left ? $"It is {now} now: {lightBy} is past for an end at {end} today. It would end about {Clock(now.Minutes + takes)} at the latest; or boil less sap." : null;
    }

    private static string Clock(double minutes) => new ClockTime((int)(((ToFive(minutes) % Day) + Day) % Day), false).ToString();
}
