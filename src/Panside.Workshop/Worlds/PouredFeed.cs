using Panside.Guide.Rigs;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>What comes into the pan of <see cref="PouredWorld"/> through float or valve: by the root of the tank's head, in bursts.</summary>
internal static class PouredFeed
{
    /// <summary>The float falls open so far below the depth at which it shuts, in m: no source.</summary>
    private const double Snaps = 0.004;

    /// <summary>What the shut float lets by, beside the open one: no source.</summary>
    private const double Drips = 0.012;

    /// <summary>The height of the tank's floor over the float, beside the height of a full tank's sap: no source.</summary>
    private const double Floor = 0.03;

    /// <summary>One second of feed, from the tank into the first cell.</summary>
    public static Truth Fed(Makeup makeup, Truth truth)
    {
        var own = truth.Own;
        var liters = truth.Tank.Mass * makeup.Materials.LitersOf(truth.Tank.Fraction, makeup.SapCelsius);
        var head = (Floor + double.Min(liters / makeup.Rig.Tank.Liters, 1)) / (Floor + 1);
        double lets;
        if (makeup.Rig.Feed == Feed.ByValve)
        {
            // Set by hand for the head of that moment.
            own = truth.ValveLets == own[PouredWorld.Set] ? own
                : own.SetItem(PouredWorld.Set, truth.ValveLets).SetItem(PouredWorld.HeadThen, head);
            lets = double.Min(truth.ValveLets * double.Sqrt(head / own[PouredWorld.HeadThen]), makeup.MostFeed * double.Sqrt(head));
        }
        else
        {
            var below = truth.FloatMeters - Pan.Depth(makeup, truth.Pan[0]);
            var open = below > Snaps ? 1 : below <= 0 ? 0 : own[PouredWorld.Open];
            own = open == own[PouredWorld.Open] ? own : own.SetItem(PouredWorld.Open, open);
            lets = (makeup.FloatHangs ?? double.Max(open, Drips)) * makeup.MostFeed * double.Sqrt(head);
        }

        var fed = truth.Tank.Part(lets);
        return truth with
        {
            Pan = truth.Pan.SetItem(0, truth.Pan[0] + fed),
            Tank = truth.Tank - fed,
            Own = own,
            Ledger = truth.Ledger with { Fed = truth.Ledger.Fed + fed },
        };
    }
}
