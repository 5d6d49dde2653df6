using System.Globalization;
using Humanizer;

namespace Panside.Guide.Measures;

/// <summary>Amounts as a tired person reads them: few digits, always a unit.</summary>
public static class Amount
{
    /// <summary>As given, three decimals at the most: <c>217.4 °F</c>.</summary>
    public static string Plain(Measure measure) => measure.ToString();

    /// <summary>With the digits that an instrument of its kind has.</summary>
    public static string Shown(Measure measure) => measure.Unit.Kind() switch
    {
        Dimension.Temperature or Dimension.Sugar => Number(measure.Value, "0.0") + " " + measure.Unit.Shown(),
        Dimension.Length => Number(measure.Value, "0.##") + " " + measure.Unit.Shown(),
        _ => Number(measure.Value, double.Abs(measure.Value) < 10 ? "0.#" : "0") + " " + measure.Unit.Shown(),
    };

    /// <summary>From low to high in one unit: <c>0 to 35 gal</c>.</summary>
    public static string Range(double low, double high, Unit unit) => $"{Number(low, "0.#")} to {Number(high, "0.#")} {unit.Shown()}";

    /// <summary>Minutes as a person says them: <c>5 minutes</c>, <c>1 hour, 20 minutes</c>.</summary>
    public static string Minutes(double minutes) => double.Round(minutes) < 1
        ? "under a minute"
        : TimeSpan.FromMinutes(double.Round(minutes)).Humanize(
            2, CultureInfo.InvariantCulture, maxUnit: TimeUnit.Hour, minUnit: TimeUnit.Minute, collectionSeparator: " ");

    private static string Number(double value, string form)
    {
        var text = value.ToString(form, CultureInfo.InvariantCulture);
        return text is "-0" or "-0.0" ? text[1..] : text;
    }
}
