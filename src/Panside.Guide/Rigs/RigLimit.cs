using System.Globalization;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>How little and how much an amount of a rig file may be: wide enough for every rig of the trade, and stated in docs/rigs.md.</summary>
/// <param name="Dimension">What is measured.</param>
/// <param name="Low">The least.</param>
/// <param name="High">The most.</param>
/// <param name="Unit">The unit of both; a gallon is the US one.</param>
/// <param name="Example">How it may be written.</param>
public sealed record RigLimit(Dimension Dimension, double Low, double High, Unit Unit, string Example)
{
    /// <summary>Height above sea level.</summary>
    public static RigLimit Altitude { get; } = new(Dimension.Length, -3000, 120_000, Unit.Inch, "900 ft");

    /// <summary>Inside length of the pan.</summary>
    public static RigLimit PanLength { get; } = new(Dimension.Length, 6, 240, Unit.Inch, "48 in");

    /// <summary>Inside width of the pan.</summary>
    public static RigLimit PanWidth { get; } = new(Dimension.Length, 6, 120, Unit.Inch, "24 in");

    /// <summary>The depth that the pan is run at.</summary>
    public static RigLimit RunDepth { get; } = new(Dimension.Length, 0.25, 24, Unit.Inch, "1 1/2 in");

    /// <summary>The least depth while hot.</summary>
    public static RigLimit LeastDepth { get; } = new(Dimension.Length, 0.1, 24, Unit.Inch, "3/4 in");

    /// <summary>The depth for a shutdown.</summary>
    public static RigLimit FloodDepth { get; } = new(Dimension.Length, 0.25, 24, Unit.Inch, "2 1/2 in");

    /// <summary>The height of the wall.</summary>
    public static RigLimit WallDepth { get; } = new(Dimension.Length, 1, 36, Unit.Inch, "8 in");

    /// <summary>Mass of the firebrick.</summary>
    public static RigLimit Firebrick { get; } = new(Dimension.Mass, 0, 5000, Unit.Pound, "120 lb");

    /// <summary>Water in the wood, on a dry basis.</summary>
    public static RigLimit WoodMoisture { get; } = new(Dimension.Share, 0, 150, Unit.Percent, "20 %");

    /// <summary>One charge of wood.</summary>
    public static RigLimit Charge { get; } = new(Dimension.Mass, 0.2, 200, Unit.Pound, "7 lb");

    /// <summary>The time between two charges.</summary>
    public static RigLimit Interval { get; } = new(Dimension.Time, 1, 60, Unit.Minute, "8 min");

    /// <summary>The head tank's capacity.</summary>
    public static RigLimit Tank { get; } = new(Dimension.Volume, 1, 2000, Unit.Gallon, "35 gal");

    /// <summary>What a burner boils away.</summary>
    public static RigLimit Boils { get; } = new(Dimension.VolumeRate, 0.1, 200, Unit.GallonPerHour, "8 gal/h");

    /// <summary>The pail that a pan is fed with by hand.</summary>
    public static RigLimit Pail { get; } = new(Dimension.Volume, 0.1, 20, Unit.Gallon, "2 gal");

    /// <summary>The syrup's density aimed at.</summary>
    public static RigLimit Target { get; } = new(Dimension.Sugar, 60, 70, Unit.Brix, "66.9 Brix");

    /// <summary>How deep a flue hangs below the floor of a pan.</summary>
    public static RigLimit FlueDepth { get; } = new(Dimension.Length, 1, 24, Unit.Inch, "7 in");

    /// <summary>Flues of a pan.</summary>
    public static (int Low, int High) Flues => (1, 60);

    /// <summary>So many times its plan area the fire can see of a pan with flues.</summary>
    public static (double Low, double High) HeatedTimes => (1, 12);

    /// <summary>Channels of a pan.</summary>
    public static (int Low, int High) Channels => (1, 12);

    /// <summary>A measure as a number in the limit's unit.</summary>
    /// <param name="measure">The measure; it must be of the limit's dimension.</param>
    /// <param name="units">The rig's units: they say which gallon is meant.</param>
    public double ValueOf(Measure measure, UnitSystem units) => Dimension switch
    {
        _ when double.Abs(measure.Value) >= 1e9 => double.PositiveInfinity,
        Dimension.Volume => units.Volume(measure).UsGallons,
        Dimension.VolumeRate => measure.Unit == Unit.LiterPerHour
            ? VolumeRate.FromLitersPerHour(measure.Value).UsGallonsPerHour
            : units.Volume(new(measure.Value, Unit.Gallon)).UsGallons,
        Dimension.Time => measure.Value * (measure.Unit == Unit.Hour ? 60 : 1),
        _ => UnitSystem.Us.Convert(measure, Unit).Value,
    };

    /// <summary>Whether a number in the limit's unit is allowed: the bounds are, whatever a change of units makes of their last digit.</summary>
    public bool Allows(double value) => value >= Low - Hair(Low) && value <= High + Hair(High);

    private static double Hair(double bound) => double.Abs(bound) * 1e-9;

    /// <summary>As a fault says it: <c>6 to 240 in, like 48 in</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Low:0.##} to {High:0.##} {Unit.Shown()}, like {Example}");
}
