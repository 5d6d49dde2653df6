using System.Globalization;
using System.Text;

namespace Panside.Practice.Assurance;

/// <summary>Many boils as a table.</summary>
public static class AssuranceTable
{
    /// <summary>The table, how many scenarios it leaves out, and the seeds of the boils that went wrong.</summary>
    /// <param name="boils">The boils.</param>
    /// <param name="scenarios">Of how many scenarios, taken in turn.</param>
    public static string Of(IReadOnlyList<AssuredBoil> boils, int scenarios)
    {
        var text = new StringBuilder();
        text.Append("| scenario | boils | scorched | near misses | clear too early | not ended | sap left, gal | waited, min | syrup off, Brix | alarms in 10 min | peak | water in band | still in band |\n");
        text.Append("| --- | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: | --: |\n");
        foreach (var one in Assured.By(boils))
        {
            text.Append(CultureInfo.InvariantCulture,
                $"| {one.Scenario} | {one.Boils.Count} | {one.Scorched} | {one.NearMisses} | {one.ClearTooEarly} | {one.Unended} "
                + $"| {Shown(one.LeftGallons, "F1")} | {Shown(one.WaitedMinutes, "F0")} | {Shown(one.SyrupErrorBrix, "F1")} "
                + $"| {one.AlarmsPerTenMinutes:F2} | {one.AlarmPeak} | {Percent(one.ResidualCoverage)} | {Percent(one.StillCoverage)} |\n");
        }

        if (boils.Count < scenarios)
        {
            text.Append(CultureInfo.InvariantCulture,
                $"\nOnly the first {boils.Count} of {scenarios} scenarios were practised: --count {scenarios} takes each once.\n");
        }

        Seeds(text, "Scorched", boils.Where(boil => boil.Outcome.IsScorched));
        Seeds(text, "Clear too early", boils.Where(boil => boil.Outcome.IsClearTooEarly));
        Seeds(text, "Not ended", boils.Where(boil => boil.Outcome.Said is null));
        return text.ToString();
    }

    private static void Seeds(StringBuilder text, string what, IEnumerable<AssuredBoil> boils)
    {
        var some = boils.Take(20).Select(boil => string.Create(CultureInfo.InvariantCulture, $"{boil.Scenario.Name} {boil.Seed}")).ToList();
        if (some.Count > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"\n{what}, by scenario and seed: {string.Join(", ", some)}.\n");
        }
    }

    private static string Shown(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "";

    private static string Percent(double? share) => share is { } known ? Shown(100 * known, "F0") + " %" : "";
}
