namespace Panside.Practice.Assurance;

/// <summary>What many boils of one scenario came to.</summary>
/// <param name="Scenario">The scenario's name; <c>all</c> for all of them.</param>
/// <param name="IsDangerous">Whether habit alone burns pans in it.</param>
/// <param name="Boils">How many.</param>
public sealed record Assured(string Scenario, bool IsDangerous, IReadOnlyList<AssuredBoil> Boils)
{
    /// <summary>By scenario in the order of the first boils, and all together at the end.</summary>
    public static IEnumerable<Assured> By(IReadOnlyList<AssuredBoil> boils) =>
        boils.GroupBy(boil => boil.Scenario.Name)
            .Select(group => new Assured(group.Key, group.First().Scenario.IsDangerous, [.. group]))
            .Append(new("all", false, boils));

    /// <summary>Those that did not come to their end within a day.</summary>
    public int Unended => Count(boil => boil.Outcome.Said is null);

    /// <summary>Burnt pans, before leaving or after.</summary>
    public int Scorched => Count(boil => boil.Outcome.IsScorched);

    /// <summary>Close to it.</summary>
    public int NearMisses => Count(boil => boil.Outcome.IsNearMiss);

    /// <summary>Where clear to leave was said too early.</summary>
    public int ClearTooEarly => Count(boil => boil.Outcome.IsClearTooEarly);

    /// <summary>Median sap left in the tank, in US gallons.</summary>
    public double? LeftGallons => Median(boil => boil.Outcome.Said is null ? null : boil.Outcome.TankLeft.UsGallons);

    /// <summary>Median minutes for which it was truly safe to leave already.</summary>
    public double? WaitedMinutes => Median(boil => boil.Outcome.MinutesPastTruth);

    /// <summary>Mean distance of the draws from the target, in Brix.</summary>
    public double? SyrupErrorBrix => Boils.Select(boil => boil.Outcome.SyrupErrorBrix).OfType<double>() is var errors && errors.Any() ? errors.Average() : null;

    /// <summary>Alarms in ten minutes, on average.</summary>
    public double AlarmsPerTenMinutes => Boils.Sum(boil => boil.Outcome.Alarms) / Boils.Sum(boil => boil.Outcome.Seconds / 600.0);

    /// <summary>The most alarms in any ten minutes of any boil.</summary>
    public int AlarmPeak => Boils.Max(boil => boil.Outcome.AlarmPeak);

    /// <summary>The share of boils in which the water that would leave lay in the 90 % band told at the last charge.</summary>
    public double? ResidualCoverage => Share(boil => boil.Outcome.IsResidualCovered);

    /// <summary>The same of the minutes to the still boil.</summary>
    public double? StillCoverage => Share(boil => boil.Outcome.IsStillCovered);

    private int Count(Func<AssuredBoil, bool> which) => Boils.Count(which);

    private double? Share(Func<AssuredBoil, bool?> which) =>
        Boils.Select(which).OfType<bool>() is var known && known.Any() ? known.Average(inside => inside ? 1.0 : 0) : null;

    private double? Median(Func<AssuredBoil, double?> of)
    {
        var sorted = Boils.Select(of).OfType<double>().Order().ToList();
        return sorted.Count > 0 ? sorted[sorted.Count / 2] : null;
    }
}
