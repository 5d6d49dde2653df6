using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Lines;

/// <content>What is read beside the rig: the weather, and the pail.</content>
public sealed partial class ReadingName
{
    /// <summary>Pressure reduced to sea level, as a weather report gives it.</summary>
    public static readonly ReadingName Barometer = new("barometer", Dimension.Pressure, "barometer", TimeSpan.FromHours(3))
    {
        Instruments = ["barometer"],
        Words = ["baro", "weather"],
        Usual = _ => Between(97, 105, Unit.Kilopascal),
        Possible = _ => Between(94, 106, Unit.Kilopascal), // what the reduction to the altitude is made for
        MixedUp = (rig, read) => IsPressureHere(rig, read) ? Unreduced : null,
        Expected = _ => new(101, 1.1),
        WouldTake = (_, _, _) => RecordStorm,
        Doubted = (boil, read) => UnitSystem.Pressure(read.Measure).Kilopascals is >= 96 and <= 106
            ? null
            : new(
                $"{Amount.Plain(read.Measure)} at sea level? A weather report gives 970 to 1050 hPa (28.6 to 31.0 inHg).",
                IsPressureHere(boil.Rig, read.Measure) ? Unreduced : "It would take a record storm."),
    };

    /// <summary>Pressure here, not reduced.</summary>
    public static readonly ReadingName StationPressure = new("station-pressure", Dimension.Pressure, "pressure here", TimeSpan.FromHours(3))
    {
        Instruments = ["barometer"],
        Words = ["pressure here", "station", "local pressure"],
        Usual = boil => Between(PressureHere(boil.Rig) - 3, PressureHere(boil.Rig) + 3, Unit.Kilopascal),
        Possible = _ => Between(60, 110, Unit.Kilopascal),
        Expected = boil => new(PressureHere(boil.Rig), 0.7),
        WouldTake = (_, _, _) => RecordStorm,
        Doubted = StationDoubted,
    };

    /// <summary>Syrup of the last draw.</summary>
    public static readonly ReadingName DrawnVolume = new("drawn-volume", Dimension.Volume, "drawn", TimeSpan.FromHours(6))
    {
        Words = ["drawn", "syrup drawn"],
        IsSmall = true,
        Where = "in one draw",
        Usual = boil => ToVolume(boil.Units, boil.Rig.LargeDraw, boil.Units.SmallVolume),
        Possible = rig => ToVolume(rig.Units, rig.PanVolume(rig.WallDepth)),
        Expected = boil => new(0.6 * boil.Rig.LargeDraw.Liters, 0.3 * boil.Rig.LargeDraw.Liters),
        WouldTake = (boil, _, _) => $"Close to {LargeDraw(boil)} is a large draw: it would take a pan far past its draw point.",
        Doubted = (boil, read) => boil.Units.Volume(read.Measure) > boil.Rig.LargeDraw * 2
            ? new(
                $"{Amount.Plain(read.Measure)} in one draw? Close to {LargeDraw(boil)} is a large one for this pan.",
                "It would take a pan far past its draw point, or another unit.")
            : null,
    };

    /// <summary>Temperature of the air.</summary>
    public static readonly ReadingName AirTemperature = new("air-temperature", Dimension.Temperature, "air", TimeSpan.FromHours(3))
    {
        Words = ["air", "air temp", "outside"],
        Usual = _ => Between(-15, 20, Unit.DegreeCelsius),
        Possible = _ => Between(-50, 60, Unit.DegreeCelsius),
        Expected = _ => new(2, 9),
        WouldTake = (_, _, _) => "It would take weather that no boil is run in, or a thermometer near the arch.",
    };

    /// <summary>The rows, in the order in which they are listed.</summary>
    internal static IEnumerable<ReadingName> BesideTheRig => [Barometer, StationPressure, DrawnVolume, AirTemperature];

    private const string RecordStorm = "It would take a record storm, or another altitude than the rig file says.";

    private const string Unreduced = "It looks like the pressure here, not reduced: say it as 'pressure here'.";

    private static Doubt? StationDoubted(IBoil boil, Reading reading)
    {
        var (pressure, unit) = (UnitSystem.Pressure(reading.Measure).Kilopascals, reading.Measure.Unit);
        var expected = PressureHere(boil.Rig);
        return double.Abs(pressure - expected) <= 3
            ? null
            : new(
                $"{Amount.Plain(reading.Measure)} here? About {Amount.Shown(boil.Units.Convert(new(expected, Unit.Kilopascal), unit))} is usual at this altitude.",
                pressure is > 97 and < 105
                    ? "It looks like a weather report's pressure, reduced to sea level: say it as 'barometer'."
                    : "It would take another altitude than the rig file says.");
    }

    /// <summary>The pressure of a standard day at the rig's altitude, in kPa.</summary>
    private static double PressureHere(Rig rig) => StandardAtmosphere.PressureAt(rig.Altitude).Kilopascals;

    private static bool IsPressureHere(Rig rig, Measure read) => double.Abs(UnitSystem.Pressure(read).Kilopascals - PressureHere(rig)) < 4;

    private static string LargeDraw(IBoil boil) => Amount.Shown(boil.Units.From(boil.Rig.LargeDraw, boil.Units.SmallVolume));
}
