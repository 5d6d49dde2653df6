using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// The fire's shares and time constants, as medians. No published value exists for a small wood-fired arch; these are
/// calibrated so that an ensemble gives what common practice reports of a pan of 2 ft by 4 ft: 1.0 gal/h of water a square
/// foot by natural draft and 1.5 with a blower, about 5 gal still boiled away after the last charge, about 3 gal after another
/// quarter of an hour, and a shutdown with a blower in about a third of the time. The spread around them is in
/// <see cref="RigPrior"/>.
/// </summary>
/// <param name="FlameMinutes">Time constant of the burning of volatiles.</param>
/// <param name="CoalMinutes">Time constant of the coals.</param>
/// <param name="BrickMinutes">Time constant of the brick, at 15 lb of brick a square foot of pan.</param>
/// <param name="ToPan">Share of the fire's heat that reaches the pan at once.</param>
/// <param name="Soak">The part of that share which brick takes up first as long as it is cold beside the fire.</param>
internal readonly record struct FireConstants(double FlameMinutes, double CoalMinutes, double BrickMinutes, double ToPan, double Soak)
{
    /// <summary>Share of the wood's heat that is given off by the coals: 0.25 to 0.40, from memory.</summary>
    public const double CoalShare = 0.35;

    /// <summary>
    /// Share of the fire's heat that goes into the brick: so much that hot brick boils on after the coals have gone, although cold
    /// feed and vapor take from what it gives.
    /// </summary>
    public const double ToBrick = 0.19;

    /// <summary>Share of the brick's heat that comes to the pan.</summary>
    public const double BrickToPan = 0.55;

    /// <summary>By the stack alone.</summary>
    public static readonly FireConstants Natural = new(6, 29, 46, 0.29, 0.45);

    /// <summary>With a blower: coals and brick give up their heat about three times as fast.</summary>
    public static readonly FireConstants Forced = new(4, 7, 15, 0.25, 0.6);

    /// <summary>
    /// A burner or a coil: nothing burns on, and what the arch holds is small and soon given off. No source; its heat is set by what the rig
    /// is said to boil away, so that the shares matter for the time after it is shut off alone.
    /// </summary>
    public static readonly FireConstants Burner = new(1, 1, 46, 0.38, 0.3);

    /// <summary>Heat of a burner in MJ that boils away a liter of sap on the mean, cold sap and surface included: no source, from the shares above.</summary>
    public const double BurnerMegajoulesPerLiter = 5.8;

    /// <summary>The constants for a rig.</summary>
    public static FireConstants Of(RigDescription rig) => rig.IsBurner ? Burner : Of(rig.ForcedDraft);

    /// <summary>The constants of a wood fire for a draft.</summary>
    public static FireConstants Of(bool forcedDraft) => forcedDraft ? Forced : Natural;
}
