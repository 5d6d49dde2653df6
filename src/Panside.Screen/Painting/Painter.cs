using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>Paints a screen of any size. Pure: the same picture and size give the same frame.</summary>
internal static class Painter
{
    /// <summary>Below this many columns or rows, only what matters most is shown.</summary>
    public const int LeastWidth = 60;

    /// <summary>See <see cref="LeastWidth"/>.</summary>
    public const int LeastHeight = 16;

    /// <summary>From so many columns and rows on, the pan has a place of its own.</summary>
    public const int RoomyWidth = 100;

    /// <summary>See <see cref="RoomyWidth"/>.</summary>
    public const int RoomyHeight = 30;

    /// <summary>From so many rows on, all of the last two hours and the next has a place below the pan.</summary>
    public const int TallHeight = 38;

    /// <summary>As many rows of it as a lower screen shows, the clock under them.</summary>
    private const int RowsOfShortTime = 4;

    /// <summary>So many rows of the conversation stay at the least on a lower screen: what was typed and what came of it.</summary>
    private const int RowsOfTalk = 6;

    private const int LeastInside = 6;

    private const int MostInside = 10;

    private const int RowsOfReasons = 2;

    private const int RowsOfAlarm = 2;

    /// <summary>The frame.</summary>
    public static Frame Paint(ScreenPicture picture, int width, int height)
    {
        if (width < 1 || height < 1)
        {
            return new([.. Enumerable.Repeat(StyledLine.Empty, int.Max(height, 0))], null, 0);
        }

        if (picture.Mode is ScreenMode.Helping or ScreenMode.Explaining)
        {
            return new(picture.Mode == ScreenMode.Helping ? HelpPage.Of(picture, width, height) : TermsPage.Of(picture, width, height), null, picture.Scroll);
        }

        var now = new Situation(picture.Setting, picture.State);
        if (picture.Mode == ScreenMode.Far && !IsSmall(width, height))
        {
            return FarScreen.Of(picture, now, width, height);
        }

        return IsSmall(width, height) ? Small(picture, now, width, height) : Full(picture, now, width, height);
    }

    /// <summary>A painted frame with what is typed by now, and all else as it was.</summary>
    public static Frame Typed(Frame frame, ScreenPicture picture, int width)
    {
        var (input, caret) = Input(picture, width, frame.Rows.Count);
        return frame.With(input, caret);
    }

    private static bool IsSmall(int width, int height) => width < LeastWidth || height < LeastHeight;

    /// <summary>The line that is typed on. On the least screens the words that no screen is without have no other place.</summary>
    private static (StyledLine Row, int Caret) Input(ScreenPicture picture, int width, int height) => InputRow.Of(
        picture.Typed, picture.Caret, width, IsSmall(width, height) && !HasTop(height) ? TopRow.Marks(picture) : "", picture.Replay is not null);

    private static bool HasTop(int height) => height > 5;

    private static Frame Full(ScreenPicture picture, Situation now, int width, int height)
    {
        var asked = Asked.Of(now, picture);
        var block = Block(asked, now, width, RowsOfReasons);
        var body = height - block.Count - 4;
        var right = Panel.WidthFor(width);
        var pan = IsRoomy(width, height) ? PanDrawing.Whole(PanSight.Of(now), width - right - 1, InsideOf(body)) : [];
        var time = pan.Count > 0 ? TimeAxis.Rows(TimeSight.Of(now), width - right - 1, RowsOfTime(now, height, body - pan.Count - 1)) : [];
        var above = Under(pan, width - right - 1).Concat(Under(time, width - right - 1)).ToList();
        var (said, scroll) = ConversationRows.Of(picture.Said, asked, width - right - 1, body - above.Count, picture.Scroll);
        var rows = above.Concat(said);
        var column = Panel.Of(now, right, body, isRoomy: pan.Count > 0, picture.Replay);
        var (input, caret) = Input(picture, width, height);
        return new(
            [
                TopRow.Of(picture, width),
                .. rows.Zip(column, (left, beside) => left.Fit(width - right).With(beside)),
                Rule(width, scroll, picture.Replay),
                .. block,
                input,
                KeyRow.Of(width, picture.Keys),
            ],
            (caret, height - 2),
            scroll);
    }

