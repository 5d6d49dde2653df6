namespace Panside.Screen.Painting;

/// <summary>The conversation, wrapped; what is still open stands above the input line and not here.</summary>
internal static class ConversationRows
{
    /// <summary>Rows that end so many rows before the newest.</summary>
    /// <param name="entries">What was said.</param>
    /// <param name="asked">What stands above the input line: its newest entry is not shown here too.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows wanted; as many are given.</param>
    /// <param name="scroll">Rows below the last one shown.</param>
    /// <returns>The rows, and how far it is scrolled: no further than there is something to see.</returns>
    public static (IReadOnlyList<StyledLine> Rows, int Scroll) Of(
        IReadOnlyList<Entry> entries, Asked asked, int width, int height, int scroll)
    {
        var hidden = asked.Stands is { } kind ? LastOf(entries, entry => entry.Kind == kind) : -1;
        var standing = asked.Said is { } said ? LastOf(entries, entry => entry.Texts[0] == said) : -1;
        var fresh = LastOf(entries, entry => entry.Opens);
        var upward = new List<StyledLine>();
        for (var index = entries.Count - 1; index >= 0 && upward.Count < height + scroll; index--)
        {
            if (index != hidden && index != standing)
            {
                upward.AddRange(Of(entries[index], width, index >= fresh).Reverse());
            }
        }

        var possible = int.Clamp(upward.Count - height, 0, scroll);
        var rows = upward.Skip(possible).Take(height).Reverse().ToList();
        return ([.. Enumerable.Repeat(StyledLine.Empty, height - rows.Count), .. rows], possible);
    }

    /// <summary>One entry, wrapped. Color is for the last answer only: what is settled stays quiet.</summary>
    private static IEnumerable<StyledLine> Of(Entry entry, int width, bool isFresh)
    {
        var tone = isFresh || entry.Tone == Tone.Plain ? entry.Tone : Tone.Strong;
        for (var index = 0; index < entry.Texts.Count; index++)
        {
            var opening = index == 0 && entry.Time.Length > 0 ? entry.Time + " " : "";
            var mark = index == 0 ? entry.MarkLength : 0;
            foreach (var row in Wrapping.Rows(opening + entry.Texts[index], width))
            {
                var before = row[..int.Min(opening.Length, row.Length)];
                var marked = row[before.Length..int.Min(before.Length + mark, row.Length)];
                yield return new(
                    new Piece(before, Tone.Plain), new Piece(marked, tone), new Piece(row[(before.Length + marked.Length)..], Tone.Plain));
                mark = entry.Tone == Tone.Strong ? mark : 0;
                opening = "";
            }
        }
    }

    private static int LastOf(IReadOnlyList<Entry> entries, Func<Entry, bool> isIt)
    {
        var index = entries.Count - 1;
        while (index >= 0 && !isIt(entries[index]))
        {
            index--;
        }

        return index;
    }
}
