using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>
/// Sap that comes in bursts: by hand in portions that vary, all into the first stretch; through a float that snaps open and shut, drips
/// when shut and lets in too little once the tank's head is low; through a valve whose flow falls with the head. Foam comes fast. The pan
/// goes on as in practice, its feed by <see cref="PouredFeed"/>; wood burns over a thick bed by <see cref="PouredFire"/>. Flow by the root
/// of the head: Torricelli; sizes of float, portions and drips: no source. Leaves out: splashes, a hand that pours unasked, ice.
/// </summary>
internal sealed class PouredWorld : World
{
    /// <summary>The rig's own number in <see cref="Truth.Own"/>, 0 to 1.</summary>
    internal const int Number = 0;

    /// <summary>Whether the float is open: 1 or 0.</summary>
    internal const int Open = 1;

    /// <summary>What the feed valve was last set to, in kg/s.</summary>
    internal const int Set = 2;

    /// <summary>The tank's head when it was set, beside that of a full tank.</summary>
    internal const int HeadThen = 3;

    /// <summary>The first of the brick's layers behind its face, in °C.</summary>
    internal const int Layers = 4;

    /// <summary>Heat into the pan that boils away a kilogram of cold sap, in MJ.</summary>
    private const double BoilsAway = 2.65;

    /// <summary>What the open float lets in under a full tank, beside what the usual fire boils away: no source.</summary>
    private const double FeedsTimes = 3.2;

    /// <summary>A portion is between two thirds and four thirds of what is meant: no source.</summary>
    private const double PortionsVary = 1 / 3.0;

    /// <inheritdoc/>
    public override string Name => "poured";

    /// <inheritdoc/>
    public override string Summary => "sap comes in bursts, by the tank's head or by the pail; a thick bed, and foam that comes fast";

    /// <summary>The spread of one rig beside another, no source: a tenth in what comes to the pan, a fifth in burn times, air, masonry and walls.</summary>
    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        double Factor(double deviation) => random?.Factor(deviation) ?? 1;
        var (area, burner) = (makeup.Size, makeup.Rig.IsBurner);
        var made = makeup with
        {
            MostFeed = makeup.UsualFire * (burner ? 0.5 : 0.33) / BoilsAway * FeedsTimes * Factor(0.15),
            Foaming = makeup.Foaming * 2.5 * Factor(0.2),
        };
        if (burner)
        {
            return made;
        }

        var coals = (makeup.Forced ? 320 : 4200) * Factor(0.18);
        return made with
        {
            ToPan = (makeup.Forced ? 0.20 : 0.22) * Factor(0.10),
            CharShare = random?.Between(0.31, 0.39) ?? 0.35,
            FlameSeconds = (makeup.Forced ? 360 : 660) * Factor(0.16),
            CoalSeconds = coals,
            UsualCoals = makeup.UsualFire * ((PouredFire.BedAir * coals * 0.8) + (makeup.Forced ? 120 : 240)),
            BrickSees = 0.28 * makeup.Area * Factor(0.15),
            BrickExchange = (makeup.Forced ? 14e-6 : 10e-6) * area * Factor(0.2),
            WallLoss = 5e-6 * area * Factor(0.2),
        };
    }

    /// <inheritdoc/>
    public override Truth Begun(Makeup makeup, Truth truth) => truth with
    {
        Own = [Noise.NumberOf(makeup), 0, truth.ValveLets, 1, .. Enumerable.Repeat(truth.BrickCelsius, PouredFire.Behind)],
    };

    /// <inheritdoc/>
    public override Given Burned(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? Fire.Step(makeup, truth) : PouredFire.Step(makeup, truth);

    /// <summary>The feed comes first; then the pan as in practice, which finds its valve shut.</summary>
    public override Truth Boiled(Makeup makeup, Truth truth, double heat) => makeup.Rig.Feed == Feed.ByHand || !truth.ValveOpen
        ? Pan.Step(makeup, truth, heat)
        : Pan.Step(makeup, PouredFeed.Fed(makeup, truth) with { ValveOpen = false }, heat) with { ValveOpen = true };

    /// <inheritdoc/>
    public override double Stored(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? base.Stored(makeup, truth) : PouredFire.Stored(makeup, truth);

    /// <summary>By eye, and all of it into the first cell, whose boil it stops.</summary>
    public override (Truth Then, Cell Sap) Portioned(Makeup makeup, Truth truth, double liters)
    {
        var varies = 1 + (PortionsVary * ((2 * Noise.At(truth.Own[Number], truth.Second, 1)) - 1));
        var sap = truth.Tank.Part(liters * varies / makeup.Materials.LitersOf(truth.Tank.Fraction, makeup.SapCelsius));
        return (Pan.PouredAtFeed(truth with { Tank = truth.Tank - sap }, sap, 1), sap);
    }
}
