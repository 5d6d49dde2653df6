using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>How much sap there still is, told as that it runs low: <c>sap's running low only got 4 gal</c> is the tank's reading, and no draw.</summary>
internal static partial class SapLeft
{
    /// <summary>The tank's reading; null where a line says anything else.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="units">The rig's units: those of a bare number.</param>
    public static MeansLine? Read(Moment at, string said, UnitSystem units) =>
        RunsLow().Match(said) is { Success: true } low && double.TryParse(low.Groups["value"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)
        && (low.Groups["unit"] is { Success: true, Value: var word } ? UnitNames.FromWord(word) : ReadingName.TankVolume.UnitIn(units)) is { } unit && unit.Kind() == Dimension.Volume
        && Measure.Of(value, unit) is { } measure
            ? new(new Reading(at, ReadingName.TankVolume, measure))
            : null;

    [GeneratedRegex(
        @"^(?:(?:the|my|our|hey|oh|ok|well|so|and|now|uh) )*(?:sap|tank)(?:'?s)?(?: (?:is|are|getting|gettin|running|runnin|going|goin|really|pretty|kinda|a bit))* (?:low|down to|out soon)[,;.]*(?: (?:and|just|i|we|i've|we've|only|have|got|about|like|maybe|there's|there is|down to|to|at))* (?<value>[0-9]+(?:\.[0-9]+)?) ?(?<unit>(?!left\b|now\b|to\b|of\b|or\b|sap\b|in\b)[a-z]+)?(?: ?(?:left|now|to go|of sap|in the tank|or so|sap))*$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex RunsLow();
}
