using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Operator;

/// <summary>Numbers as a person types them.</summary>
public static class Typed
{
    private static readonly string[] Eighths = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

    /// <summary>With as many digits as are there.</summary>
    public static string Number(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>A number typed by a sleepy hand: its first two digits swapped, or ten times as much where they are alike.</summary>
    public static string Slipped(Measure measure)
    {
        var number = Number(measure.Value);
        return number.Length > 1 && char.IsAsciiDigit(number[0]) && char.IsAsciiDigit(number[1]) && number[0] != number[1]
            ? $"{number[1]}{number[0]}{number[2..]}"
            : Number(measure.Value * 10);
    }

    /// <summary>A bare number for a measure: inches in eighths.</summary>
    public static string Bare(Measure measure)
    {
        var eighths = (int)double.Round(measure.Value * 8);
        if (measure.Unit != Unit.Inch || double.Abs((eighths / 8.0) - measure.Value) > 1e-6 || eighths % 8 == 0)
        {
            return Number(measure.Value);
        }

        return eighths < 8 ? Eighths[eighths] : $"{eighths / 8} {Eighths[eighths % 8]}";
    }

    /// <summary>Whether nothing but a number was typed, so that only the question tells what it is.</summary>
    public static bool IsBare(string words) => !words.Any(char.IsLetter);
}

/// <summary>Temperatures in what the assistant says.</summary>
internal static partial class Temperatures
{
    /// <summary>The first one in a text; null where there is none.</summary>
    public static Temperature? In(string text) =>
        Degrees().Match(text) is { Success: true } match
        && double.TryParse(match.Groups["value"].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value)
            ? match.Groups["unit"].Value == "F" ? Temperature.FromFahrenheit(value) : Temperature.FromCelsius(value)
            : null;

    [GeneratedRegex(@"(?<value>-?[0-9]+(\.[0-9]+)?) ?°(?<unit>[FC])", RegexOptions.CultureInvariant)]
    private static partial Regex Degrees();
}
