namespace Panside.Picturing;

/// <summary>
/// Colors of a picture. It brings its own light ground, so that it reads the same on a light and a dark page; blue and orange
/// are told apart by those who do not see red and green apart, and what is true is also the thicker line.
/// </summary>
public static class Ink
{
    /// <summary>The page.</summary>
    public const string Ground = "#ffffff";

    /// <summary>Words and numbers.</summary>
    public const string Text = "#1f2933";

    /// <summary>What was forecast.</summary>
    public const string Forecast = "#2166ac";

    /// <summary>A frame, and ticks.</summary>
    public static Stroke Border { get; } = new("#7b8794", 1);

    /// <summary>Lines across a panel.</summary>
    public static Stroke Grid { get; } = new("#e4e7eb", 1);

    /// <summary>Down from the name of what happened.</summary>
    public static Stroke Mark { get; } = new("#616e7c", 1, "2 3");

    /// <summary>The middle of a forecast.</summary>
    public static Stroke Median { get; } = new("#174a7e", 1.5);

    /// <summary>What truly came.</summary>
    public static Stroke Truth { get; } = new("#c2500a", 2.5);

    /// <summary>Sap in the tank.</summary>
    public static Stroke Tank { get; } = new("#52606d", 1.5, "7 4");

    /// <summary>The least depth.</summary>
    public static Stroke Least { get; } = new("#1f2933", 1, "1 3");

    /// <summary>How strongly the wide band is laid on; the narrow one lies over it with the same.</summary>
    public const double Band = 0.25;
}

/// <summary>A line's color and width, and its dashes where it has any.</summary>
public sealed record Stroke(string Color, double Width, string? Dashes = null);
