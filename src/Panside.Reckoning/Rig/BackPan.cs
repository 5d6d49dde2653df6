using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>
/// The pan behind the one where the draw-off is, over the same fire: the tank's float feeds it, and a second float lets what it holds on
/// into the pan in front. Flat, or with flues that hang below its floor.
/// </summary>
/// <param name="Area">Its plan area.</param>
/// <param name="RunDepth">The depth that its float holds, over the flues.</param>
/// <param name="LeastDepth">The depth over the flues that it must not fall below.</param>
/// <param name="FloodDepth">The depth for a shutdown, over the flues.</param>
/// <param name="Channels">Channels that the sap runs through, 1 or more.</param>
/// <param name="HeatedTimes">So many times its plan area the fire sees: 1 for a flat floor, more with flues.</param>
/// <param name="InFlues">What its flues hold below the floor; none in a flat one. It counts for heat and sugar, and for no depth.</param>
public sealed record BackPan(
    Area Area, Length RunDepth, Length LeastDepth, Length FloodDepth, int Channels, double HeatedTimes, Volume InFlues)
{
    /// <summary>What it holds at a depth over its flues, what is in them with it.</summary>
    public Volume VolumeAt(Length depth) => (Area * depth) + InFlues;

    /// <summary>What it holds at its least depth.</summary>
    public Volume LeastVolume => VolumeAt(LeastDepth);

    /// <summary>Its depth over the flues with so much in it; less than none where the flues are not full.</summary>
    public Length DepthOf(Volume liquid) => (liquid - InFlues) / Area;
}
