using Panside.Guide.Knowledge;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>
/// Rules of the trade for a small divided pan of 2 ft by 4 ft, carried to other sizes by the pan's area. Common practice, no
/// source. They stand as a floor under the reckoning: where it is more daring, they win.
/// </summary>
public static class CommonPractice
{
    /// <summary>
    /// Sap in the tank at the last charge, over and above the pan's own: 5 gal for a newcomer or a season's first shutdown,
    /// 3 gal for a confident hand.
    /// </summary>
    public static Volume ReserveAtLastCharge(Area pan, bool cautious) =>
        Volume.FromUsGallons((cautious ? 5 : 3) * (pan.SquareMeters / Rigs.Rig.SmallPan.SquareMeters));

    /// <summary>
    /// Sap in the tank at the last charge: what the reckoning says, or that floor where it is more. The quantiles weigh sap wanted against
    /// syrup and minutes lost: found on simulated worlds of other physics, where no pan scorched with them (docs/worlds.md).
    /// </summary>
    public static Volume StopAt(Setting setting, RigForecasts ahead, bool cautious)
    {
        var reckoned = ahead.OnceLastCharged(setting.Rig.Charge).ReserveLiters(cautious ? Cautious : Confident);
        return Volume.FromLiters(double.Max(reckoned, ReserveAtLastCharge(setting.Rig.WholeArea, cautious).Liters));
    }

    private const double Cautious = 0.95;

    private const double Confident = 0.9;

    /// <summary>With the feed off and heat on, the channels begin to mix within half an hour.</summary>
    public static TimeSpan ChannelsMix => TimeSpan.FromMinutes(30);
}
