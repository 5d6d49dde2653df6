namespace Panside.Screen.Painting;

/// <summary>What stands in a vessel, drawn in so many rows, an eighth of a row exact.</summary>
internal static class Vessel
{
    private const string Eighths = " ▁▂▃▄▅▆▇";

    /// <summary>The sign of a row.</summary>
    /// <param name="row">The row, 0 at the floor.</param>
    /// <param name="rows">Rows that the whole height takes.</param>
    /// <param name="share">How high the liquid stands, as a share of that height.</param>
    /// <param name="body">The sign of a row that is full.</param>
    public static char At(int row, int rows, double share, char body)
    {
        var eighths = (int)double.Clamp(double.Round((share * rows * 8) - (row * 8.0)), 0, 8);

        // A puddle is still seen: what is there is never drawn as nothing.
        return eighths == 8 ? body : eighths == 0 && row == 0 && share > 0 ? Eighths[1] : Eighths[eighths];
    }

    /// <summary>The row that a mark stands in.</summary>
    /// <param name="share">How high it stands.</param>
    /// <param name="rows">Rows that the whole height takes.</param>
    public static int RowOf(double share, int rows) => int.Clamp((int)double.Ceiling(share * rows) - 1, 0, rows - 1);

    /// <summary>How sweet it is, as a shade: raw sap, half-way, sweet, near syrup. Steps of the eye's own, no source.</summary>
    /// <param name="brix">The sugar; null where it is not known.</param>
    public static char Shade(double? brix) => brix switch
    {
        null or < 8 => '░',
        < 35 => '▒',
        < 60 => '▓',
        _ => '█',
    };
}
