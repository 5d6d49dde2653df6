using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Rig;

/// <summary>Sugar in, sugar out: when the next draw comes.</summary>
public static class SugarBalance
{
    /// <summary>
    /// Mean sugar content of a pan that stands at its gradient, ready to draw, as that many equal well-mixed cells with the
    /// same evaporation from each: B_i = B0/(1 − i f/n), f = 1 − B0/Bs. Source: steady-state mass balance, derived
    /// here. Range: 0.5–20 Brix sap, 1–24 cells. Agreement: 0.1 Brix of the derived table.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public static SugarContent MeanAtGradient(SugarContent sap, SugarContent syrup, int cells)
    {
        if (sap.Brix is < 0.5 or > 20)
        {
            throw OutOfRange.For(nameof(sap), sap.Brix, "0.5 to 20 Brix");
        }

        if (cells is < 1 or > 24)
        {
            throw OutOfRange.For(nameof(cells), cells, "1 to 24 cells");
        }

        var fraction = 1 - (sap.Brix / syrup.Brix);
        var sum = 0.0;
        for (var cell = 1; cell <= cells; cell++)
        {
            sum += sap.Brix / (1 - (cell * fraction / cells));
        }

        return SugarContent.FromBrix(sum / cells);
    }

    /// <summary>Well-mixed cells that a channel is worth: two, no source, calibrated.</summary>
    public static int Cells(RigDescription rig) => int.Clamp(rig.Channels == 1 ? 1 : 2 * rig.Channels, 1, 24);

    /// <summary>
    /// Minutes until the draw-off reaches the target, with the sugar that comes in at the present rate: for the whole pan
    /// from its sugar, or for the last cell from the sugar content at the draw-off where that is known.
    /// </summary>
    /// <param name="rig">The rig.</param>
    /// <param name="state">Its state; boiling.</param>
    /// <param name="atDraw">Sugar content at the draw-off by its temperature; null where it was not read, or too thin to tell.</param>
    /// <returns>Minutes; null where the pan gets no sugar.</returns>
    public static double? MinutesToDraw(RigDescription rig, RigState state, SugarContent? atDraw)
    {
        var kilogramsPerMinute = state.Rate.LitersPerHour / 60 * state.Sap.MassFraction;
        if (kilogramsPerMinute < 1e-4 || state.Sap.Brix < 0.5)
        {
            return null;
        }

        var panKilograms = state.Pan.Liters * 1.05;
        var cells = Cells(rig);
        if (atDraw is { Brix: > 30 } near)
        {
            return double.Max(panKilograms / cells * (rig.Target.MassFraction - near.MassFraction), 0) / kilogramsPerMinute;
        }

        var missing = (panKilograms * MeanAtGradient(Capped(state.Sap), rig.Target, cells).MassFraction) - state.PanSugar.Kilograms;
        var ordered = MinutesToOrder(rig, state, atDraw);
        return double.Max(double.Max(missing, 0) / kilogramsPerMinute, ordered);
    }

    /// <summary>
    /// A pan left sweet holds its sugar in no order: the feed has to push it to the draw-off first, which takes about the time
    /// in which the pan boils away its own contents once, less as the draw-off is nearer to syrup. No source, calibrated.
    /// </summary>
    private static double MinutesToOrder(RigDescription rig, RigState state, SugarContent? atDraw) =>
        state.Pan.Liters / state.Rate.LitersPerHour * 60 * (1 - ((atDraw?.Brix ?? 0) / rig.Target.Brix));

    private static SugarContent Capped(SugarContent sap) => SugarContent.FromBrix(double.Min(sap.Brix, 20));
}
