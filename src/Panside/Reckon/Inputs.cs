using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;

namespace Panside.Reckon;

/// <summary>Inputs that several calculations share.</summary>
internal static class Inputs
{
    private const string Baume = "A number near 36 is degrees Baume: 'panside reckon baume --baume 36' turns it into Brix.";

    /// <summary>The density to finish at.</summary>
    public static Input Target { get; } = Sugar("target", "the density to finish at", "66.9", 60, 70) with { Usual = "66.9 Brix" };

    /// <summary>A measured boil of plain water.</summary>
    public static Input BoilingWater { get; } = new("boiling-water", "the temperature of boiling water today", "210.4F")
    {
        Dimension = Dimension.Temperature,
        Limits = new(91.76, 101.77, Unit.DegreeCelsius),
        Slip = _ => "Boil plain water hard, and read it again.",
        IsOptional = true,
    };

    /// <summary>The air's pressure at the pan.</summary>
    public static Input Station { get; } = new("pressure", "the air's own pressure at the pan, not reduced to sea level", "29.1 inHg")
    {
        Dimension = Dimension.Pressure,
        Limits = new(75, 108, Unit.Kilopascal),
        IsOptional = true,
    };

    /// <summary>The pressure of a weather report.</summary>
    public static Input Barometer { get; } = new("barometer", "the pressure of a weather report, reduced to sea level", "30.05 inHg")
    {
        Dimension = Dimension.Pressure,
        Limits = new(940, 1060, Unit.Hectopascal),
        Slip = said => Measure.Of(said.Value, said.Unit) is { } pressure && UnitSystem.Pressure(pressure).Hectopascals is > 700 and < 940
            ? "Is it the air's own pressure? Then give it as --pressure."
            : null,
        IsOptional = true,
        With = "altitude",
    };

    /// <summary>The altitude of the pan, where water still boils above 75 kPa on a low day.</summary>
    public static Input Altitude { get; } = AltitudeTo(2200);

    /// <summary>The inputs that tell at what water boils today.</summary>
    public static IReadOnlyList<Input> Air { get; } = [BoilingWater, Station, Barometer, Altitude];

    /// <summary>Of which one must be given.</summary>
    public static IReadOnlyList<string> AirOneOf { get; } = ["boiling-water", "pressure", "altitude"];

    /// <summary>What a syrup hydrometer shows.</summary>
    public static Input Reading { get; } = Sugar("reading", "what the hydrometer shows", "59", 45, 75) with { IsOptional = true };

    /// <summary>Where a syrup hydrometer tells the truth.</summary>
    public static Input SyrupGlass { get; } = new("calibration", "the temperature printed on the hydrometer", "60F")
    {
        Words = ["60F", "68F"],
        Usual = "60F",
    };

    /// <summary>A wood of the table.</summary>
    public static Input Species { get; } = new("species", "the wood", "sugar maple")
    {
        Words = FirewoodNames.Known,
        Understand = text => FirewoodNames.FromName(text) is { } species ? FirewoodNames.NameOf(species) : null,
        Usual = "sugar maple",
    };

    /// <summary>A place with a law.</summary>
    public static Input Place { get; } = new("place", "where the syrup is sold", "Vermont")
    {
        Words = JurisdictionNames.Known,
        Understand = text => JurisdictionNames.FromName(text) is { } place ? JurisdictionNames.NameOf(place) : null,
    };

    /// <summary>An altitude up to some meters.</summary>
    public static Input AltitudeTo(double meters) => new("altitude", "the altitude of the pan", "900 ft")
    {
        Dimension = Dimension.Length,
        Limits = new(-400, meters, Unit.Meter),
        Assumed = units => units == UnitSystem.Metric ? Unit.Meter : Unit.Foot,
        IsOptional = true,
    };

    /// <summary>A sugar content. Where only syrup is believed, a number under it is likely Baume.</summary>
    public static Input Sugar(string name, string what, string example, double least = 0, double most = 85) => new(name, what, example)
    {
        Dimension = Dimension.Sugar,
        Limits = new(least, most, Unit.Brix),
        Slip = brix => brix.Value switch
        {
            < 0 => "Sugar is never less than none.",
            > 25 and < 45 when least >= 45 => Baume,
            > 85 and <= 100 => "Nothing so heavy flows; syrup is near 67 Brix.",
            _ => null,
        },
    };

    /// <summary>A temperature of a liquid.</summary>
    public static Input Temperature(string name, string what, string example, double least = 0, double most = 110) => new(name, what, example)
    {
        Dimension = Dimension.Temperature,
        Limits = new(least, most, Unit.DegreeCelsius),
    };

    /// <summary>An amount of liquid.</summary>
    public static Input Volume(string name, string what, string example) => new(name, what, example)
    {
        Dimension = Dimension.Volume,
        Limits = new(0.001, 1_000_000, Unit.Liter),
    };

    /// <summary>A mass.</summary>
    public static Input Mass(string name, string what, string example) => new(name, what, example)
    {
        Dimension = Dimension.Mass,
        Limits = new(0.001, 1_000_000, Unit.Kilogram),
    };

    /// <summary>A share.</summary>
    public static Input Share(string name, string what, string example, double least, double most) => new(name, what, example)
    {
        Dimension = Dimension.Share,
        Limits = new(least, most, Unit.Percent),
    };
}
