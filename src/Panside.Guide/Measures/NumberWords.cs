using System.Globalization;
using System.Text.RegularExpressions;

namespace Panside.Guide.Measures;

/// <summary>The small whole numbers that people say in words where they count things: one to twelve.</summary>
internal static partial class NumberWords
{
    /// <summary>Any of the words, as a part of a regular expression.</summary>
    public const string Pattern = "one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve";

    private static readonly string[] All = Pattern.Split('|');

    /// <summary>What a word stands for; null for one that is no such number.</summary>
    /// <param name="word">The word, in small letters or large.</param>
    public static int? Value(string word) => Array.FindIndex(All, known => known.Equals(word, StringComparison.OrdinalIgnoreCase)) is >= 0 and var place ? place + 1 : null;

    /// <summary>What was said with its small numbers in digits: <c>one channel</c> is <c>1 channel</c>.</summary>
    public static string InDigits(string said) => Word().Replace(said, match => Value(match.Value)!.Value.ToString(CultureInfo.InvariantCulture));

    [GeneratedRegex(@"\b(?:" + Pattern + @")\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Word();
}
