namespace Panside.Picturing;

/// <summary>
/// Colors of a picture. It brings its own light ground, so that it reads the same on a light and a dark page; blue and orange
/// are told apart by those who do not see red and green apart, and what is true is also the thicker line.
/// </summary>
internal static class Ink
{
    public const string Ground = "#ffffff";

    public const string Text = "#1f2933";

    public const string Forecast = "#2166ac";

    public static Stroke Border { get; } = new("#7b8794", 1);

    public static Stroke Grid { get; } = new("#e4e7eb", 1);

    public static Stroke Mark { get; } = new("#616e7c", 1, "2 3");

    public static Stroke Median { get; } = new("#174a7e", 1.5);

    public static Stroke Truth { get; } = new("#c2500a", 2.5);

    public static Stroke Tank { get; } = new("#52606d", 1.5, "7 4");

    public static Stroke Least { get; } = new("#1f2933", 1, "1 3");

    /// <summary>How strongly the wide band is laid on; the narrow one lies over it with the same.</summary>
    public const double Band = 0.25;
}

/// <summary>A line's color and width, and its dashes where it has any.</summary>
internal sealed record Stroke(string Color, double Width, string? Dashes = null);
