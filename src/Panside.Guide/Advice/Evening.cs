using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>What an evening has used and made so far, and what it may come to.</summary>
internal static class Evening
{
    /// <summary>Sap in a tank in spring.</summary>
    private static Temperature Cold => Temperature.FromCelsius(4);

    /// <summary>Sap that has left the tank or was poured in, in liters; null where the tank was not read.</summary>
    public static double? SapUsedLiters(Situation now) => now.State.Totals.TankAtFirst is { } first && now.State.Rig.Tank is { } tank
        ? double.Max(first + now.State.Totals.RefilledLiters - tank.Liters, 0)
        : null;

    /// <summary>
    /// Syrup by the last charge, in liters: what was drawn, and what the sugar gives that will have come out of the tank by then; what is
    /// in the pan stays there. Null where tank or sap was not read.
    /// </summary>
    /// <remarks>A balance of sugar (<see cref="SyrupYield.ByMassBalance"/>), with the pan as sweet at the end as it is now.</remarks>
    public static double? SyrupLiters(Situation now)
    {
        if (now.State.Last(ReadingName.SapBrix) is not { } read || now.State.Rig.Tank is not { } tank)
        {
            return null;
        }

        var toCome = now.IsHeld ? 0 : double.Max(tank.Liters - (now.StopLiters ?? 0), 0);
        var sap = UnitSystem.Sugar(read.Value);
        return now.State.Totals.DrawnLiters
            + (toCome > 0 && sap.Brix is > 0.2 and < 60 ? SyrupYield.ByMassBalance(Portion.OfVolume(Volume.FromLiters(toCome), sap, Cold), now.Setting.Rig.Target).Liters : 0);
    }
}
