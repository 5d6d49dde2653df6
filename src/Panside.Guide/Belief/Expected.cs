using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>
/// What a reading of this rig is expected to be, now. What the members know comes from them; what they leave out, and what no
/// member has, has deviations of its own: no source, chosen so that good readings of the practice rig lie within them.
/// </summary>
public sealed class Expected(Setting setting)
{
    /// <summary>What is expected of the reading or the draw that a line tells of; null where nothing is.</summary>
    public Expectation? Of(SessionState state, LineIn line) => line switch
    {
        Reading reading => Of(state, reading.Name),
        Did { Name.Code: "close-draw", Measure: not null } => Drawn(),
        _ => null,
    };

    /// <summary>What the line says, in the unit of its expectation: liters, meters, °C, Brix or kPa.</summary>
    public double Said(Measure measure) => measure.Unit.Kind() switch
    {
        Dimension.Volume => setting.Units.Volume(measure).Liters,
        Dimension.Length => UnitSystem.Length(measure).Meters,
        Dimension.Temperature => UnitSystem.Temperature(measure).Celsius,
        Dimension.Pressure => UnitSystem.Pressure(measure).Kilopascals,
        _ => measure.Value,
    };

    private Expectation? Of(SessionState state, ReadingName name) => name.Code switch
    {
        "tank-volume" => Tank(state),
        "pan-depth" => Depth(state),
        "draw-temperature" => DrawOff(state),
        "boiling-water-temperature" => BoilingWaterRead(state),
        "sap-brix" => Sap(state),
        "pan-brix" => PanSugar(state),
        "draw-brix" => DrawSugar(state),
        "hydrometer-brix" => Glass(state),
        "sample-temperature" => new(state.Rig.Boiling.Celsius - 20, 14),
        "air-temperature" => new(2, 9),
        "drawn-volume" => Drawn(),
        "barometer" => new(101, 1.1),
        _ => new(StandardAtmosphere.PressureAt(setting.Rig.Altitude).Kilopascals, 0.7),
    };

    /// <summary>
    /// Before the fire sap goes in as it comes, and nobody tells of each pail. Once no more wood goes in the pan is flooded out of the
    /// tank, and that is told when it is done: meanwhile the tank may hold less by as much.
    /// </summary>
    private Expectation? Tank(SessionState state)
    {
        var isRefilledSince = state.Last(DeedName.RefillTank) is { Value: null } told
            && !(state.Last(ReadingName.TankVolume)?.At.Time > told.At.Time);
        if (!IsLit(state) || isRefilledSince || state.Rigs.ExpectedTank is not var (mean, deviation))
        {
            return null;
        }

        var flood = new Situation(setting, state).MayBeFlooding ? (setting.Rig.PanArea * (setting.Rig.FloodDepth - setting.Rig.RunDepth)).Liters : 0;
        return new(mean, deviation) { Below = With(deviation, flood / 2) };
    }

    /// <summary>
    /// Before the fire, without a float, in an emergency and after a pan that was too low, it holds what a hand has poured in. Over
    /// a float it comes down to the float: a pan that was filled deeper than it is run says nothing of where that is. Once no more
    /// wood goes in, it may be filled up to the flood depth by hand; a pan that was read low, up to its run depth.
    /// </summary>
    private Expectation Depth(SessionState state)
    {
        var run = setting.Rig.RunDepth.Meters;
        var wasLow = state.Last(ReadingName.PanDepth) is { } last && UnitSystem.Length(last.Value) < setting.Rig.LeastDepth;
        if (!IsLit(state) || !setting.Rig.HasFloat || wasLow || setting.Flow.PhaseOf(state.Step).Code == "emergency")
        {
            return new(1.2 * run, 0.35 * run);
        }

        var (mean, deviation) = state.Rigs.ExpectedDepth;
        var isFlooded = state.Deeds.ContainsKey(DeedName.FloodPan);
        var now = new Situation(setting, state);
        var fillsTo = now.IsHeld ? setting.Rig.FloodDepth.Meters : now.IsPanFallen ? run : 0;
        var toFill = double.Max(fillsTo - mean, 0);
        return new(mean, With(deviation, Surface + (toFill / 3)))
        {
            Below = With(deviation, Surface + (isFlooded ? 0 : double.Max(mean - run, 0) / 3)),
        };
    }

    /// <summary>A boiling surface that heaves, and a pan that slopes, in meters.</summary>
    private const double Surface = 0.003;

