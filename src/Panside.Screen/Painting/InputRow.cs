namespace Panside.Screen.Painting;

/// <summary>The line that is typed on; it slides so that the caret is always on it.</summary>
internal static class InputRow
{
    private const string Label = "You: ";
    private const string ReplayLabel = "Replay: ";

    /// <summary>The row and the caret's column.</summary>
    public static (StyledLine Row, int Caret) Of(string typed, int caret, int width, string before = "", bool isReplay = false)
    {
        var own = isReplay ? ReplayLabel : Label;
        var label = before.Length > 0 ? $"{before} {own}" : own;
        label = width >= 4 * Label.Length ? Columns.Cut(label, width / 2) : "";
        var room = int.Max(width - label.Length - 1, 0);
        var from = 0;
        while (from < caret && Columns.Of(typed[from..caret]) > room)
        {
            from += char.IsSurrogatePair(typed, from) ? 2 : 1;
        }

        var row = new StyledLine(new Piece(label, Tone.Strong), new Piece(typed[from..], Tone.Plain)).Fit(width);
        return (row, int.Clamp(label.Length + Columns.Of(typed[from..caret]), 0, int.Max(width - 1, 0)));
    }
}
