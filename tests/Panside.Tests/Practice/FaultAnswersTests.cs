using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Mishaps;
using Panside.Practice.Operator;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

/// <summary>Every fault: what it does at the rig, and what the assistant says to it in which time.</summary>
public class FaultAnswersTests
{
    private const string Forced = "two-by-four-forced.yaml";

    /// <summary>What a fault moves, and which way: the rig with it beside the same rig without it, after the same deeds.</summary>
    private static readonly Dictionary<string, Func<PracticeRig, PracticeRig, bool>> Shows = new()
    {
        ["float-stuck-shut"] = (with, without) => !with.IsFed && with.Depth.Meters < without.Depth.Meters - 0.01,
        ["float-stuck-open"] = (with, without) => with.Depth.Meters > without.Depth.Meters + 0.01,
        ["valve-half-shut"] = (with, without) => with.Depth.Meters < without.Depth.Meters - 0.005,
        ["feed-freezing"] = (with, without) => with.Makeup.MostFeed < 0.4 * without.Makeup.MostFeed && with.Makeup.SapCelsius < without.Makeup.SapCelsius,
        ["tank-leak"] = (with, without) => with.Tank.Liters < without.Tank.Liters - 5,
        ["tank-emptied"] = (with, without) => with.Tank.Liters < 0.3 * without.Tank.Liters,
        ["draw-off-drips"] = (with, without) => with.Truth.Ledger.Drawn.Mass > without.Truth.Ledger.Drawn.Mass + 1,
        ["wet-wood"] = (with, without) => Steam(with) < Steam(without) && with.Makeup.CharShare > without.Makeup.CharShare,
        ["coals-heaped"] = (with, without) => with.Truth.Ledger.Found > 0 && with.Makeup.HeatShares[^1] > without.Makeup.HeatShares[^1],
        ["blower-dead"] = (with, without) => Fire.Fuel(with.Truth) > Fire.Fuel(without.Truth),
        ["draft-too-strong"] = (with, without) => with.Truth.Coals < without.Truth.Coals,
        ["stack-down"] = (with, without) => Fire.Fuel(with.Truth) > Fire.Fuel(without.Truth),
        ["foam-strong"] = (with, without) => with.Truth.Foam > without.Truth.Foam,
        ["foam-sudden"] = (with, without) => with.Truth.Foam > without.Truth.Foam,
        ["pan-tilted"] = (with, without) => Pan.Depth(with.Makeup, with.Truth.Pan[^1]) < Pan.Depth(without.Makeup, without.Truth.Pan[^1]) - 0.004,
        ["pan-scaled"] = (with, without) => Floor(with) > Floor(without) + 5,
        ["hot-spot"] = (with, without) => Floor(with) > Floor(without) + 5,
        ["barometer-falling"] = (with, without) => with.Makeup.Materials.BoilingCelsius < without.Makeup.Materials.BoilingCelsius - 0.05,
        ["cold-wind"] = (with, without) => with.Makeup.AirCelsius < without.Makeup.AirCelsius && with.Truth.Ledger.Air > without.Truth.Ledger.Air,
        ["sap-watery"] = (with, without) => with.Sap.Brix < 0.6 * without.Sap.Brix,
        ["thermometer-high"] = (with, without) => Read(with, ReadingName.BoilingWaterTemperature) > Read(without, ReadingName.BoilingWaterTemperature) + 1.5,
        ["thermometer-low"] = (with, without) => Read(with, ReadingName.BoilingWaterTemperature) < Read(without, ReadingName.BoilingWaterTemperature) - 1.5,
        ["ruler-high"] = (with, without) => Read(with, ReadingName.PanDepth) > Read(without, ReadingName.PanDepth) + 0.1,
        ["tank-gauge-hangs"] = (with, without) => Read(with, ReadingName.TankVolume) > Read(without, ReadingName.TankVolume) + 1,
        ["hydrometer-off"] = (with, without) => Read(with, ReadingName.HydrometerBrix) >= Read(without, ReadingName.HydrometerBrix) + 1,
        ["operator-late"] = (with, without) => with.Temper.Slowness >= 2 * without.Temper.Slowness,
        ["operator-away"] = (with, _) => with.Temper.IsAway,
        ["operator-skips"] = (with, _) => with.Temper.Skips > 0.3,
        ["operator-mistypes"] = (with, _) => with.Temper.Mistypes >= 0.1,
        ["operator-heavy-hand"] = (with, _) => with.Temper.Charges > 1.3,
        ["operator-tells-nothing"] = (with, _) => with.Temper.ForgetsToTell,
        ["operator-smells-nothing"] = (with, _) => with.Temper.HasACold,
        ["operator-leaves"] = (with, _) => with.Temper.WantsToLeave,
        ["laptop-off"] = (with, _) => with.Temper.IsUnheard,
        ["water-spilled"] = (with, without) => with.WaterLeft.Liters == 0 && without.WaterLeft.Liters > 0,
    };

