using System.Collections.Immutable;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Gusty;

/// <summary>What burnt in one second.</summary>
/// <param name="Charges">Those left.</param>
/// <param name="Flame">Heat of their flame, in MJ.</param>
/// <param name="Glow">Heat of the coals, in MJ.</param>
/// <param name="Char">Heat of new coals, in MJ.</param>
internal readonly record struct GustyBurnt(ImmutableArray<Charge> Charges, double Flame, double Glow, double Char);

/// <summary>
/// Wood and coals of the gusty world. Flame spreads over a charge as something catching does: by what burns already and what does not yet, the
/// logistic law (Verhulst 1838); what has caught burns out slower. Coals burn over the grate that they cover, as the air allows, at one rate
/// while they cover it, so that a bed comes to its end and does not only thin. No source for the figures, calibrated.
/// </summary>
internal static class GustyFire
{
    /// <summary>What of a charge has caught at once, on a cold grate and on a covered one.</summary>
    private const double CatchesCold = 0.016, CatchesHot = 0.10;

    /// <summary>How much slower the last of a charge burns than flame spreads.</summary>
    private const double BurnsOut = 3.0;

    /// <summary>Power of the coals beside a covered grate by which they burn.</summary>
    private const double Thinning = 0.75;

    /// <summary>What a raked bed burns more than a heaped one.</summary>
    private const double Raked = 1.2;

    /// <summary>How far charges differ in heat and in time.</summary>
    public const double Uneven = 0.25;

    /// <summary>What a hash is for: a charge's time.</summary>
    private const int BurnTime = 3;

    /// <summary>One second.</summary>
    /// <param name="makeup">The rig as it is now.</param>
    /// <param name="rig">Its sizes.</param>
    /// <param name="truth">How it stands.</param>
    /// <param name="air">Air beside the usual.</param>
    /// <param name="warm">How warm the arch is, 0 cold to 1.</param>
    public static GustyBurnt Next(Makeup makeup, GustyRig rig, Truth truth, double air, double warm)
    {
        var covers = double.Min(truth.Coals / rig.GrateCoals, 1);
        var glow = rig.GrateBurns * air * (truth.CoalsLevel ? Raked : 1) * double.Pow(covers, Thinning);
        glow = covers < 1e-4 ? truth.Coals : double.Min(glow, truth.Coals);

        var fanned = double.Sqrt(air) * (0.4 + (0.6 * warm));
        var most = double.Max((rig.Air * air * FlueGas.HeatOfAir) - glow, 0);
        var left = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        var (flame, char_) = (0.0, 0.0);
        foreach (var charge in truth.Charges)
        {
            var burnt = double.Min(Burns(rig, truth, charge, covers) * fanned, double.Min(charge.Left, double.Max(most - flame, 0)));
            burnt = charge.Left <= 2e-3 * charge.Whole ? charge.Left : burnt;
            flame += burnt;
            char_ += burnt * charge.CharShare;
            if (burnt < charge.Left)
            {
                left.Add(charge with { Left = charge.Left - burnt, Seconds = charge.Seconds + 1 });
            }
        }

        return new(left.DrainToImmutable(), flame, glow, char_);
    }

    /// <summary>Flame of one charge, in MJ/s: by what is left and by what has caught, until that burns at its own pace.</summary>
    private static double Burns(GustyRig rig, Truth truth, Charge charge, double covers)
    {
        var since = truth.Second - (long)charge.Seconds;
        var seconds = rig.SpreadSeconds * (1 + (Uneven * Hashed.EitherWay(rig.Number, since, BurnTime)));
        var gone = 1 - (charge.Left / charge.Whole);
        var caught = gone + CatchesCold + ((CatchesHot - CatchesCold) * covers);
        return charge.Left * double.Min(caught, 1 / BurnsOut) / seconds;
    }
}
