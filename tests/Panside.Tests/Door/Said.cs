using System.Globalization;
using System.Text.Json;
using CsCheck;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckon;

namespace Panside.Tests.Door;

/// <summary>What a stranger says at the door: every reading and deed with numbers that no rig has, in every unit, written in every way.</summary>
internal static class Said
{
    /// <summary>Numbers at the edges of what a number, a quantity and a formula can be.</summary>
    private static readonly double[] Edges =
    [
        0, -0.0, 5e-324, -5e-324, 1e-300, 1e-9, -1e-9, 1e-12, 0.001, 0.1, -1, 1, 7, 26.9, 27, 27.75, 27.76, 31.3, 31.31, 32, 40, 59, 66.9, 85, 94, 100, 100.1,
        106, 210.4, 212, 217.4, 940, 1013, 1060, 1061, 1e5, 1e6, 9999999.999999, 1e9, -1e9, 1.1e9, 1e300, 1.7976931348623157e308, -32, -40, -273, -273.15,
        -273.2, -459.4, -459.67, -460, -500,
    ];

    private static readonly string[] Codes = [.. Enum.GetValues<Unit>().Select(unit => unit.Code())];

    /// <summary>A number.</summary>
    public static Gen<double> Number { get; } = Gen.OneOf(
        Gen.OneOf(Edges), Gen.Double[-600, 1200], Gen.Double[-1e9, 1e9], Gen.Double[0, 40], Gen.OneOf(Edges).Select(Gen.Double[-1e-6, 1e-6], (edge, off) => edge + off));

    /// <summary>A unit's code, of the right dimension or of any.</summary>
    public static Gen<string> Unit(Dimension? kind) => kind is { } known
        ? Gen.Frequency((9, Gen.OneOf(Codes.Where(code => UnitNames.FromCode(code)!.Value.Kind() == known).ToArray())), (1, Gen.OneOf(Codes)))
        : Gen.OneOf(Codes);

    /// <summary>The JSON of a reading or a deed, without its time.</summary>
    public static Gen<string> Fact { get; } = Gen.OneOf(
        Gen.OneOf(KnownReadings.BuiltIn.All.ToArray()).SelectMany(name => Number.Select(Unit(name.Kind), (value, unit) => Json("reading", name.Code, value, unit))),
        Gen.OneOf(DeedName.All.ToArray()).SelectMany(name => Number.Select(Unit(name.Kind), (value, unit) => Json("did", name.Code, value, unit))));

    private static readonly string[] Names =
    [
        "tank", "depth", "draw", "water", "sap", "pan", "hydrometer", "sample", "barometer", "pressure here", "air", "drew", "wood", "refill", "brix", "",
        "what if I add", "what if I fire for", "what if I fire until", "what if I fire until half past", "note", "the draw-off is at",
    ];

    private static readonly string[] Amounts =
    [
        "٣", "-٣", "３", "1٣", "1 ١/٢", "½", "-½", "1½", "1/0", "0/0", "1/999", "9999/1", "-0", "-0.000001", "0.000001", "9999999.999999", "-9999999", "1e9", "NaN",
        "∞", "27", "32", "-300", "-500", "60", "100.1", "24:00", "24:01", "00:00", "25:61", "٨:٣٠", "eight", "ſix", "noon", "midnight", "8:30 pm", "1,5", "1,500", ".5", "5.", "4 ft 2 in",
    ];

    private static readonly string[] Units = ["", "gal", "qt", "L", "mL", "in", "ft", "cm", "mm", "F", "C", "Brix", "inHg", "hPa", "kPa", "lb", "kg", "min", "h", "gal/h", "%", "K", "furlong"];

    /// <summary>A text as somebody might type it.</summary>
    public static Gen<string> Typed { get; } = Gen.OneOf(Names).SelectMany(
        name => Gen.OneOf(Gen.OneOf(Amounts), Number.Select(number => number.ToString("0.######", CultureInfo.InvariantCulture))).Select(
            Gen.OneOf(Units), Gen.Bool, (amount, unit, apart) => $"{name} {amount}{(apart ? " " : "")}{unit}".Trim()));

    /// <summary>The value of an option, as a shell would hand it over.</summary>
    public static Gen<string> Option(Input input) => Gen.Frequency(
        (6, Number.Select(Unit(input.Dimension), (number, unit) => number.ToString("0.######", CultureInfo.InvariantCulture) + " " + unit)),
        (2, Gen.OneOf(Amounts).Select(Gen.OneOf(Units), (amount, unit) => amount + unit)),
        (2, Gen.OneOf(input.Words.Count > 0 ? input.Words.ToArray() : [input.Example])),
        (4, Gen.Const(input.Example)));

    private static string Json(string kind, string code, double value, string unit) =>
        $"\"{kind}\":\"{code}\",\"value\":{(double.IsFinite(value) ? JsonSerializer.Serialize(value) : "1e400")},\"unit\":\"{unit}\"";
}
