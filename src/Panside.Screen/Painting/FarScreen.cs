using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>
/// The next action and the countdown to what comes after it, in figures that are read from three metres. The line that is
/// typed on stays, so that an answer needs no way back.
/// </summary>
internal static class FarScreen
{
    private const char Ink = '█';
    private const int Margin = 1;
    private const int First = 1;
    private const int Last = 2;
    private const int Never = 3;

    /// <summary>The rows, exactly as many as the screen is high.</summary>
    public static Frame Of(ScreenPicture picture, Situation now, int width, int height)
    {
        var asked = Asked.Of(now, picture);
        var (input, caret) = InputRow.Of(picture.Typed, picture.Caret, width);
        var room = height - 3;
        var body = Body(asked, [.. Words(now, asked)], width, room);
        var rows = Enumerable.Range(0, int.Max(room, 0)).Select(index => index < body.Count ? body[index] : StyledLine.Empty);
        StyledLine[] all = [TopRow.Of(picture, width), .. rows.Select(row => row.Fit(width)), input, KeyRow.Far(width)];
        return new([.. all.TakeLast(height)], (caret, height - 2), 0);
    }

    /// <summary>
    /// The action in words, then all in large letters that has room. The countdown is never cut: what comes next is told in small
    /// letters before it, and then what is asked, which stands in words above.
    /// </summary>
    private static List<StyledLine> Body(Asked asked, IReadOnlyList<(string Text, int GivesWay)> words, int width, int room)
    {
        var tone = asked.Tone is Tone.Danger or Tone.Now ? asked.Tone : Tone.Strong;
        List<StyledLine> body = [];
        for (var small = 0; small <= Last; small++)
        {
            body = [.. Wrapping.Rows(asked.Action, width).Select(row => StyledLine.Of(row, asked.Tone))];
            foreach (var (text, givesWay) in words)
            {
                body.AddRange(givesWay <= small ? [StyledLine.Empty, Small(text, tone)] : Large(text, width, tone));
            }

            if (body.Count <= room)
            {
                break;
            }
        }

        return body;
    }

    /// <summary>What stands in large letters: what to do, then what comes next and how soon; each with when it gives way to the rest.</summary>
    private static IEnumerable<(string Text, int GivesWay)> Words(Situation now, Asked asked)
    {
        if (asked.Tone == Tone.Danger)
        {
            yield return ("danger", Never);
        }

        if (now.State.Open is { } open)
        {
            yield return (Dues.What(now.Setting, open.Step), Last);
        }

        if (now.State is { Now: { } moment, Clocks: [var clock, ..] })
        {
            yield return (clock.Text, First);
            yield return (Times.To(moment.Time, clock.Until), Never);
        }

        if (now.State.Now is { } at && !TopRow.IsEmergency(now.State, now.Setting) && Dues.Soonest(now) is { } due)
        {
            yield return (now.State.Open is null ? due.What : "then " + due.What, First);
            yield return (Times.Until(at.Time, due.At), Never);
        }
    }

    private static StyledLine Small(string text, Tone tone) => StyledLine.Of(new string(' ', Margin) + text, tone);

    /// <summary>A text in large letters, in as many lines as its words need; in small ones where even a word is too wide.</summary>
    private static IEnumerable<StyledLine> Large(string text, int width, Tone tone)
    {
        var line = "";
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var longer = line.Length > 0 ? line + " " + word : word;
            if (line.Length > 0 && LargeLetters.WidthOf(longer) + Margin > width)
            {
                foreach (var row in Drawn(line, width, tone))
                {
                    yield return row;
                }

                longer = word;
            }

            line = longer;
        }

        foreach (var row in Drawn(line, width, tone))
        {
            yield return row;
        }
    }

    private static IEnumerable<StyledLine> Drawn(string line, int width, Tone tone)
    {
        yield return StyledLine.Empty;
        foreach (var row in LargeLetters.WidthOf(line) + Margin > width ? [line] : LargeLetters.Rows(line, Ink))
        {
            yield return StyledLine.Of(new string(' ', Margin) + row, tone);
        }
    }
}
