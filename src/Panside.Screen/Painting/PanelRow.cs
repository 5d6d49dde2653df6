namespace Panside.Screen.Painting;

/// <summary>
/// A row of the right column, said in one or more ways, the longest first: the first that has room is shown. Where there are too many
/// rows, those of the highest rank give way first.
/// </summary>
internal readonly record struct PanelRow(int Rank, Tone Tone, params IReadOnlyList<string> Ways)
{
    /// <summary>Rank of what decides.</summary>
    public const int Deciding = 0;

    /// <summary>Rank of where the procedure stands: gives way on the lowest screens only.</summary>
    public const int Placing = 1;

    /// <summary>Rank of what is good to know.</summary>
    public const int Useful = 2;

    /// <summary>Rank of what is told elsewhere too.</summary>
    public const int Extra = 3;

    /// <summary>Rank of an empty row.</summary>
    public const int Gap = 4;

    /// <summary>A row in the terminal's own tone.</summary>
    public static PanelRow Of(int rank, params IReadOnlyList<string> ways) => new(rank, Tone.Plain, ways);

    /// <summary>An empty row between blocks.</summary>
    public static PanelRow Between { get; } = Of(Gap, "");

    /// <summary>The longest way to say it that has room; of none the shortest, cut.</summary>
    public string In(int width) => Ways.FirstOrDefault(way => Columns.Of(way) <= width) ?? Columns.Cut(Ways[^1], width);
}
