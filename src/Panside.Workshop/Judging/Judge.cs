using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Operator;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Ensemble;

namespace Panside.Workshop.Judging;

/// <summary>One boil judged: its forecasts, and how it ended.</summary>
/// <param name="Name">Which it was, so that it can be practised again.</param>
/// <param name="Judgements">Its forecasts beside what came.</param>
/// <param name="Outcome">How it ended.</param>
/// <param name="Traits">What is known of the rig at the end.</param>
internal sealed record JudgedBoil(string Name, IReadOnlyList<Judgement> Judgements, PracticeOutcome Outcome, RigTraits Traits)
{
    /// <summary>What still stood against leaving at each look after the first moment at which it would have been safe.</summary>
    public IReadOnlyList<(long Second, string Unmet)> WaitedFor { get; init; } = [];

    /// <summary>Minutes between two looks at that.</summary>
    public const int WaitedMinutes = 2;

    /// <summary>What was not good; empty where all was.</summary>
    public string Fault => string.Join(", ", new[]
    {
        Outcome.Said is null ? "not ended within a day" : "",
        Outcome.Said is { Safe: false } ? "not safe" : "",
        Outcome.IsScorched ? "scorched" : "",
        Outcome.IsPromiseKept ? "" : "left too early",
    }.Where(fault => fault.Length > 0));
}

/// <summary>
/// Judges the forecasts by a rig that is not the forecaster's own: a boil is practised without a person, and every so often the
/// simulated rig is run ahead to see what truly comes.
/// </summary>
internal static class Judge
{
    private const int EveryMinutes = JudgedBoil.WaitedMinutes;

    /// <summary>The shorter a phase, the more often it is looked at, so that there is enough to judge it by.</summary>
    private static int EveryLooks(string phase) => phase switch
    {
        "draw-off" => 1,
        "steady-boil" => SteadyLooks,
        _ => 3,
    };

    private const int SteadyLooks = 9;

    /// <summary>
    /// A draw is judged where it is told to come by then. What is judged is chosen by what was told, never by what came: to
    /// leave out the draws that came late would make every forecast look late.
    /// </summary>
    private const double DrawToldBy = 240;

    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>Practises one boil and judges it.</summary>
    public static JudgedBoil Boil(Setting setting, World world, Scenario scenario, long seed) =>
        Boil(setting, PracticeRig.In(world, setting.Rig, scenario, seed), seed);

    /// <summary>Practises one boil on a rig and judges it.</summary>
    /// <param name="setting">What the assistant knows.</param>
    /// <param name="rig">The rig as it truly is.</param>
    /// <param name="seed">Of the person who follows the advice.</param>
    public static JudgedBoil Boil(Setting setting, PracticeRig rig, long seed)
    {
        var door = new SessionDoor(setting);
        var person = new PracticeOperator(rig, setting.Units, seed);
        var judged = new List<Judgement>();
        var toLastCharge = new List<(long Second, Judgement Told)>();
        var toClear = new List<(long Second, Judgement Told)>();
        long? saidClear = null;
        var unmet = new List<(long Second, IReadOnlyList<string> Unmet)>();
        var pace = new ChargePace(setting.Rig.Interval);

        // Each boil is looked at from another minute on, so that the looks do not all fall on one place of a charge; never because
        // something happens, and not while something is done that the forecaster was not told of yet.
        var (first, looks) = (60L * (1 + FirstLook(seed)), 0);
        bool IsLook() => rig.Second >= first + (looks * EveryMinutes * 60) && rig.IsFired && !door.State.IsOver;
        void Look(LineIn line)
        {
            pace.Look(rig);
            if (line is Tick && IsLook())
            {
                if (!person.IsUntold && looks % EveryLooks(setting.Flow.PhaseOf(door.State.Step).Code) == 0)
                {
                    judged.AddRange(LookAt(setting, door, rig, pace.Seconds));
                    if (LastChargeAt(setting, door) is { } told)
                    {
                        toLastCharge.Add((rig.Second, told));
                    }
                }

                looks++;
                if (person.IsHeld)
                {
                    if (saidClear is null && Told(door, setting, Forecasts.ToClear) is { } clear)
                    {
                        toClear.Add((rig.Second, new(setting.Flow.PhaseOf(door.State.Step).Code, Forecasts.ToClear, 0, Flat(clear), null) { Told = clear }));
                    }

                    unmet.Add((rig.Second, new Situation(setting, door.State).Unmet));
                }
            }
        }

        void Hear(LineIn line, IReadOnlyList<LineOut> answers)
        {
            saidClear ??= answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" }) ? rig.Second : null;
            Look(line);
        }

        var outcome = new Unattended(door, rig, person, Evening) { TellsTime = IsLook, Overheard = Hear }.Run();
        var lastWood = rig.Second - rig.SecondsSinceWood;
        judged.AddRange(toLastCharge.Select(look => look.Told with { Truth = double.Max(lastWood - look.Second, 0) / 60.0 }));
        judged.AddRange(saidClear is { } cleared ? toClear.Select(look => look.Told with { Truth = (cleared - look.Second) / 60.0 }) : []);
        var name = $"{setting.Rig.Name}, {setting.Guidance.ToString().ToLowerInvariant()}, scenario {rig.Scenario.Name}, seed {seed.ToString(CultureInfo.InvariantCulture)}";
        return new(name, judged, outcome, door.State.Rigs.Traits())
        {
            WaitedFor = [.. unmet.Where(look => look.Second >= outcome.SecondsTrulySafe).Select(look => (look.Second, string.Join("; ", look.Unmet)))],
        };
    }

