using System.Text.RegularExpressions;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Terms;

/// <summary>What a person asks with <c>what if</c>.</summary>
public abstract partial record Supposition
{
    /// <summary>The word that it begins with.</summary>
    public const string Word = "what if";

    /// <summary>The forms that are understood, for a sentence.</summary>
    public const string Forms =
        "'what if I stop now', 'what if I add 5 gal', 'what if I pour a gallon' and 'what if I fire until eight' (or until 20:00, until 8:30 pm, for 30 min)";

    /// <summary>The longest firing that is asked about.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromHours(24);

    /// <summary>What stands behind <c>what if</c>; null where the text does not begin so.</summary>
    public static string? Behind(string said) => Begins().Match(said) is { Success: true } match ? match.Groups["rest"].Value.Trim() : null;

    /// <summary>What is supposed; null where it is not understood.</summary>
    /// <param name="rest">What stands behind <c>what if</c>.</param>
    /// <param name="now">When it is said.</param>
    /// <param name="units">The units of bare numbers.</param>
    public static Supposition? Read(string rest, DateTimeOffset now, UnitSystem units)
    {
        var said = rest.TrimEnd('?', ' ', '.', '!');
        if (Stops().IsMatch(said))
        {
            return new StopNow();
        }

        if (Pours().Match(said) is { Success: true } pours
            && MeasureText.Read(One().Replace(pours.Groups["amount"].Value, "1 "), Dimension.Volume, units.Preferred(Dimension.Volume)).Measure is { Value: > 0 } poured)
        {
            return new PourIn(poured);
        }

        if (Adds().Match(said) is { Success: true } adds)
        {
            var (sap, _) = MeasureText.Read(adds.Groups["amount"].Value, Dimension.Volume, units.Preferred(Dimension.Volume));
            return sap is { Value: > 0 } added ? new AddSap(added) : null;
        }

        if (Until().Match(said) is { Success: true } until)
        {
            return ClockTime.Read(until.Groups["time"].Value) is { } time ? new FireUntil(time.NextAfter(now)) : null;
        }

        return For().Match(said) is { Success: true } lasts && Span(lasts.Groups["time"].Value) is { } span
            ? new FireUntil(now + span)
            : null;
    }

    private static TimeSpan? Span(string text)
    {
        switch (text.ToLowerInvariant())
        {
            case "an hour":
                return TimeSpan.FromMinutes(60);
            case "half an hour":
                return TimeSpan.FromMinutes(30);
        }

        var (time, _) = MeasureText.Read(text, Dimension.Time, Unit.Minute);
        return time is { } read && read.Value * (read.Unit == Unit.Hour ? 60 : 1) is var minutes && minutes >= 1 && minutes <= Longest.TotalMinutes
            ? TimeSpan.FromMinutes(minutes)
            : null;
    }

    [GeneratedRegex(@"^what ?if\b(?<rest>.*)$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Begins();

    [GeneratedRegex(@"^(?:i |we )?stop(?: firing| the fire| the wood)?(?: right)?(?: now)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Stops();

    [GeneratedRegex(
        @"^(?:i |we )?pour(?: in)? (?<amount>.+?)(?: more)?(?: (?:of )?(?:cold |clean )*(?:sap|water))?(?: in)?(?: (?:in|to|into) (?:the )?pan)?(?: at (?:the )?(?:draw-off|syrup|feed)(?: side)?)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Pours();

    [GeneratedRegex(@"^(?:an?|one) ", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex One();

    [GeneratedRegex(
        @"^(?:i |we )?(?:add|added|refill|pour in|put in) (?<amount>.+?)(?: more)?(?: (?:of )?sap)?(?: (?:in|to|into) (?:the )?tank)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Adds();

    [GeneratedRegex(
        @"^(?:i |we )?(?:(?:keep )?(?:fire|firing)|go on|stop)(?: on| firing)? (?:until|till|to|at|by) (?<time>.+)$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Until();

    [GeneratedRegex(
        @"^(?:i |we )?(?:(?:keep )?(?:fire|firing)|go on)(?: on| firing)? (?:for )?(?:another )?(?<time>.+?)(?: more)?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex For();
}

/// <summary>No more wood from now on.</summary>
public sealed record StopNow : Supposition;

/// <summary>Sap goes into the tank.</summary>
/// <param name="Sap">How much.</param>
public sealed record AddSap(Measure Sap) : Supposition;

/// <summary>Cold sap or water is poured into the pan.</summary>
/// <param name="Liquid">How much.</param>
public sealed record PourIn(Measure Liquid) : Supposition;

/// <summary>The usual firing until a time.</summary>
/// <param name="Until">The time.</param>
public sealed record FireUntil(DateTimeOffset Until) : Supposition;
