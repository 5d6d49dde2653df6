using Panside.Screen.Typing;

namespace Panside.Screen.Painting;

/// <summary>The keys, on the last row.</summary>
internal static class KeyRow
{
    private const int HintsAtMost = 7;

    /// <summary>As many hints as fit, the most needed first.</summary>
    public static StyledLine Of(int width)
    {
        var emergency = WordKeys.All[0];
        var text = Hint(emergency);
        foreach (var key in WordKeys.All.Skip(1).Select(Hint).Append("Ctrl-C Leave").Take(HintsAtMost - 1))
        {
            var longer = text + "  " + key;
            text = longer.Length <= width ? longer : text;
        }

        var strong = Hint(emergency).Length;
        return new StyledLine(new Piece(text[..strong], Tone.Strong), new Piece(text[strong..], Tone.Plain)).Fit(width);
    }

    private static string Hint(WordKey key) => $"{key.Name} {key.Hint}";
}
