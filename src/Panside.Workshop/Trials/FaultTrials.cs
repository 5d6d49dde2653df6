using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Mishaps;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Workshop.Trials;

/// <summary>Each fault that a scenario may have, in a boil with little sap left.</summary>
internal static class FaultTrials
{
    /// <summary>The seed of a boil whose advice is followed to the end.</summary>
    public const long SeedFollowed = 7;

    /// <summary>The seed of a boil up to its first alarm.</summary>
    public const long SeedAhead = 3;

    private const double BareMeters = 0.012;

    /// <summary>What empties a pan, and the seeds of the rigs that it is tried on; several with the float that hangs, which nothing but the ruler shows.</summary>
    public static IReadOnlyList<(string Fault, long Seed)> Emptying { get; } =
    [
        .. new long[] { 1, 4, 5, 7, 9, 10, 11, 12 }.Select(seed => ("float-stuck-shut", seed)),
        ("valve-half-shut", 7), ("feed-freezing", 7), ("tank-emptied", 7), ("tank-leak", 7),
    ];

    /// <summary>All of them, over so many seeds.</summary>
    public static IEnumerable<Trial> All(int seeds) =>
        Enumerable.Range(0, seeds)
            .SelectMany(more => ScenarioFile.Faults.SelectMany(fault => new[] { Followed(fault.Name, SeedFollowed + more), Ahead(fault.Name, SeedAhead + more) }))
            .Concat(Emptying.Select(one => Alarmed(one.Fault, one.Seed)));

    /// <summary>S1: the advice followed, no pan burns or runs dry, and what is promised at leaving comes true.</summary>
    public static Trial Followed(string fault, long seed) => new($"fault {fault}, the advice followed, seed {seed}", () =>
    {
        var setting = Evening.On(Evening.Forced);
        var rig = new PracticeRig(setting.Rig, With(fault), seed);
        var outcome = new Unattended(new SessionDoor(setting), rig, new PracticeOperator(rig, setting.Units, seed), Evening.Start).Run();
        return Trial.FirstBroken(
            (rig.Begun.Any(one => one.Name == fault), "the fault never came"),
            (!outcome.IsScorched, "the pan burned"),
            (outcome.IsPromiseKept, "what was promised at leaving did not come true"),
            (!outcome.IsClearTooEarly, "clear to leave was said too early"),
            (outcome.LeastDepth.Meters > BareMeters, $"the floor showed: least depth {1000 * outcome.LeastDepth.Meters:0} mm"));
    });

    /// <summary>F5: the alarm that comes first, of the fault or of the last charge, leaves ten minutes.</summary>
    public static Trial Ahead(string fault, long seed) => new($"fault {fault}, the first alarm ahead, seed {seed}", () => InTime(Of(fault, seed)));

    /// <summary>F5: what empties the pan is alarmed of, ten minutes before the floor shows.</summary>
    public static Trial Alarmed(string fault, long seed) => new($"fault {fault}, an alarm ahead, seed {seed}", () =>
        Of(fault, seed) is var ahead && ahead.IsAlarmed ? InTime(ahead) : "no alarm came");

    /// <summary>What an alarm ahead lacks.</summary>
    public static string? InTime(AlarmAhead ahead) =>
        ahead.SecondsToBare >= AlarmAhead.Asked ? null : $"the floor showed {ahead.SecondsToBare} s after the alarm, expected {AlarmAhead.Asked} s at the least";

    private static AlarmAhead Of(string fault, long seed) => AlarmAhead.Of(Evening.On(Evening.Forced), With(fault), seed);

    private static Scenario With(string fault) => Scenario.LastHour with { TankLiters = 75, Mishaps = [new(fault, Awaits.Boiling, 5, 5)] };
}
