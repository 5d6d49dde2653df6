using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Practice;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Workshop.Judging;

/// <summary>How mistyped readings fare, as a table.</summary>
internal static class MistypedTable
{
    /// <summary>Boils that run at the same time; a number of their own, so that the table hangs on no machine.</summary>
    private const int AtOnce = 4;

    private const int BoilsAtMost = 10_000;

    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>Practises boils with seeds from one on, over all scenarios in turn, until each kind of slip was tried so often.</summary>
    /// <param name="setting">What boil number so many runs on.</param>
    /// <param name="ofEach">Slips of each kind.</param>
    /// <param name="seed">The first boil's seed.</param>
    public static IEnumerable<string> Of(Func<int, Setting> setting, int ofEach, long seed) => Rows(Typed(setting, ofEach, seed));

    /// <summary>All that was typed: so many slips of each kind, and the good readings of the same boils.</summary>
    public static IReadOnlyList<Mistyped> Typed(Func<int, Setting> setting, int ofEach, long seed)
    {
        var all = new List<Mistyped>();
        var slips = Slip.All.ToDictionary(slip => slip.Name, _ => 0);
        for (var boil = 0; boil < BoilsAtMost && slips.Values.Min() < ofEach; boil += AtOnce)
        {
            var typed = new List<Mistyped>[AtOnce];
            Parallel.For(0, AtOnce, one => typed[one] = Boil(setting(boil + one), boil + one, seed));
            all.AddRange(typed.SelectMany(one => one).Where(one => one.Kind is null || slips[one.Kind]++ < ofEach));
        }

        return all;
    }

    private static List<Mistyped> Boil(Setting setting, int boil, long seed)
    {
        var door = new MistypingDoor(setting, seed + boil);
        var rig = new PracticeRig(setting.Rig, Scenario.All[boil / 4 % Scenario.All.Count], seed + boil);
        new Unattended(door, rig, new PracticeOperator(rig, setting.Units, seed + boil), Evening).Run();
        return door.Typed;
    }

    private static IEnumerable<string> Rows(IReadOnlyList<Mistyped> all)
    {
        yield return "| slip | tried | beyond 6 deviations | questioned | refused | warned of | taken silently | not taken silently | of all tried |";
        yield return "| --- | --: | --: | --: | --: | --: | --: | --: | --: |";
        var slips = all.Where(one => one.Kind is not null).ToList();
        foreach (var slip in Slip.All)
        {
            yield return Row(slip.Name, [.. slips.Where(one => one.Kind == slip.Name)]);
        }

        yield return Row("all", slips);
        yield return "";
        yield return "| good readings | typed | held against what was expected | furthest off, in deviations | questioned or refused | share |";
        yield return "| --- | --: | --: | --: | --: | --: |";
        var good = all.Where(one => one.Kind is null).ToList();
        foreach (var group in good.GroupBy(one => one.Reading ?? "not understood").OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            yield return GoodRow(group.Key, [.. group]);
        }

        yield return GoodRow("all", good);
        var silent = slips.Where(one => one.IsBeyond && one.Treatment == Treatment.Taken).ToList();
        if (silent.Count > 0)
        {
            yield return "";
            yield return "Taken silently, for example: " + string.Join(
                "; ", silent.Take(8).Select(one => Invariant($"'{one.Text}' as {one.Reading}, {one.Off:F1} deviations off"))) + ".";
        }
    }

    private static string Row(string name, List<Mistyped> slips)
    {
        var beyond = slips.Where(one => one.IsBeyond).ToList();
        int Count(Treatment treatment) => beyond.Count(one => one.Treatment == treatment);
        var taken = Count(Treatment.Taken);
        return Invariant($"| {name} | {slips.Count} | {beyond.Count} | {Count(Treatment.Questioned)} | {Count(Treatment.Refused)} | {Count(Treatment.Warned)} ")
            + Invariant($"| {taken} | {Share(beyond.Count - taken, beyond.Count, "F1")} | {Share(slips.Count(one => one.Treatment != Treatment.Taken), slips.Count, "F0")} |");
    }

    private static string GoodRow(string name, List<Mistyped> good)
    {
        var held = good.Where(one => one.Off is not null).ToList();
        var doubted = good.Count(one => one.Treatment is Treatment.Questioned or Treatment.Refused);
        var furthest = held.Count > 0 ? Invariant($"{held.Min(one => one.Off):F1} to {held.Max(one => one.Off):F1}") : "";
        return Invariant($"| {name} | {good.Count} | {held.Count} | {furthest} | {doubted} | {Share(doubted, good.Count, "F2")} |");
    }

    private static string Share(int part, int whole, string format) =>
        whole == 0 ? "" : (100.0 * part / whole).ToString(format, CultureInfo.InvariantCulture) + " %";

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
