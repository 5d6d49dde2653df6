using Panside.Screen.Typing;

namespace Panside.Screen.Painting;

/// <summary>The keys, on the last row.</summary>
internal static class KeyRow
{
    private const int HintsAtMost = 7;

    /// <summary>As many hints as fit, the most needed first.</summary>
    public static StyledLine Of(int width, IReadOnlyList<WordKey> keys)
    {
        var first = keys[0];
        var text = Hint(first);
        foreach (var key in keys.Skip(1).Where(key => key.Hint.Length > 0).Select(Hint).Take(HintsAtMost - 2).Append("Ctrl-C Leave"))
        {
            var longer = text + "  " + key;
            text = longer.Length <= width ? longer : text;
        }

        var strong = Hint(first).Length;
        return new StyledLine(new Piece(text[..strong], Tone.Strong), new Piece(text[strong..], Tone.Plain)).Fit(width);
    }

    /// <summary>The two that matter from three metres.</summary>
    public static StyledLine Far(int width)
    {
        var emergency = Hint(WordKeys.All[0]);
        return new StyledLine(new Piece(emergency, Tone.Strong), new Piece("  F6 Back to the whole screen", Tone.Plain)).Fit(width);
    }

    private static string Hint(WordKey key) => $"{key.Name} {key.Hint}";
}