    /// <summary>A band that is told without the members behind it: evenly between its ends.</summary>
    private static List<double> Flat((double Low, double High) band) => [.. Judgement.Levels.Select(level => band.Low + (double.Clamp((level - 0.05) / 0.9, 0, 1) * (band.High - band.Low)))];

    private static long FirstLook(long seed) => (seed * 7) % (EveryMinutes * SteadyLooks);

    /// <summary>What is told of the last charge; what comes of it only the end of the boil shows.</summary>
    private static Judgement? LastChargeAt(Setting setting, SessionDoor door)
    {
        var now = new Situation(setting, door.State);
        var phase = setting.Flow.PhaseOf(door.State.Step).Code;
        return phase is "emergency" or "over" || now.MinutesToLastCharge is null || now.LastChargeBy is not { } rule ? null
            : new(phase, Forecasts.ToLastCharge, 0, [.. Judgement.Levels.Select(now.State.Rigs.Forecasts.MinutesToLastCharge(rule).At)], null)
            {
                Told = Told(door, setting, Forecasts.ToLastCharge),
                Reckoned = [.. Judgement.Levels.Select(now.State.Rigs.Forecasts.MinutesToLastCharge(rule).AsReckoned.At)],
                Stage = now.State.Rigs.Fire.Stage,
                ForcedDraft = now.State.Rigs.Rig.ForcedDraft,
            };
    }

    /// <summary>The band that the stream told last, in liters, liters an hour or minutes.</summary>
    private static (double Low, double High)? Told(SessionDoor door, Setting setting, string name)
    {
        if (door.State.Forecasts.GetValueOrDefault(name) is not { P5: { } low, P95: { } high, Unit: var unit })
        {
            return null;
        }

        double Of(double value) => unit.Kind() switch
        {
            Dimension.Volume => setting.Units.Volume(new(value, unit)).Liters,
            Dimension.VolumeRate => setting.Units.Volume(new(value, setting.Units.Preferred(Dimension.Volume))).Liters,
            _ => value,
        };
        return (Of(low), Of(high));
    }

    private static IEnumerable<Judgement> LookAt(Setting setting, SessionDoor door, PracticeRig rig, long secondsOfCharge) =>
        Reckoned(setting, door, rig, secondsOfCharge).Select(one => one with
        {
            Told = Told(door, setting, one.Forecast),
            Stage = door.State.Rigs.Fire.Stage,
            ForcedDraft = door.State.Rigs.Rig.ForcedDraft,
        });

    private static IEnumerable<Judgement> Reckoned(Setting setting, SessionDoor door, PracticeRig rig, long secondsOfCharge)
    {
        var now = new Situation(setting, door.State);
        var phase = setting.Flow.PhaseOf(door.State.Step).Code;
        if (!now.IsLit || phase is "emergency" or "over")
        {
            yield break;
        }

        IReadOnlyList<double> Of(Func<double, double> quantile) => [.. Judgement.Levels.Select(quantile)];
        var lastRate = LastRate.Of(door.State, setting);
        var outlook = now.State.Rigs.Forecasts.WithoutWood;
        var (liters, still) = RunAhead.WithoutWood(rig);
        var (residual, minutes) = outlook.AsReckoned;
        yield return new(phase, Forecasts.Residual, liters, Of(outlook.ResidualLiters), 4 * lastRate) { Reckoned = Of(residual.At) };
        yield return new(phase, Forecasts.ToStill, still, Of(outlook.StillMinutes), null) { Reckoned = Of(minutes.At) };
        yield return new(phase, Forecasts.Reserve, double.Max(liters - rig.OverLeast.Liters, 0), Of(outlook.ReserveLiters), null);
        if (now.IsHeld || !now.IsFiring || !now.State.Rig.IsBoiling || phase == "shutdown")
        {
            // No more wood is asked for: what would come of more, nobody sees.
            yield break;
        }

        var sinceWood = (long)(door.State.Now!.Value.Time - now.LastWood!.Value.Time).TotalSeconds;
        yield return new(
            phase, Forecasts.Rate, RunAhead.Rate(rig, sinceWood, secondsOfCharge),
            Of(door.State.Rigs.Forecasts.NextTenMinutes(firing: true).At), lastRate)
        { Reckoned = Of(door.State.Rigs.Forecasts.NextTenMinutes(firing: true).AsReckoned.At) };
        var toDraw = door.State.Rigs.Forecasts.MinutesTo(setting.Rig.Target);
        IReadOnlyList<double> Capped(RankedValues values) => Of(level => double.Min(values.At(level), RigForecasts.LongestToDraw));
        var draw = Capped(toDraw);
        if (draw[Judgement.Middle] <= DrawToldBy && phase != "draw-off")
        {
            var came = RunAhead.MinutesToDraw(rig, sinceWood, secondsOfCharge, (int)RigForecasts.LongestToDraw) ?? RigForecasts.LongestToDraw;
            yield return new(phase, Forecasts.ToDraw, came, draw, null) { Reckoned = Capped(toDraw.AsReckoned) };
        }
    }
}
