namespace Panside.Picturing;

/// <summary>
/// Names of what happened, over the panels, each left of the line that leads down from it. A name that would lie under another
/// one's line goes a row lower; from right to left, so that no line runs through a name.
/// </summary>
public static class MarkRows
{
    /// <summary>Height of a row, in pixels.</summary>
    public const double RowHeight = 16;

    private const double Gap = 4;

    private static readonly Lettering Name = new(11) { Anchor = "end" };

    /// <summary>The row of each mark, from 0 on.</summary>
    /// <param name="marks">In order of time.</param>
    /// <param name="across">How far to the right a minute stands.</param>
    public static IReadOnlyList<int> Rows(IReadOnlyList<Mark> marks, Func<double, double> across)
    {
        var rows = new int[marks.Count];
        for (var mark = marks.Count - 1; mark >= 0; mark--)
        {
            var right = across(marks[mark].Minute);
            rows[mark] = Enumerable.Range(mark + 1, marks.Count - mark - 1)
                .Where(later => right > across(marks[later].Minute) - (2 * Gap) - Name.WidthOf(Text(marks[later])))
                .Select(later => rows[later] + 1)
                .DefaultIfEmpty(0)
                .Max();
        }

        return rows;
    }

    /// <summary>Writes the names and draws the lines.</summary>
    public static void Draw(SvgPage page, IReadOnlyList<Mark> marks, Func<double, double> across, double top, double bottom)
    {
        foreach (var (mark, row) in marks.Zip(Rows(marks, across)))
        {
            var (x, y) = (across(mark.Minute), top + (row * RowHeight));
            page.Line(Ink.Mark, new Place(x, y), new(x, bottom));
            page.Text(new(x - Gap, y + 11), Text(mark), Name);
        }
    }

    private static string Text(Mark mark) => $"{Axis.Time(mark.Minute)} {mark.Name}";
}
