using Panside.Reckoning.Quantities;

namespace Panside.Guide.Measures;

/// <summary>What is shown, and assumed where no unit is typed: <c>us</c>, <c>metric</c> or <c>imperial</c>.</summary>
public sealed class UnitSystem
{
    private readonly bool _imperialGallon;
    private readonly Unit[] _preferred;

    private UnitSystem(string code, bool imperialGallon, params Unit[] preferred) =>
        (Code, _imperialGallon, _preferred) = (code, imperialGallon, preferred);

    /// <summary>US customary: gal, in, °F, inHg, lb.</summary>
    public static UnitSystem Us { get; } = new("us", false, Unit.Gallon, Unit.Inch, Unit.DegreeFahrenheit, Unit.Brix,
        Unit.InchOfMercury, Unit.Pound, Unit.Minute, Unit.GallonPerHour, Unit.Percent);

    /// <summary>Metric: L, cm, °C, hPa, kg.</summary>
    public static UnitSystem Metric { get; } = new("metric", false, Unit.Liter, Unit.Centimeter, Unit.DegreeCelsius,
        Unit.Brix, Unit.Hectopascal, Unit.Kilogram, Unit.Minute, Unit.LiterPerHour, Unit.Percent);

    /// <summary>Imperial: as US, with the gallon of 4.54609 L.</summary>
    public static UnitSystem Imperial { get; } = new("imperial", true, Unit.Gallon, Unit.Inch, Unit.DegreeFahrenheit,
        Unit.Brix, Unit.InchOfMercury, Unit.Pound, Unit.Minute, Unit.GallonPerHour, Unit.Percent);

    /// <summary>All three.</summary>
    public static IReadOnlyList<UnitSystem> All { get; } = [Us, Metric, Imperial];

    /// <summary>The word in the rig file.</summary>
    public string Code { get; }

    /// <summary>The unit shown for a dimension.</summary>
    public Unit Preferred(Dimension dimension) => _preferred[(int)dimension];

    /// <summary>The smaller unit of volume that a draw is told in: quarts, or liters.</summary>
    public Unit SmallVolume => this == Metric ? Unit.Liter : Unit.Quart;

    /// <summary>A volume; the measure must be one.</summary>
    public Volume Volume(Measure measure) => measure.Unit switch
    {
        Unit.Gallon when _imperialGallon => Reckoning.Quantities.Volume.FromImperialGallons(measure.Value),
        Unit.Gallon => Reckoning.Quantities.Volume.FromUsGallons(measure.Value),
        Unit.Quart when _imperialGallon => Reckoning.Quantities.Volume.FromImperialQuarts(measure.Value),
        Unit.Quart => Reckoning.Quantities.Volume.FromUsQuarts(measure.Value),
        Unit.Liter => Reckoning.Quantities.Volume.FromLiters(measure.Value),
        Unit.Milliliter => Reckoning.Quantities.Volume.FromMilliliters(measure.Value),
        _ => throw Mismatch(measure, Dimension.Volume),
    };

    /// <summary>A length; the measure must be one.</summary>
    public static Length Length(Measure measure) => measure.Unit switch
    {
        Unit.Inch => Reckoning.Quantities.Length.FromInches(measure.Value),
        Unit.Foot => Reckoning.Quantities.Length.FromFeet(measure.Value),
        Unit.Meter => Reckoning.Quantities.Length.FromMeters(measure.Value),
        Unit.Centimeter => Reckoning.Quantities.Length.FromCentimeters(measure.Value),
        Unit.Millimeter => Reckoning.Quantities.Length.FromMillimeters(measure.Value),
        _ => throw Mismatch(measure, Dimension.Length),
    };

    /// <summary>A temperature; the measure must be one.</summary>
    public static Temperature Temperature(Measure measure) => measure.Unit switch
    {
        Unit.DegreeFahrenheit => Reckoning.Quantities.Temperature.FromFahrenheit(measure.Value),
        Unit.DegreeCelsius => Reckoning.Quantities.Temperature.FromCelsius(measure.Value),
        _ => throw Mismatch(measure, Dimension.Temperature),
    };

    /// <summary>A pressure; the measure must be one.</summary>
    public static Pressure Pressure(Measure measure) => measure.Unit switch
    {
        Unit.InchOfMercury => Reckoning.Quantities.Pressure.FromInchesOfMercury(measure.Value),
        Unit.Hectopascal => Reckoning.Quantities.Pressure.FromHectopascals(measure.Value),
        Unit.Kilopascal => Reckoning.Quantities.Pressure.FromKilopascals(measure.Value),
        _ => throw Mismatch(measure, Dimension.Pressure),
    };

