using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Commands;

/// <summary>What a rig file comes to before any boil: a slip of a unit shows in it at once.</summary>
internal static class RigMeaning
{
    /// <summary>After so long fire and brick have come to a balance.</summary>
    private const int HotMinutes = 180;

    /// <summary>A draw little and often, so that no large one falls into the figures.</summary>
    private const double PartOfDraw = 0.1;

    /// <summary>The sentences.</summary>
    public static IReadOnlyList<string> Of(Rig rig)
    {
        var (units, setting) = (rig.Units, new Setting(Library.Flow(null), rig, Guidance.Beginner, Product.Name));
        var hot = setting.Cold.FiredFor(HotMinutes, rig.LargeDraw * PartOfDraw).Then.Forecasts;
        var rates = hot.RatesLitersPerHour(firing: true);
        Measure Rate(double quantile) => units.From(VolumeRate.FromLitersPerHour(rates.At(quantile)));
        string Shown(Volume volume) => Amount.Shown(units.From(volume));
        return
        [
            $"{Area(rig)} of pan; {Shown(rig.WhenRun)} in it when it runs.",
            $"Fired so it boils away about {Amount.Shown(Rate(0.5))}; nine rigs in ten {Amount.Range(Rate(0.05).Value, Rate(0.95).Value, Rate(0.5).Unit)}.",
            $"A first shutdown wants {Shown(CommonPractice.StopAt(setting, hot, cautious: true))} in the tank at the last charge.",
        ];
    }

    private static string Area(Rig rig) => rig.Units == UnitSystem.Metric
        ? FormattableString.Invariant($"{rig.WholeArea.SquareMeters:0.00} square meters")
        : FormattableString.Invariant($"{rig.WholeArea.SquareFeet:0.#} square feet");
}
