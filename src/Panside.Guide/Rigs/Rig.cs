using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>How the fire gets its air.</summary>
public enum Draft
{
    /// <summary>By the stack alone.</summary>
    Natural,

    /// <summary>By a blower.</summary>
    Forced,
}

/// <summary>How sap comes into the pan.</summary>
public enum Feed
{
    /// <summary>A float opens a valve as the pan falls.</summary>
    ByFloat,

    /// <summary>A hand pours it in.</summary>
    ByHand,

    /// <summary>A valve that a hand sets to the boil.</summary>
    ByValve,
}

/// <summary>A rig as its file describes it, with a default for everything that the file leaves open.</summary>
public sealed record Rig
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What is shown, and assumed where no unit is typed.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Above sea level.</summary>
    public required Length Altitude { get; init; }

    /// <summary>Inside length of the pan.</summary>
    public required Length PanLength { get; init; }

    /// <summary>Inside width of the pan.</summary>
    public required Length PanWidth { get; init; }

    /// <summary>Channels; 1 is an undivided pan.</summary>
    public required int Channels { get; init; }

    /// <summary>The depth that the pan is run at.</summary>
    public required Length RunDepth { get; init; }

    /// <summary>The depth that it must never fall below while hot.</summary>
    public required Length LeastDepth { get; init; }

    /// <summary>The depth for a shutdown.</summary>
    public required Length FloodDepth { get; init; }

    /// <summary>The height of the wall.</summary>
    public required Length WallDepth { get; init; }

    /// <summary>Natural or forced.</summary>
    public required Draft Draft { get; init; }

    /// <summary>Mass of the firebrick.</summary>
    public required Mass Firebrick { get; init; }

    /// <summary>The wood's species, as written.</summary>
    public required string WoodSpecies { get; init; }

    /// <summary>The wood's moisture on a dry basis, 0 to 1.</summary>
    public required double WoodMoisture { get; init; }

    /// <summary>One charge of wood.</summary>
    public required Mass Charge { get; init; }

    /// <summary>The time between two charges.</summary>
    public required TimeSpan Interval { get; init; }

    /// <summary>The head tank's capacity.</summary>
    public required Volume Tank { get; init; }

    /// <summary>Whether the file says the tank's capacity; a default one is no limit for readings.</summary>
    public required bool TankIsStated { get; init; }

    /// <summary>How sap comes into the pan.</summary>
    public required Feed Feed { get; init; }

    /// <summary>Whether a float valve holds the pan's depth.</summary>
    public bool HasFloat => Feed == Feed.ByFloat;

    /// <summary>The pail that a pan is fed with by hand.</summary>
    public required Volume Pail { get; init; }

    /// <summary>Whether the file says the pail's size.</summary>
    public required bool PailIsStated { get; init; }

    /// <summary>
    /// What goes into the pan at once by hand: a pail, or less of it where a whole one would raise a small pan by more than half of what it
    /// stands over its least depth. Little and often: common practice, no source.
    /// </summary>
    public Volume Portion => PanArea * (RunDepth - LeastDepth) * 0.5 is var most && most < Pail ? most : Pail;

    /// <summary>The syrup's density aimed at.</summary>
    public required SugarContent Target { get; init; }

    /// <summary>The file's text.</summary>
    public required string Text { get; init; }

    /// <summary>Plan area of the pan.</summary>
    public Area PanArea => Area.FromSquareMeters(PanLength.Meters * PanWidth.Meters);

    /// <summary>The pan of 2 ft by 4 ft that the rules of the trade are made for.</summary>
    internal static Area SmallPan { get; } = Area.FromSquareFeet(8);

    /// <summary>One draw of close to 2 qt is large in a pan of 2 ft by 4 ft: common practice, carried to this one by its area.</summary>
    public Volume LargeDraw => Volume.FromUsQuarts(2 * (PanArea.SquareMeters / SmallPan.SquareMeters));

    /// <summary>The most that the tank can hold: where the file does not say it, no tank is as large.</summary>
    public Volume MostInTank => TankIsStated ? Tank : Tank * 20;

    /// <summary>The pan's contents at a depth.</summary>
    public Volume PanVolume(Length depth) => PanArea * depth;
}