    /// <summary>A mass; the measure must be one.</summary>
    public static Mass Mass(Measure measure) => measure.Unit switch
    {
        Unit.Pound => Reckoning.Quantities.Mass.FromPounds(measure.Value),
        Unit.Kilogram => Reckoning.Quantities.Mass.FromKilograms(measure.Value),
        _ => throw Mismatch(measure, Dimension.Mass),
    };

    /// <summary>A sugar content; the measure must be one.</summary>
    public static SugarContent Sugar(Measure measure) => measure.Unit == Unit.Brix
        ? SugarContent.FromBrix(measure.Value)
        : throw Mismatch(measure, Dimension.Sugar);

    /// <summary>A volume in the unit of this system that is asked for, or in its preferred one.</summary>
    public Measure From(Volume volume, Unit? unit = null)
    {
        var shown = unit ?? Preferred(Dimension.Volume);
        return new(shown switch
        {
            Unit.Gallon => _imperialGallon ? volume.ImperialGallons : volume.UsGallons,
            Unit.Quart => _imperialGallon ? volume.ImperialQuarts : volume.UsQuarts,
            Unit.Milliliter => volume.Milliliters,
            _ => volume.Liters,
        }, shown);
    }

    /// <summary>A length in this system's unit.</summary>
    public Measure From(Length length) => this == Metric
        ? new(length.Centimeters, Unit.Centimeter)
        : new(length.Inches, Unit.Inch);

    /// <summary>A temperature in the degree that is asked for, or in this system's.</summary>
    public Measure From(Temperature temperature, Unit? unit = null) => (unit ?? Preferred(Dimension.Temperature)) == Unit.DegreeCelsius
        ? new(temperature.Celsius, Unit.DegreeCelsius)
        : new(temperature.Fahrenheit, Unit.DegreeFahrenheit);

    /// <summary>A difference of temperature in the degree that is asked for, or in this system's.</summary>
    public Measure From(TemperatureRise rise, Unit? unit = null) => (unit ?? Preferred(Dimension.Temperature)) == Unit.DegreeCelsius
        ? new(rise.Celsius, Unit.DegreeCelsius)
        : new(rise.Fahrenheit, Unit.DegreeFahrenheit);

    /// <summary>A mass in this system's unit.</summary>
    public Measure From(Mass mass) => this == Metric
        ? new(mass.Kilograms, Unit.Kilogram)
        : new(mass.Pounds, Unit.Pound);

    /// <summary>A volume rate in this system's unit.</summary>
    public Measure From(VolumeRate rate) => this == Metric
        ? new(rate.LitersPerHour, Unit.LiterPerHour)
        : new(_imperialGallon ? rate.ImperialGallonsPerHour : rate.UsGallonsPerHour, Unit.GallonPerHour);

    /// <summary>The same measure in another unit of its dimension.</summary>
    public Measure Convert(Measure measure, Unit to) => to.Kind() switch
    {
        Dimension.Volume => From(Volume(measure), to),
        Dimension.Temperature => to == Unit.DegreeFahrenheit
            ? new(Temperature(measure).Fahrenheit, to)
            : new(Temperature(measure).Celsius, to),
        Dimension.Length => new(to switch
        {
            Unit.Inch => Length(measure).Inches,
            Unit.Foot => Length(measure).Feet,
            Unit.Centimeter => Length(measure).Centimeters,
            Unit.Millimeter => Length(measure).Millimeters,
            _ => Length(measure).Meters,
        }, to),
        Dimension.Pressure => new(to switch
        {
            Unit.InchOfMercury => Pressure(measure).InchesOfMercury,
            Unit.Hectopascal => Pressure(measure).Hectopascals,
            _ => Pressure(measure).Kilopascals,
        }, to),
        Dimension.Mass => new(to == Unit.Pound ? Mass(measure).Pounds : Mass(measure).Kilograms, to),
        _ when to == measure.Unit => measure,
        _ => throw Mismatch(measure, to.Kind()),
    };

    private static ArgumentException Mismatch(Measure measure, Dimension wanted) =>
        new($"{measure} is no {wanted}.", nameof(measure));
}
