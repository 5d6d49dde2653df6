using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>What the model needs to know of a rig.</summary>
/// <param name="PanArea">Plan area of the pan; of two, of the one where the draw-off is.</param>
/// <param name="RunDepth">The depth that the float holds.</param>
/// <param name="LeastDepth">The depth that the pan must not fall below.</param>
/// <param name="FloodDepth">The depth for a shutdown.</param>
/// <param name="Channels">Channels of the pan, 1 or more; this and the depths are those of the pan where the draw-off is.</param>
/// <param name="ForcedDraft">Whether a blower feeds the fire.</param>
/// <param name="Firebrick">Mass of the brick.</param>
/// <param name="HasFloat">Whether sap feeds the pan from the tank: by a float, or by a valve that is set to the boil. Without, a hand pours it in.</param>
/// <param name="HeatOfCharge">Heat of one usual charge of wood as fired.</param>
/// <param name="UsualCharge">Mass of one usual charge.</param>
/// <param name="Interval">Time between charges.</param>
/// <param name="Target">Density of finished syrup.</param>
/// <param name="Tank">What the head tank holds when full; null where nobody says.</param>
public sealed record RigDescription(
    Area PanArea,
    Length RunDepth,
    Length LeastDepth,
    Length FloodDepth,
    int Channels,
    bool ForcedDraft,
    Mass Firebrick,
    bool HasFloat,
    Energy HeatOfCharge,
    Mass UsualCharge,
    TimeSpan Interval,
    SugarContent Target,
    Volume? Tank = null)
{
    /// <summary>What goes in at once where a hand feeds the pan, by pail or by turns of a valve: its depth is held no better; none where a float does.</summary>
    public Volume Portion { get; init; }

    /// <summary>Whether a burner or a coil heats the pan: then the heat of a charge is what it gives in an interval, as long as it is on.</summary>
    public bool IsBurner { get; init; }

    /// <summary>The pan behind, where there are two; a float feeds both then.</summary>
    public BackPan? Back { get; init; }

    /// <summary>Plan area of all that stands over the fire.</summary>
    public Area WholeArea => Back is { } back ? PanArea + back.Area : PanArea;

    /// <summary>
    /// The part of all water that leaves the pan where the draw-off is: by its share of the floor that the fire sees, flues counted; 1 where
    /// there is no other. No source: that flues behind get smoke which floor and flues in front have cooled is left out.
    /// </summary>
    public double BoiledInFront => Back is { } back ? PanArea.SquareMeters / (PanArea.SquareMeters + (back.HeatedTimes * back.Area.SquareMeters)) : 1;

    /// <summary>The pan's contents at the least depth.</summary>
    public Volume LeastVolume => PanArea * LeastDepth;

    /// <summary>Heat of a mass of this wood as fired.</summary>
    public Energy HeatOf(Mass wood) => HeatOfCharge * (wood / UsualCharge);
}
