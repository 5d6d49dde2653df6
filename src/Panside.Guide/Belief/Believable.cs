using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>A line that is doubted.</summary>
/// <param name="Text">The question.</param>
/// <param name="WouldTake">What it would take to be true.</param>
public sealed record Doubt(string Text, string WouldTake);

/// <summary>
/// What a rig could have but this one, now, hardly does is questioned. What warns of danger (a low pan, an empty tank, foam,
/// a scorched smell) is never doubted: S4.
/// </summary>
public sealed class Believable(Setting setting)
{
    private readonly Unexpected _unexpected = new(setting);

    private UnitSystem Units => setting.Units;

    /// <summary>The doubt; null where the line is believed.</summary>
    public Doubt? Doubt(SessionState state, LineIn line) => Hardly(state, line) ?? _unexpected.Doubt(state, line);

    /// <summary>How to take back a line that warned of danger and is far from what was expected; null where it is not.</summary>
    public string? WayBack(SessionState before, LineIn line) => _unexpected.WayBack(before, line);

    /// <summary>What this rig hardly has, told with what is known of it.</summary>
    private Doubt? Hardly(SessionState state, LineIn line) => line switch
    {
        Reading { Name.Code: "tank-volume" } reading => Tank(state, reading),
        Reading { Name.Code: "pan-depth" } reading => Depth(state, reading),
        Reading { Name.Code: "draw-temperature" } reading => DrawOff(state, reading),
        Reading { Name.Code: "boiling-water-temperature" } reading => BoilingWaterRead(state, reading),
        Reading { Name.Code: "sap-brix" } reading => Sugar(reading, 0.8, 8, "Raw sap has 1 to 4 Brix", "It would take concentrate, or a refractometer far off."),
        Reading { Name.Code: "pan-brix" } reading => Sugar(reading, 1, 60, "A pan left half done has 2 to 30 Brix on the whole", "It would take a pan of nearly finished syrup."),
        Reading { Name.Code: "hydrometer-brix" } reading => Sugar(reading, 45, 72, "A syrup hydrometer shows 50 to 70 Brix", "It would take the sap hydrometer, or degrees Baumé read as Brix."),
        Reading { Name.Code: "barometer" } reading => Barometer(reading),
        Reading { Name.Code: "station-pressure" } reading => Station(reading),
        Reading { Name.Code: "drawn-volume" } reading => Drawn(reading.Measure),
        Did { Name.Code: "close-draw", Measure: { } drawn } => Drawn(drawn),
        Did { Name.Code: "add-wood", Measure: { } wood } => Wood(wood),
        _ => null,
    };

    /// <summary>Whether a tank reading agrees with one that was doubted before it: both lower than reckoned, the newer no higher by much.</summary>
    public bool Confirms(SessionState state, LineIn? doubted, LineIn line) =>
        doubted is Reading { Name.Code: "tank-volume" } first && line is Reading { Name.Code: "tank-volume" } second
        && second.At.Time > first.At.Time && state.Rig.Tank is { } tank
        && Units.Volume(second.Measure) < tank && Units.Volume(first.Measure) < tank
        && double.Abs((Units.Volume(second.Measure) - Units.Volume(first.Measure)).Liters) <= Slack;

    private Doubt? Tank(SessionState state, Reading reading)
    {
        var now = Units.Volume(reading.Measure);
        if (state.Last(ReadingName.TankVolume) is not { } last || state.Rig.Tank is not { } likely)
        {
            return null;
        }

        // No member floods before it is told, so a tank that falls meanwhile is not held against them.
        var isMembersToo = now > likely || !new Situation(setting, state).MayBeFlooding;
        if (!_unexpected.IsFar(state, reading) && !(isMembersToo && state.Rigs.IsFar(now)))
        {
            return null;
        }

        var refilledSince = state.Last(DeedName.RefillTank) is { Value: { } added } refill && refill.At.Time >= last.At.Time
            ? Units.Volume(added).Liters
            : 0;
        var expected = Units.Volume(last.Value).Liters + refilledSince;
        var gone = expected - now.Liters;
        var minutes = double.Max(1, double.Ceiling((reading.At.Time - last.At.Time).TotalMinutes));
        var since = $"in {Amount.Minutes(minutes)}";
        var refilled = state.Last(DeedName.RefillTank) is { Value: null } told && told.At.Time >= last.At.Time;
        if (now > likely)
        {
            if (!state.Deeds.ContainsKey(DeedName.LitFire) || refilled)
            {
                return null;
            }

            if (gone > 0)
            {
                return new(
                    $"Only {Shown(Volume.FromLiters(gone))} gone {since}? {Shown(likely)} is reckoned, and {Shown(now)} is said.",
                    "It would take a fire much weaker than the last hour's, or a refill that was not told.");
            }

            return new(
                $"{Shown(Volume.FromLiters(-gone))} more in the tank {since}, and no refill said? {Shown(now)} or {Shown(Volume.FromLiters(expected))}?",
                "It would take a refill that was not told; or the reading before was low.");
        }

        return now.Liters > 0.4 && state.Deeds.ContainsKey(DeedName.LitFire)
            ? new(
                $"{Shown(Volume.FromLiters(gone))} gone {since}? {Shown(now)} or {Shown(Volume.FromLiters(expected))}?",
                $"It would take a leak, an open draw-off, or {Amount.Shown(Units.From(VolumeRate.FromLitersPerHour(gone * 60 / minutes)))} of boiling.")
            : null;
    }

    /// <summary>Two gauge readings, each a gallon off.</summary>
    private static double Slack => 7.6;

    /// <summary>A ruler's quarter of an inch.</summary>
    private static Length SameDepth => Length.FromInches(0.25);

