using System.Globalization;
using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>What is likely meant by a value that is not believed.</summary>
internal static class Slips
{
    /// <summary>A sentence with the value, the range and the likely slip; null where the value is believed.</summary>
    public static string? Of(Input input, Written measure, UnitSystem units)
    {
        if (input.Limits is not { } limits || IsIn(measure, limits, units))
        {
            return null;
        }

        var (least, most) = (Bound(limits.Least), Bound(limits.Most));
        var range = $"{input.Option}: {measure} is outside {least} to {most} {measure.Unit.Shown()} for {input.What}";
        return $"{range}. {Likely(input, measure, limits, units) ?? "Look at it again."}";

        string Bound(double bound)
        {
            var value = In(measure.Unit, new(bound, limits.Unit), units);
            var form = Math.Abs(value) >= 300 ? "0" : measure.Unit.Kind() == Dimension.Temperature ? "0.#" : "0.##";
            return value.ToString(form, CultureInfo.InvariantCulture);
        }
    }

    private static string? Likely(Input input, Written measure, Limits limits, UnitSystem units)
    {
        foreach (var unit in Mistaken(measure.Unit))
        {
            if (IsIn(measure with { Unit = unit }, limits, units))
            {
                return $"Was {Name(unit)} meant? Then write '{Number(measure.Value)}{Written(unit)}'.";
            }
        }

        if (measure.Value < 0 && IsIn(measure with { Value = -measure.Value }, limits, units))
        {
            return $"Take the dash away: '{Number(-measure.Value)} {measure.Unit.Code()}'.";
        }

        if (input.Slip?.Invoke(measure) is { } slip)
        {
            return slip;
        }

        var hundredfold = measure with { Value = measure.Value * 100 };
        if (measure.Unit == Unit.Percent && IsIn(hundredfold, limits, units))
        {
            return $"A fraction? Then write '{Number(hundredfold.Value)} %'.";
        }

        var tenth = measure with { Value = measure.Value / 10 };
        return IsIn(tenth, limits, units) ? $"Was the decimal point left out of {Number(tenth.Value)}?" : null;
    }

    private static bool IsIn(Written measure, Limits limits, UnitSystem units)
    {
        return Measure.Of(measure.Value, measure.Unit) is { } held
            && In(limits.Unit, held, units) is var value && value >= limits.Least - 1e-9 && value <= limits.Most + 1e-9;
    }

    /// <remarks>Nobody takes feet for inches; feet for meters, everybody does.</remarks>
    private static Unit[] Mistaken(Unit unit) => unit switch
    {
        Unit.DegreeFahrenheit => [Unit.DegreeCelsius],
        Unit.DegreeCelsius => [Unit.DegreeFahrenheit],
        Unit.InchOfMercury => [Unit.Hectopascal, Unit.Kilopascal],
        Unit.Hectopascal => [Unit.Kilopascal, Unit.InchOfMercury],
        Unit.Kilopascal => [Unit.Hectopascal, Unit.InchOfMercury],
        Unit.Foot => [Unit.Meter],
        Unit.Meter => [Unit.Foot, Unit.Inch, Unit.Centimeter],
        Unit.Inch => [Unit.Centimeter],
        Unit.Centimeter => [Unit.Inch],
        _ => [],
    };

    private static double In(Unit unit, Measure measure, UnitSystem units) => (measure.Unit, unit) switch
    {
        (var one, var other) when one == other => measure.Value,
        (Unit.GallonPerHour, _) => units.Volume(new(measure.Value, Unit.Gallon)).Liters,
        (_, Unit.GallonPerHour) => units.Convert(new(measure.Value, Unit.Liter), Unit.Gallon).Value,
        _ => units.Convert(measure, unit).Value,
    };

    private static string Written(Unit unit) => unit switch
    {
        Unit.DegreeCelsius => "C",
        Unit.DegreeFahrenheit => "F",
        _ => " " + unit.Code(),
    };

    private static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    private static string Name(Unit unit) => unit switch
    {
        Unit.DegreeCelsius => "Celsius",
        Unit.DegreeFahrenheit => "Fahrenheit",
        _ => unit.Shown(),
    };
}
