namespace Panside.Guide.Measures;

/// <summary>What a unit measures. A value of one dimension never stands for another.</summary>
public enum Dimension
{
    /// <summary>A volume of sap or syrup.</summary>
    Volume,

    /// <summary>A depth, size or altitude.</summary>
    Length,

    /// <summary>A temperature.</summary>
    Temperature,

    /// <summary>Sugar by mass.</summary>
    Sugar,

    /// <summary>An air pressure.</summary>
    Pressure,

    /// <summary>A mass of wood or brick.</summary>
    Mass,

    /// <summary>A time.</summary>
    Time,

    /// <summary>A volume a time.</summary>
    VolumeRate,

    /// <summary>A share of a hundred.</summary>
    Share,
}

/// <summary>The units that are written in rig files, in the stream and by hand.</summary>
public enum Unit
{
    /// <summary>Gallon: US, or imperial on an imperial rig.</summary>
    Gallon,

    /// <summary>Quart: a quarter of the rig's gallon.</summary>
    Quart,

    /// <summary>Liter.</summary>
    Liter,

    /// <summary>Milliliter.</summary>
    Milliliter,

    /// <summary>Inch.</summary>
    Inch,

    /// <summary>Foot.</summary>
    Foot,

    /// <summary>Meter.</summary>
    Meter,

    /// <summary>Centimeter.</summary>
    Centimeter,

    /// <summary>Millimeter.</summary>
    Millimeter,

    /// <summary>Degree Fahrenheit.</summary>
    DegreeFahrenheit,

    /// <summary>Degree Celsius.</summary>
    DegreeCelsius,

    /// <summary>Degree Brix.</summary>
    Brix,

    /// <summary>Inch of mercury.</summary>
    InchOfMercury,

    /// <summary>Hectopascal.</summary>
    Hectopascal,

    /// <summary>Kilopascal.</summary>
    Kilopascal,

    /// <summary>Pound.</summary>
    Pound,

    /// <summary>Kilogram.</summary>
    Kilogram,

    /// <summary>Minute.</summary>
    Minute,

    /// <summary>Hour.</summary>
    Hour,

    /// <summary>Gallon an hour.</summary>
    GallonPerHour,

    /// <summary>Liter an hour.</summary>
    LiterPerHour,

    /// <summary>Percent.</summary>
    Percent,
}
