using Panside.Guide.Sessions;

namespace Panside.Screen.Painting;

/// <summary>The conversation, wrapped; what is still open stands above the input line and not here.</summary>
internal static class ConversationRows
{
    /// <summary>Rows that end so many rows before the newest.</summary>
    /// <param name="entries">What was said.</param>
    /// <param name="state">The state, for what is still open.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows wanted; as many are given.</param>
    /// <param name="scroll">Rows below the last one shown.</param>
    /// <returns>The rows, and how far it could be scrolled.</returns>
    public static (IReadOnlyList<StyledLine> Rows, int Scroll) Of(
        IReadOnlyList<Entry> entries, SessionState state, int width, int height, int scroll)
    {
        var hidden = Hidden(entries, state);
        var upward = new List<StyledLine>();
        for (var index = entries.Count - 1; index >= 0 && upward.Count < height + scroll; index--)
        {
            if (index != hidden)
            {
                upward.AddRange(Of(entries[index], width).Reverse());
            }
        }

        var possible = int.Clamp(upward.Count - height, 0, scroll);
        var rows = upward.Skip(possible).Take(height).Reverse().ToList();
        return ([.. Enumerable.Repeat(StyledLine.Empty, height - rows.Count), .. rows], possible);
    }

    /// <summary>One entry, wrapped.</summary>
    public static IEnumerable<StyledLine> Of(Entry entry, int width)
    {
        for (var index = 0; index < entry.Texts.Count; index++)
        {
            var opening = index == 0 && entry.Time.Length > 0 ? entry.Time + " " : "";
            var mark = index == 0 ? entry.MarkLength : 0;
            foreach (var row in Wrapping.Rows(opening + entry.Texts[index], width))
            {
                var before = row[..int.Min(opening.Length, row.Length)];
                var marked = row[before.Length..int.Min(before.Length + mark, row.Length)];
                yield return new(
                    new Piece(before, Tone.Plain), new Piece(marked, entry.Tone), new Piece(row[(before.Length + marked.Length)..], Tone.Plain));
                mark = entry.Tone == Tone.Strong ? mark : 0;
                opening = "";
            }
        }
    }

    private static int Hidden(IReadOnlyList<Entry> entries, SessionState state)
    {
        var kind = state.Doubted is not null ? EntryKind.Question : EntryKind.Prompt;
        var isOpen = state.Doubted is not null || state.Open is not null;
        for (var index = entries.Count - 1; isOpen && index >= 0; index--)
        {
            if (entries[index].Kind == kind)
            {
                return index;
            }
        }

        return -1;
    }
}
