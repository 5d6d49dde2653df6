using System.Collections.Frozen;

namespace Panside.Guide.Measures;

/// <summary>How units are written in the stream, and how people write them.</summary>
public static class UnitNames
{
    private static readonly (Unit Unit, Dimension Dimension, string Code, string Spoken, string[] Written)[] Table =
    [
        (Unit.Gallon, Dimension.Volume, "gal", "gal", ["gal", "gals", "gallon", "gallons", "g"]),
        (Unit.Quart, Dimension.Volume, "qt", "qt", ["qt", "qts", "quart", "quarts"]),
        (Unit.Liter, Dimension.Volume, "L", "L", ["l", "liter", "liters", "litre", "litres"]),
        (Unit.Milliliter, Dimension.Volume, "mL", "mL", ["ml", "milliliter", "milliliters", "millilitre", "millilitres"]),
        (Unit.Inch, Dimension.Length, "in", "in", ["in", "inch", "inches", "\"", "''", "”", "″"]),
        (Unit.Foot, Dimension.Length, "ft", "ft", ["ft", "foot", "feet", "'", "′"]),
        (Unit.Meter, Dimension.Length, "m", "m", ["m", "meter", "meters", "metre", "metres"]),
        (Unit.Centimeter, Dimension.Length, "cm", "cm", ["cm", "centimeter", "centimeters", "centimetre", "centimetres"]),
        (Unit.Millimeter, Dimension.Length, "mm", "mm", ["mm", "millimeter", "millimeters", "millimetre", "millimetres"]),
        (Unit.DegreeFahrenheit, Dimension.Temperature, "degF", "°F", ["f", "°f", "degf", "deg f", "fahrenheit"]),
        (Unit.DegreeCelsius, Dimension.Temperature, "degC", "°C", ["c", "°c", "degc", "deg c", "celsius"]),
        (Unit.Brix, Dimension.Sugar, "Brix", "Brix", ["brix", "bx", "°brix", "°bx", "b"]),
        (Unit.InchOfMercury, Dimension.Pressure, "inHg", "inHg", ["inhg", "in hg", "\"hg"]),
        (Unit.Hectopascal, Dimension.Pressure, "hPa", "hPa", ["hpa", "hectopascal", "hectopascals", "mbar", "mb", "millibar", "millibars"]),
        (Unit.Kilopascal, Dimension.Pressure, "kPa", "kPa", ["kpa", "kilopascal", "kilopascals"]),
        (Unit.Pound, Dimension.Mass, "lb", "lb", ["lb", "lbs", "pound", "pounds"]),
        (Unit.Kilogram, Dimension.Mass, "kg", "kg", ["kg", "kilo", "kilos", "kilogram", "kilograms"]),
        (Unit.Minute, Dimension.Time, "min", "min", ["min", "mins", "minute", "minutes"]),
        (Unit.Hour, Dimension.Time, "h", "h", ["h", "hr", "hrs", "hour", "hours"]),
        (Unit.GallonPerHour, Dimension.VolumeRate, "gal/h", "gal/h", ["gal/h", "gph", "gal/hr", "gal/hour"]),
        (Unit.LiterPerHour, Dimension.VolumeRate, "L/h", "L/h", ["l/h", "lph", "l/hr", "l/hour"]),
        (Unit.Percent, Dimension.Share, "%", "%", ["%", "percent", "pct"]),
    ];

    private static readonly FrozenDictionary<string, Unit> ByCode =
        Table.ToFrozenDictionary(row => row.Code, row => row.Unit, StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, Unit> ByWord =
        Table.SelectMany(row => row.Written, (row, word) => (word, row.Unit))
            .ToFrozenDictionary(pair => pair.word, pair => pair.Unit, StringComparer.OrdinalIgnoreCase);

    /// <summary>The code of the stream: <c>gal</c>, <c>degF</c>, <c>Brix</c> …</summary>
    public static string Code(this Unit unit) => Table[(int)unit].Code;

    /// <summary>As shown to a person: <c>gal</c>, <c>°F</c>.</summary>
    public static string Shown(this Unit unit) => Table[(int)unit].Spoken;

    /// <summary>What the unit measures.</summary>
    public static Dimension Kind(this Unit unit) => Table[(int)unit].Dimension;

    /// <summary>The unit of a stream code, matched to the letter; null where there is none.</summary>
    public static Unit? FromCode(string code) => ByCode.TryGetValue(code, out var unit) ? unit : null;

    /// <summary>The unit of a word as a person writes it; null where there is none.</summary>
    public static Unit? FromWord(string word) => ByWord.TryGetValue(word.Trim(), out var unit) ? unit : null;

    /// <summary>Every word that a unit is written as, in small letters.</summary>
    public static IReadOnlyList<string> Words { get; } = [.. Table.SelectMany(row => row.Written)];

    /// <summary>What is measured, as a sentence begins with it: <c>a volume a time</c>.</summary>
    public static string Spoken(Dimension dimension) => dimension switch
    {
        Dimension.Sugar => "sugar",
        Dimension.VolumeRate => "a volume a time",
        _ => "a " + dimension.ToString().ToLowerInvariant(),
    };

    /// <summary>Every unit of one dimension as people write it, for a sentence to them.</summary>
    public static string SpokenOf(Dimension dimension) =>
        string.Join(", ", Table.Where(row => row.Dimension == dimension).Select(row => row.Spoken));

    /// <summary>Every word that a unit of one dimension is written as, in small letters.</summary>
    public static IEnumerable<string> WordsOf(Dimension dimension) => Table.Where(row => row.Dimension == dimension).SelectMany(row => row.Written);

    /// <summary>The codes of every unit of one dimension, for a sentence.</summary>
    public static string CodesOf(Dimension dimension) =>
        string.Join(", ", Table.Where(row => row.Dimension == dimension).Select(row => row.Code));
}