    /// <summary>
    /// What the members leave out of the draw-off's way grows with the time since it was read. A pan that is not seen to boil,
    /// or into which sap was poured, may be colder by any amount; while it is drawn, thinner liquid follows.
    /// </summary>
    private static Expectation DrawOff(SessionState state)
    {
        var boiling = state.Rig.Boiling;
        var (mean, deviation) = state.Rigs.ExpectedRise(DrawPoint.PressureAt(boiling));
        var isBoilingKnown = state.Rigs.IsThermometerKnown || IsPressureRead(state);
        var last = state.Last(ReadingName.DrawTemperature);
        var leftOut = last is { } read ? 0.3 + (0.015 * int.Min(state.MinutesSince(read.At), 60))
            : state.Readings.ContainsKey(ReadingName.PanBrix) ? 0.6 : 1.8;
        var own = With(With(deviation, leftOut), isBoilingKnown ? 0 : 0.4);
        var below = !SeenBoiling(state) ? 20 : state.ThisDraw.IsShut ? double.Max(own, 0.5) : 2;
        return new(boiling.Celsius + mean, own) { Below = below };
    }

    /// <summary>Whether the pan was seen at a good boil, and nothing since has taken it off.</summary>
    internal static bool SeenBoiling(SessionState state) =>
        state.Last(ObservationName.Boil) is { Value: "rolling" or "steady" } boil
        && state.Rig.IsBoiling && !(state.Last(DeedName.FloodPan)?.At.Time >= boil.At.Time);

    private Expectation BoilingWaterRead(SessionState state)
    {
        if (state.Last(ReadingName.BoilingWaterTemperature) is { } before)
        {
            return new(UnitSystem.Temperature(before.Value).Celsius, 0.3);
        }

        return new(DrawPoint.BoilingToday(setting, state).Celsius, IsPressureRead(state) ? 0.4 : 0.5);
    }

    private static bool IsPressureRead(SessionState state) =>
        state.Readings.ContainsKey(ReadingName.StationPressure) || state.Readings.ContainsKey(ReadingName.Barometer);

    private static Expectation Sap(SessionState state)
    {
        var isRead = state.Last(ReadingName.SapBrix) is { } before && !(state.Last(DeedName.RefillTank)?.At.Time > before.At.Time);
        var (mean, deviation) = state.Rigs.ExpectedSap;
        return isRead ? new(mean, With(deviation, 0.15)) : new(2.2, 0.28) { IsRatio = true };
    }

    private static Expectation PanSugar(SessionState state)
    {
        if (!IsLit(state) && !state.Readings.ContainsKey(ReadingName.PanBrix))
        {
            return new(8, 0.5) { IsRatio = true };
        }

        var (mean, deviation) = state.Rigs.ExpectedPanSugar;
        return new(mean, With(deviation / mean, 0.15)) { IsRatio = true };
    }

    /// <summary>Before the fire a pan of which nobody has read any sugar can hold what the last boil left: from raw sap to syrup.</summary>
    private static Expectation DrawSugar(SessionState state)
    {
        if (!IsLit(state) && !SugarReadings.Any(state.Readings.ContainsKey))
        {
            return new(12, 0.5) { IsRatio = true };
        }

        var (mean, deviation) = state.Rigs.ExpectedDrawSugar;
        return new(mean, With(deviation / mean, 0.2)) { IsRatio = true };
    }

    private static readonly ReadingName[] SugarReadings = [ReadingName.PanBrix, ReadingName.DrawBrix, ReadingName.DrawTemperature];

    /// <summary>Who floats the glass has drawn at the draw point: it shows about what it shows on target.</summary>
    private Expectation Glass(SessionState state)
    {
        var sample = state.Last(ReadingName.SampleTemperature) is { } read ? UnitSystem.Temperature(read.Value) : DrawPoint.Today(setting, state);
        var warm = Temperature.FromCelsius(double.Clamp(sample.Celsius, 0, 105));
        var target = SugarContent.FromBrix(double.Clamp(setting.Rig.Target.Brix, 45, 75));
        return new(SyrupHydrometer.ReadingOnTarget(target, warm).Brix, 2.5);
    }

    private Expectation Drawn()
    {
        var large = CommonPractice.LargeDraw(setting.Rig.PanArea).Liters;
        return new(0.6 * large, 0.3 * large);
    }

    private static bool IsLit(SessionState state) => state.Deeds.ContainsKey(DeedName.LitFire);

    private static double With(double deviation, double own) => double.Sqrt((deviation * deviation) + (own * own));
}
