using System.Text.RegularExpressions;

namespace Panside.Guide.Hearing;

/// <summary>Who asks what to do, or what was said, has not read, or not understood, what stands asked: it is said again, before any list or figure.</summary>
internal static partial class WhatToDo
{
    /// <summary>Whether words ask that and nothing else.</summary>
    public static bool Asks(string said) => Question().IsMatch(said);

    [GeneratedRegex(@"^\W*(?:(?:so|ok|okay|and|then|now|help|please)\W+)*(?:what(?: the \w+)?(?: do| should| must| can|'ll)? (?:(?:i|we) (?:have to |need to )?do|now|next)|what to do)(?: (?:here|now|next|first|then|please))*\W*$|^\W*(?:now what|huh|hm+|eh|wh?at|wut|pardon(?: me)?|come again|say (?:that )?again|sorry what|what (?:was|is) (?:that|it))\W*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Question();
}
