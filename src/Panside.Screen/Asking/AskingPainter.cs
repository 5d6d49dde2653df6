using Panside.Guide.Asking;
using Panside.Screen.Painting;
using Panside.Screen.Typing;

namespace Panside.Screen.Asking;

/// <summary>Paints questions away from the fire: the picture above, what was said below it, and the question where it always stands.</summary>
internal static class AskingPainter
{
    private const string HowToLeave = "  Press Ctrl-C again, or any key to stay.";

    /// <summary>Rows of the conversation that a picture never takes.</summary>
    private const int LeastSaid = 2;

    /// <summary>The frame.</summary>
    public static Frame Paint(IAsking asking, IReadOnlyList<Entry> said, IReadOnlyList<WordKey> keys, DeskPicture desk, int width, int height)
    {
        if (width < 1 || height < 1)
        {
            return new([.. Enumerable.Repeat(StyledLine.Empty, int.Max(height, 0))], null, 0);
        }

        var page = asking.Page;
        if (desk.Mode is ScreenMode.Helping or ScreenMode.Explaining)
        {
            return new(Help(asking, keys, width, height), null, desk.Scroll);
        }

        var isWhole = width >= Painter.LeastWidth && height >= Painter.LeastHeight;
        var isLeaving = desk.Mode == ScreenMode.AskingToLeave && asking.BeforeLeaving is not null;
        List<StyledLine> block =
        [
            .. Rows(isLeaving ? asking.BeforeLeaving! : page.Ask, isLeaving ? Tone.Doubt : Tone.Strong, width),
            .. Rows(isLeaving ? HowToLeave : page.Hint, Tone.Plain, width),
        ];
        var around = isWhole ? 4 : 1;
        block = [.. block.Take(int.Max(height - around, 0))];
        var body = int.Max(height - around - block.Count, 0);
        var picture = page.Picture.Take(int.Max(body - LeastSaid, 0))
            .Select(row => StyledLine.Of(Columns.Shorten(row, width)).Fit(width)).ToList();
        var (rows, scroll) = ConversationRows.Of(said, Nothing, width, body - picture.Count, desk.Scroll);
        var (input, caret) = InputRow.Of(desk.Typed, desk.Caret, width);
        var top = StyledLine.Of($" PANSIDE   {page.Title}", Tone.Bar).Fit(width);
        StyledLine[] below = isWhole ? [input, KeyRow.Of(width, keys)] : [input];
        return new(
            [
                .. isWhole ? [top] : Array.Empty<StyledLine>(),
                .. picture,
                .. rows.Select(row => row.Fit(width)),
                .. isWhole ? [StyledLine.Of(new string('─', width))] : Array.Empty<StyledLine>(),
                .. block,
                .. below,
            ],
            (caret, height - below.Length),
            scroll);
    }

    /// <summary>The question is no entry of the conversation: none of it stands elsewhere.</summary>
    private static readonly Asked Nothing = new("", Tone.Plain, [], "");

    private static IEnumerable<StyledLine> Rows(string text, Tone tone, int width) =>
        Wrapping.Rows(text, width).Select(row => StyledLine.Of(row, tone).Fit(width));

    private static IReadOnlyList<StyledLine> Help(IAsking asking, IReadOnlyList<WordKey> keys, int width, int height)
    {
        var page = asking.Page;
        List<StyledLine> rows =
        [
            StyledLine.Of(" HELP   any key goes back", Tone.Bar),
            .. Rows(page.Ask, Tone.Strong, width),
            .. Rows(page.Hint, Tone.Plain, width),
            StyledLine.Of("Keys", Tone.Strong),
            .. keys.Select(key => StyledLine.Of($"  {Columns.Pad(key.Name, 3)} {Columns.Pad(key.Word, 10)} {key.Meaning}")),
            StyledLine.Of("  Tab: the word begun.  Up, Down: lines before.  PageUp, PageDown.  Ctrl-C."),
            StyledLine.Of("Words to type, then Enter", Tone.Strong),
            .. asking.Help.SelectMany(line => Wrapping.Rows("  " + line, width).Select(row => StyledLine.Of(row))),
        ];
        return [.. Enumerable.Range(0, height).Select(index => (index < rows.Count ? rows[index] : StyledLine.Empty).Fit(width))];
    }
}
