using Panside.Guide.Advice;
using Panside.Screen.Typing;

namespace Panside.Screen.Painting;

/// <summary>One page: what is asked now, the keys, and the words that can be typed.</summary>
internal static class HelpPage
{
    /// <summary>The page, as much of it as fits.</summary>
    public static IReadOnlyList<StyledLine> Of(ScreenPicture picture, int width, int height)
    {
        var asked = Asked.Of(new Situation(picture.Setting, picture.State), picture with { Mode = ScreenMode.Talking });
        List<StyledLine> rows =
        [
            StyledLine.Of($" HELP{TopRow.Marks(picture, "   ")}   {(picture.Replay is null ? "F1 again: this step's words explained. " : "")}Any other key goes back", Tone.Bar),
            .. picture.Replay is null ? Wrapped(asked.Action, width, Tone.Strong) : [],
            .. picture.Replay is null ? Wrapped(asked.Hint, width, Tone.Plain) : [],
            .. picture.Keys.Select(key => StyledLine.Of($"  {Columns.Pad(key.Name, 3)} {Columns.Pad(key.Word, 10)} {key.Meaning}")),
            StyledLine.Of("  Tab: word begun.  Up, Down: lines before.  PageUp, PageDown.  Ctrl-C: leave."),
            StyledLine.Of("Words to type, one to a line, then Enter", Tone.Strong),
            .. picture.Told.SelectMany(line => Wrapped("  " + line.Text, width, Tone.Plain)),
        ];
        return [.. Enumerable.Range(0, height).Select(index => (index < rows.Count ? rows[index] : StyledLine.Empty).Fit(width))];
    }

    private static IEnumerable<StyledLine> Wrapped(string text, int width, Tone tone) =>
        text.Length == 0 ? [] : Wrapping.Rows(text, width).Select(row => StyledLine.Of(row, tone));
}
