namespace Panside.Screen.Painting;

/// <summary>A row of the right column. Where there is too little room, the rows of the highest rank give way first.</summary>
internal readonly record struct PanelRow(string Text, int Rank, Tone Tone = Tone.Plain)
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

    /// <summary>A label and what stands behind it.</summary>
    public static PanelRow Of(string label, int labelWidth, string value, int rank, Tone tone = Tone.Plain) =>
        new(Columns.Pad(label, labelWidth) + " " + value, rank, tone);

    /// <summary>An empty row between blocks.</summary>
    public static PanelRow Between { get; } = new("", Gap);
}
