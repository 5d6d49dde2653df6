using Panside.Screen.Typing;

namespace Panside.Screen.Painting;

/// <summary>The keys, on the last row.</summary>
internal static class KeyRow
{
    private const int HintsAtMost = 7;

    /// <summary>As many hints as fit, the most needed first.</summary>
    public static StyledLine Of(int width)
    {
        var text = "";
        foreach (var key in WordKeys.All.Where(key => key.Hint.Length > 0).Select(key => $"{key.Name} {key.Hint}").Append("Ctrl-C Leave").Take(HintsAtMost))
        {
            var longer = text.Length == 0 ? key : text + "  " + key;
            text = longer.Length <= width ? longer : text;
        }

        return StyledLine.Of(text).Fit(width);
    }
}