    /// <summary>What answers a fault at the latest after so many minutes, where the advice is followed.</summary>
    private static readonly Dictionary<string, (int Minutes, Func<LineOut, bool> Is)> Answers = new()
    {
        ["float-stuck-shut"] = (24, Advised("raise-level", "now")),
        ["float-stuck-open"] = (30, line => line is QuestionLine { Text: var text } && text.Contains("pan depth", StringComparison.Ordinal)),
        ["valve-half-shut"] = (30, Advised("raise-level", "now")),
        ["feed-freezing"] = (90, Advised("raise-level", "now")),
        ["tank-emptied"] = (16, line => line is QuestionLine { Text: var text } && text.Contains("gone in", StringComparison.Ordinal)),
        ["foam-strong"] = (30, Advised("add-defoamer", "now", "danger")),
        ["foam-sudden"] = (22, Advised("add-defoamer", "now", "danger")),
        ["tank-gauge-hangs"] = (40, line => line is QuestionLine { Text: var text } && text.Contains("tank", StringComparison.Ordinal)),
        ["operator-mistypes"] = (30, line => line is QuestionLine or RefusedLine),
        ["laptop-off"] = (16, line => line is ToldLine { Text: var text } && text.StartsWith("Away", StringComparison.Ordinal)),
    };

    /// <summary>After so many minutes the forecast has moved.</summary>
    private const int MinutesReckoned = 45;

    /// <summary>The same boil with a fault that moves no forecast: boiled once, the others are held against it.</summary>
    private static readonly Lazy<SessionState> Unharmed = new(() => Until("operator-smells-nothing", _ => false, MinutesReckoned).State);

    /// <summary>Where only a forecast can tell: its median is at least a twentieth under that of the same boil without the fault, after so many minutes.</summary>
    private static readonly Dictionary<string, string> Forecasts = new()
    {
        ["tank-leak"] = "minutes-to-last-charge",
        ["wet-wood"] = "evaporation-rate",
        ["blower-dead"] = "evaporation-rate",
        ["stack-down"] = "evaporation-rate",
        ["operator-heavy-hand"] = "minutes-to-last-charge",
    };

    /// <summary>What nothing tells of within such a boil, and what keeps the pan all the same.</summary>
    private static readonly Dictionary<string, string> Unseen = new()
    {
        ["draw-off-drips"] = "a gallon an hour: the next tank readings",
        ["coals-heaped"] = "raking at the shutdown, and the look at the coals before leaving",
        ["draft-too-strong"] = "less is left in the arch than reckoned",
        ["pan-tilted"] = "the depth is read at the shallow end, which shows it",
        ["pan-scaled"] = "the smell",
        ["hot-spot"] = "the smell",
        ["barometer-falling"] = "the thermometer in boiling water every two hours",
        ["cold-wind"] = "less boils away",
        ["sap-watery"] = "later draws: the thermometer calls them",
        ["thermometer-high"] = "the hydrometer after each draw",
        ["thermometer-low"] = "the hydrometer after each draw",
        ["ruler-high"] = "the alarm stands at 1.2 times the least depth",
        ["hydrometer-off"] = "the thermometer calls the draw",
        ["operator-late"] = "reminders, and the alarm of an unread depth",
        ["operator-away"] = "the same: ten minutes empty no pan that was read",
        ["operator-skips"] = "the alarm of an unread depth",
        ["operator-smells-nothing"] = "depth and draw-off",
        ["operator-tells-nothing"] = "the tank readings; one that falls too fast is doubted, not by every seed",
        ["operator-leaves"] = "clear to leave is asked of the reckoning, not of the operator",
        ["water-spilled"] = "sap in reserve",
    };

    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    public static TheoryData<string> Kinds { get; } = [.. ScenarioFile.Faults.Select(fault => fault.Name)];

