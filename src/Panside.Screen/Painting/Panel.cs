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
        < 140 => 40,
        _ => 60,
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

        AddRoomy(rows, PanPicture.Of(now, width - Edge.Length).ToList(), height);
        AddRoomy(rows, AheadChart.Of(now, width - Edge.Length), height);
        return
        [
            .. Enumerable.Range(0, height).Select(index =>
                index < rows.Count
                    ? new StyledLine(new Piece(Edge, Tone.Plain), new Piece(rows[index].Text, rows[index].Tone)).Fit(width)
                    : StyledLine.Of(Edge).Fit(width)),
        ];
    }

    /// <summary>Adds pictures where a large screen has room for them; figures and clocks come first.</summary>
    private static void AddRoomy(List<PanelRow> rows, IReadOnlyList<PanelRow> picture, int height)
    {
        if (picture.Count > 0 && rows.Count + 1 + picture.Count <= height)
        {
            rows.Add(PanelRow.Between);
            rows.AddRange(picture);
        }
    }
}
