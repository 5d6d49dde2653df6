using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>The evening's draws poured together, by balances of mass and of sugar; and what they teach of the thermometer.</summary>
internal static class SyrupBatch
{
    /// <summary>As warm as syrup stands in the pail when its volume is told: common practice, no source; 10 K are half a part in a hundred of its mass.</summary>
    internal static Temperature InThePail => Temperature.FromCelsius(95);

    /// <summary>
    /// So many draws' worth is the belief that pails hold what the thermometer says: one glass moves it by half of what it shows. No source,
    /// tried on simulated rigs.
    /// </summary>
    private const double Believed = 1;

    /// <summary>What is learned is bounded, in Brix: beyond, glass or thermometer is broken, and no pan is run by it.</summary>
    private const double MostOff = 2.5;

    /// <summary>An open draw-off is shut at the latest then, whatever it reads: such a draw tells nothing of the thermometer.</summary>
    private static readonly TimeSpan ShutByTime = TimeSpan.FromSeconds(170);

    /// <summary>
    /// How much sweeter pails are than the draw-off thermometer says, in Brix, learned from the samples of tonight's draws: its offset in
    /// syrup, its lag, and the hand at the valve, all in one. 0 before the first sample.
    /// </summary>
    public static double PailOver(SessionState state)
    {
        var told = state.Syrup.Where(draw => draw is { Brix: not null, ExpectedBrix: not null, By: not DensityBy.Thermometer }
            && draw.Shut?.Time - draw.Opened.Time < ShutByTime).ToList();
        return double.Clamp(told.Sum(draw => draw.Brix!.Value - draw.ExpectedBrix!.Value) / (told.Count + Believed), -MostOff, MostOff);
    }

    /// <summary>A draw's density by the best that is known of it; null where nothing is.</summary>
    public static double? Density(SessionState state, DrawnSyrup draw) => draw.Brix ?? (draw.ExpectedBrix + PailOver(state));

    /// <summary>The batch so far; null where nothing was drawn of which a density is known. A draw of which none is known counts as the others.</summary>
    public static Portion? Of(SessionState state)
    {
        var known = state.Syrup.Where(draw => draw.Liters > 0)
            .Select(draw => (draw.Liters, Brix: Density(state, draw)))
            .Where(draw => draw.Brix is > 0 and < 85)
            .Select(draw => Portion.OfVolume(Volume.FromLiters(draw.Liters), SugarContent.FromBrix(draw.Brix!.Value), InThePail))
            .ToList();
        return known.Count == 0 ? null : known.Skip(1).Aggregate(known[0], Blend.Of);
    }
}