    /// <summary>Whether the pan has a place of its own above the conversation.</summary>
    private static bool IsRoomy(int width, int height) => width >= RoomyWidth && height >= RoomyHeight;

    /// <summary>Rows that the axis of time may take: all where the screen is tall; else what the talk can spare, and nothing before the fire or in an emergency.</summary>
    private static int RowsOfTime(Situation now, int height, int room) =>
        height >= TallHeight ? int.MaxValue
        : !now.IsLit || TopRow.IsEmergency(now.State, now.Setting) ? 0
        : int.Min(room - RowsOfTalk - 1, RowsOfShortTime);

    /// <summary>A picture with a line under it; nothing where there is none.</summary>
    private static IEnumerable<StyledLine> Under(IReadOnlyList<string> picture, int width) =>
        picture.Count == 0 ? [] : picture.Append(new string('─', width)).Select(row => StyledLine.Of(row));

    /// <summary>Rows inside of the pan: at least <see cref="LeastInside"/>, and a quarter of a high screen.</summary>
    private static int InsideOf(int body) => int.Clamp((body / 4) - 1, LeastInside, MostInside);

    private static Frame Small(ScreenPicture picture, Situation now, int width, int height)
    {
        var hasInput = height > 1;
        var hasTop = HasTop(height);
        var room = height - (hasInput ? 1 : 0) - (hasTop ? 1 : 0);
        var asked = Asked.Of(now, picture);
        var block = Block(asked, now, width, 0);

        // What matters most comes first; the hint gives way before it.
        var kept = block.Take(room).ToList();
        var (rows, scroll) = ConversationRows.Of(picture.Said, asked, width, room - kept.Count, picture.Scroll);
        var (input, caret) = Input(picture, width, height);
        return new(
            [
                .. hasTop ? [TopRow.Of(picture, width)] : Array.Empty<StyledLine>(),
                .. rows.Select(row => row.Fit(width)),
                .. kept,
                .. hasInput ? [input] : Array.Empty<StyledLine>(),
            ],
            hasInput ? (caret, height - 1) : null,
            scroll);
    }

    /// <summary>An open alarm, what is asked, why, and what may be typed.</summary>
    private static List<StyledLine> Block(Asked asked, Situation now, int width, int reasons)
    {
        var alarm = Standing.Alarm(now, asked.Alarmed) is { } line
            ? Wrapping.Rows(line.ToString(), width).Take(RowsOfAlarm).Select(row => StyledLine.Of(row, line.Pieces[0].Tone))
            : [];
        var told = alarm.Select(row => row.Fit(width)).ToList();
        List<StyledLine> first =
        [
            .. Wrapping.Rows(asked.Action, width).Select(row => StyledLine.Of(row, asked.Tone).Fit(width)),
            .. asked.Reasons.SelectMany(reason => Wrapping.Rows(reason, width)).Take(reasons).Select(row => StyledLine.Of(row).Fit(width)),
        ];

        // S11: what is asked in a danger stands above every other alarm; else an alarm above what is asked.
        return
        [
            .. asked.Tone == Tone.Danger ? first.Concat(told) : told.Concat(first),
            .. asked.Hint.Length > 0 ? [StyledLine.Of(Columns.Shorten(asked.Hint, width)).Fit(width)] : Array.Empty<StyledLine>(),
        ];
    }

    private static StyledLine Rule(int width, int scroll, ReplaySight? replay)
    {
        var below = (replay is null ? "" : $"── {replay.Status} ") + (scroll > 0 ? $"── {scroll} rows below: PageDown " : "");
        return StyledLine.Of(Columns.Cut(below + new string('─', width), width));
    }
}
