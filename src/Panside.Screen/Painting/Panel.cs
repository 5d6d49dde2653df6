using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>The right column: where the procedure stands, its clocks, and the figures that decide.</summary>
internal static class Panel
{
    private const string Edge = "| ";

    /// <summary>Columns that it takes beside a screen's width.</summary>
    public static int WidthFor(int width) => width switch
    {
        < 72 => 31,
        < 100 => 32,
        < 120 => 36,
        _ => 40,
    };

    /// <summary>Exactly so many rows.</summary>
    public static IReadOnlyList<StyledLine> Of(Situation now, int width, int height, ReplaySight? replay = null)
    {
        List<PanelRow> rows =
        [
            .. StepRows.Of(now), PanelRow.Between, .. TimerRows.Of(now, replay), PanelRow.Between, .. FigureRows.Of(now, replay),
        ];
        while (rows.Count > height && rows.Count > 0 && rows.Max(row => row.Rank) is var highest and > PanelRow.Deciding)
        {
            rows.RemoveAt(rows.FindLastIndex(row => row.Rank == highest));
        }

        return
        [
            .. Enumerable.Range(0, height).Select(index =>
                index < rows.Count
                    ? new StyledLine(new Piece(Edge, Tone.Plain), new Piece(rows[index].Text, rows[index].Tone)).Fit(width)
                    : StyledLine.Of(Edge).Fit(width)),
        ];
    }
}