    /// <summary>
    /// What was insisted on is not doubted again while it stands there: each yes would make the rig less known, until nothing is
    /// certain enough to let anybody go.
    /// </summary>
    private Doubt? Depth(SessionState state, Reading reading)
    {
        var depth = UnitSystem.Length(reading.Measure);
        var most = setting.Rig.FloodDepth * 2;
        var isInsisted = state.Last(ReadingName.PanDepth) is { } last && UnitSystem.Length(last.Value) is var taken && taken > most && depth < taken + SameDepth;
        return depth > most && !isInsisted
            ? new(
                $"{Amount.Plain(reading.Measure)} deep? This pan runs at {Amount.Shown(Units.From(setting.Rig.RunDepth))} and floods at {Amount.Shown(Units.From(setting.Rig.FloodDepth))}.",
                "It would take a float stuck open, or a reading in another unit.")
            : null;
    }

    private Doubt? DrawOff(SessionState state, Reading reading)
    {
        var read = UnitSystem.Temperature(reading.Measure);
        var boiling = state.Rig.Boiling;
        var low = Expected.SeenBoiling(state) && read < boiling - TemperatureRise.FromCelsius(6);
        var high = read > boiling + TemperatureRise.FromCelsius(9);
        if (!low && !high)
        {
            return null;
        }

        var point = Amount.Shown(Units.From(DrawPoint.Today(setting, state)));
        var range = $"Water boils at {Amount.Shown(Units.From(boiling))} today and syrup is drawn at {point}.";
        return new(
            $"{Amount.Plain(reading.Measure)} at the draw-off? {range}{OtherUnit(reading.Measure, boiling, 9)}",
            low ? "It would take a pan that does not boil there, or a thermometer out of the liquid." : "It would take sugar nearly candy there: if so, flood the pan now.");
    }

    private Doubt? BoilingWaterRead(SessionState state, Reading reading)
    {
        var read = UnitSystem.Temperature(reading.Measure);
        var pressure = state.Readings.ContainsKey(ReadingName.StationPressure) || state.Readings.ContainsKey(ReadingName.Barometer);
        var expected = pressure ? DrawPoint.BoilingToday(setting, Without(state)) : setting.StandardBoiling;
        var off = double.Abs((read - expected).Celsius);
        return off > 2.2
            ? new(
                $"{Amount.Plain(reading.Measure)} in boiling water? About {Amount.Shown(Units.From(expected))} is expected here.{OtherUnit(reading.Measure, expected, 2.2)}",
                "It would take a thermometer that is off, water not at a full boil, or another altitude than the rig file says.")
            : null;
    }

    private static SessionState Without(SessionState state) =>
        state with { Readings = state.Readings.Remove(ReadingName.BoilingWaterTemperature) };

    private string OtherUnit(Measure measure, Temperature near, double within)
    {
        var other = measure.Unit == Unit.DegreeFahrenheit ? Unit.DegreeCelsius : Unit.DegreeFahrenheit;
        var swapped = new Measure(measure.Value, other);
        return double.Abs((UnitSystem.Temperature(swapped) - near).Celsius) <= within
            ? $" {Amount.Plain(swapped)} would fit: type it with its unit."
            : "";
    }

    private static Doubt? Sugar(Reading reading, double low, double high, string usual, string wouldTake) =>
        reading.Measure.Value < low || reading.Measure.Value > high
            ? new($"{Amount.Plain(reading.Measure)}? {usual}.", wouldTake)
            : null;

    private Doubt? Barometer(Reading reading)
    {
        var pressure = UnitSystem.Pressure(reading.Measure);
        if (pressure.Kilopascals is >= 96 and <= 106)
        {
            return null;
        }

        var here = StandardAtmosphere.PressureAt(setting.Rig.Altitude);
        var looksLocal = double.Abs(pressure.Kilopascals - here.Kilopascals) < 4;
        return new(
            $"{Amount.Plain(reading.Measure)} at sea level? A weather report gives 970 to 1050 hPa (28.6 to 31.0 inHg).",
            looksLocal ? "It looks like the pressure here, not reduced: say it as 'pressure here'." : "It would take a record storm.");
    }

    private Doubt? Station(Reading reading)
    {
        var pressure = UnitSystem.Pressure(reading.Measure);
        var expected = StandardAtmosphere.PressureAt(setting.Rig.Altitude);
        return double.Abs(pressure.Kilopascals - expected.Kilopascals) <= 3
            ? null
            : new(
                $"{Amount.Plain(reading.Measure)} here? About {Amount.Shown(new(Units.Convert(new(expected.Kilopascals, Unit.Kilopascal), reading.Measure.Unit).Value, reading.Measure.Unit))} is usual at this altitude.",
                pressure.Kilopascals is > 97 and < 105
                    ? "It looks like a weather report's pressure, reduced to sea level: say it as 'barometer'."
                    : "It would take another altitude than the rig file says.");
    }

    private Doubt? Drawn(Measure drawn)
    {
        var large = Advice.CommonPractice.LargeDraw(setting.Rig.PanArea);
        return Units.Volume(drawn) > large * 2
            ? new(
                $"{Amount.Plain(drawn)} in one draw? Close to {Amount.Shown(Units.From(large, Units.SmallVolume))} is a large one for this pan.",
                "It would take a pan far past its draw point, or another unit.")
            : null;
    }

    private Doubt? Wood(Measure wood) => UnitSystem.Mass(wood) > setting.Rig.Charge * 3
        ? new(
            $"{Amount.Plain(wood)} in one charge? The rig file says {Amount.Shown(Units.From(setting.Rig.Charge))}.",
            "It would take a firebox filled at once: little and often boils better.")
        : null;

    private string Shown(Volume volume) => Amount.Shown(Units.From(volume));
}
