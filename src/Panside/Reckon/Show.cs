using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>Makes figures of quantities, in the units that were asked for and with the digits that are honest.</summary>
internal static class Show
{
    /// <summary>A temperature, with a band where there is one.</summary>
    public static Figure Temperature(this Given given, string name, Temperature value, (Temperature Low, Temperature High)? band = null, int digits = 1) =>
        Of(name, given.Units.From(value), digits) with
        {
            Band = band is { } b ? (given.Units.From(b.Low).Value, given.Units.From(b.High).Value) : null,
        };

    /// <summary>A difference of temperature.</summary>
    public static Figure Rise(this Given given, string name, TemperatureRise value, (TemperatureRise Low, TemperatureRise High)? band = null, int digits = 1) =>
        Of(name, given.Units.From(value), digits) with
        {
            Band = band is { } b ? (given.Units.From(b.Low).Value, given.Units.From(b.High).Value) : null,
        };

    /// <summary>A sugar content, with a band where there is one.</summary>
    public static Figure Brix(string name, double brix, double? either = null) =>
        new(name) { Value = brix, Unit = "Brix", Code = "Brix", Digits = 1, Band = either is { } e ? (brix - e, brix + e) : null };

    /// <summary>A pressure: a hundredth of an inch of mercury, a tenth of a hectopascal.</summary>
    public static Figure Pressure(this Given given, string name, Pressure value, (Pressure Low, Pressure High)? band = null)
    {
        var metric = given.Units == UnitSystem.Metric;
        return new(name)
        {
            Value = In(value),
            Unit = metric ? "hPa" : "inHg",
            Code = metric ? "hPa" : "inHg",
            Digits = metric ? 0 : 2,
            Band = band is { } b ? (In(b.Low), In(b.High)) : null,
        };

        double In(Pressure pressure) => metric ? pressure.Hectopascals : pressure.InchesOfMercury;
    }

    /// <summary>A volume with three digits; under a gallon in quarts.</summary>
    public static Figure Volume(this Given given, string name, Volume value, int significant = 3)
    {
        var usual = given.Units.From(value);
        var measure = usual.Value < 1 ? given.Units.From(value, given.Units.SmallVolume) : usual;
        return Of(name, measure, Decimals(measure.Value, significant));
    }

    /// <summary>A mass with three digits, with a band where there is one.</summary>
    public static Figure Mass(this Given given, string name, Mass value, (Mass Low, Mass High)? band = null, int significant = 3)
    {
        var measure = given.Units.From(value);
        return Of(name, measure, Decimals(measure.Value, significant)) with
        {
            Band = band is { } b ? (given.Units.From(b.Low).Value, given.Units.From(b.High).Value) : null,
        };
    }

    /// <summary>A volume a time.</summary>
    public static Figure Rate(this Given given, string name, VolumeRate value) => Of(name, given.Units.From(value), 1);

    /// <summary>Heat with three digits.</summary>
    public static Figure Heat(this Given given, string name, Energy value) => given.Units == UnitSystem.Metric
        ? Number(name, value.Megajoules, Decimals(value.Megajoules, 3), "MJ")
        : Number(name, value.Btu, Decimals(value.Btu, 3), "Btu");

    /// <summary>A number with so many digits in all.</summary>
    public static Figure Significant(string name, double value, int significant) => Number(name, value, Decimals(value, significant));

    /// <summary>A number with a unit of its own.</summary>
    public static Figure Number(string name, double value, int digits, string unit = "") =>
        new(name) { Value = value, Unit = unit, Code = unit, Digits = digits };

    /// <summary>A word.</summary>
    public static Figure Word(string name, string word) => new(name) { Word = word };

    private static Figure Of(string name, Measure measure, int digits) =>
        new(name) { Value = measure.Value, Unit = measure.Unit.Shown(), Code = measure.Unit.Code(), Digits = digits };

    private static int Decimals(double value, int significant) =>
        value == 0 ? 0 : significant - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
}
