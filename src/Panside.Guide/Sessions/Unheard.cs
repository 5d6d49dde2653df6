using System.Text.RegularExpressions;

namespace Panside.Guide.Sessions;

/// <summary>What was said of fire, pan or boil and not understood: nobody leaves past it unasked.</summary>
internal static partial class Unheard
{
    /// <summary>What was said longer ago is not asked for; no source.</summary>
    private static readonly TimeSpan Lasts = TimeSpan.FromMinutes(30);

    /// <summary>Whether words tell of fire, pan or boil.</summary>
    /// <param name="said">The words.</param>
    public static bool Counts(string said) => !said.Contains('?', StringComparison.Ordinal) && Tells().IsMatch(said);

    /// <summary>The words that were not understood a while ago and still count; null where there are none.</summary>
    public static string? Before(Turn turn) => turn.State.Unheard is { } said && turn.State.MinutesSince(said.At) <= Lasts.TotalMinutes ? said.Words.Trim() : null;

    [GeneratedRegex(@"\b(?:coals?|embers?|glow\w*|simmer\w*|boil\w*|bubbl\w*|flames?|fire|burn\w*|pan|sap|drain\w*|leak\w*|low|lower|dropp\w*|fall\w*|fell)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Tells();
}