    public static TheoryData<string> Answered { get; } = [.. Answers.Keys];

    public static TheoryData<string> Reckoned { get; } = [.. Forecasts.Keys];

    [Fact]
    public void Every_fault_has_what_it_shows_and_what_answers_it_or_why_nothing_can()
    {
        var all = ScenarioFile.Faults.Select(fault => fault.Name).Order().ToList();
        Assert.Equal(all, Shows.Keys.Order());
        Assert.Equal(all, Answers.Keys.Concat(Forecasts.Keys).Concat(Unseen.Keys).Order());
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_fault_moves_what_it_says_the_way_that_it_says(string kind)
    {
        var (with, without) = (Fired(kind), Fired(null));
        Assert.True(Shows[kind](with, without));
        Assert.False(Shows[kind](Fired(null), without));
    }

    [Theory]
    [MemberData(nameof(Answered))]
    public void F5_a_fault_is_answered_in_its_time(string kind)
    {
        var (minutes, isAnswer) = Answers[kind];
        Assert.InRange(Until(kind, isAnswer, minutes).Minutes, 0, minutes);
    }

    [Theory]
    [MemberData(nameof(Reckoned))]
    public void F5_a_fault_that_nobody_sees_moves_a_forecast(string kind)
    {
        var name = Forecasts[kind];
        Assert.InRange(Told(Until(kind, _ => false, MinutesReckoned).State) / Told(Unharmed.Value), 0, 0.95);

        // The rate of a whole charge: that of ten minutes swings from charge to charge.
        double Told(SessionState state) => name == "evaporation-rate" ? state.Rigs.Forecasts.RatesLitersPerHour(firing: true).At(0.5) : state.Forecasts[name].P50!.Value;
    }

    private static Func<LineOut, bool> Advised(string action, params string[] urgencies) =>
        line => line is AdviceLine { Advice: var advice } && advice.Action == action && urgencies.Contains(advice.Urgency);

    /// <summary>The boil until so many minutes after the fault, or to its answer.</summary>
    private static (double Minutes, SessionState State) Until(string kind, Func<LineOut, bool> isAnswer, int minutes)
    {
        var setting = new Setting(Library.Flow(null), PracticeBoil.RigOf(Forced), Guidance.Beginner, "panside", practice: true);
        var rig = new PracticeRig(setting.Rig, Scenario.LastHour with { TankLiters = 120, Mishaps = [new(kind, Awaits.Boiling, 5, 5)] }, 7);
        var door = new SessionDoor(setting);
        var isAnswered = false;
        double Since() => rig.Begun.Any() ? (rig.Second - rig.Begun.Single().Second) / 60.0 : -1;
        var boil = new Unattended(door, rig, new PracticeOperator(rig, setting.Units, 7), Evening)
        {
            Overheard = (_, answers) => isAnswered |= Since() >= 0 && answers.Any(isAnswer),
        };
        boil.RunUntil(() => isAnswered || Since() > minutes);
        return (isAnswered ? Since() : double.PositiveInfinity, door.State);
    }

    /// <summary>Fired by the clock for an hour, forty minutes of it with the fault, or the half of what it lasts.</summary>
    private static PracticeRig Fired(string? kind)
    {
        var begins = kind is "operator-away" or "laptop-off" ? 55 : kind is "operator-tells-nothing" ? 45 : 20;
        var rig = new PracticeRig(PracticeBoil.RigOf(Forced), Scenario.ColdStart with
        {
            Mishaps = kind is null ? [] : [new(kind, Awaits.FireLit, begins, begins)],
        }, seed: 3);
        for (var charge = 0; charge < 15; charge++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge * 0.5);
            rig.Step(240);
        }

        return rig;
    }

    private static double Steam(PracticeRig rig) => rig.Truth.Ledger.Steam.Water;

    /// <summary>The floor under the draw-off, with a usual fire's heat.</summary>
    private static double Floor(PracticeRig rig) => Scorching.FloorCelsius(rig.Makeup, rig.Truth, rig.Truth.Pan.Length - 1, 0.04);

    private static double Read(PracticeRig rig, ReadingName name) => new Instruments(rig, rig.Makeup.Rig.Units, 3).Read(name).Value;
}
