using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>The right column: where the procedure stands, its clocks, and the figures that decide.</summary>
internal static class Panel
{
    private const string Edge = "│ ";

    private const int RowsOfPan = 2;

    /// <summary>Columns that it takes beside a screen's width.</summary>
    public static int WidthFor(int width) => width switch
    {
        < 72 => 31,
        < 120 => 36,
        < 140 => 40,
        _ => 60,
    };

    /// <summary>Exactly so many rows.</summary>
    /// <param name="now">The situation.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="isRoomy">Whether the pan has a place of its own: then what counts most stands here, large; else the pan, in two rows.</param>
    /// <param name="replay">What is shown of a replay; null at a boil.</param>
    public static IReadOnlyList<StyledLine> Of(Situation now, int width, int height, bool isRoomy, ReplaySight? replay = null)
    {
        var large = isRoomy ? CountRows.Of(now, width - Edge.Length) : [];
        return
        [
            .. large.Take(height).Select(row => StyledLine.Of(Edge).With(row).Fit(width)),
            .. Rows(now, width, int.Max(height - large.Count, 0), isRoomy, replay),
        ];
    }

    private static IReadOnlyList<StyledLine> Rows(Situation now, int width, int height, bool isRoomy, ReplaySight? replay)
    {
        List<PanelRow> rows =
        [
            .. StepRows.Of(now), PanelRow.Between, .. TimerRows.Of(now, replay), PanelRow.Between, .. FigureRows.Of(now, replay),
            .. isRoomy ? [] : PanDrawing.Small(PanSight.Of(now), width - Edge.Length, RowsOfPan).Select(row => PanelRow.Of(PanelRow.Useful, row)),
        ];
        while (rows.Count > height && rows.Count > 0 && rows.Max(row => row.Rank) is var highest and > PanelRow.Deciding)
        {
            rows.RemoveAt(rows.FindLastIndex(row => row.Rank == highest));
        }

        return
        [
            .. Enumerable.Range(0, height).Select(index =>
                index < rows.Count
                    ? new StyledLine(new Piece(Edge, Tone.Plain), new Piece(rows[index].In(width - Edge.Length), rows[index].Tone)).Fit(width)
                    : StyledLine.Of(Edge).Fit(width)),
        ];
    }
}
