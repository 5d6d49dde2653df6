using Panside.Commands;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Plan;

/// <summary>A boil before it is lit, from what is known of such rigs.</summary>
/// <param name="Boil">What comes of it.</param>
/// <param name="Reserve">Sap to keep in the tank for the shutdown.</param>
/// <param name="FloorSpeaks">Whether common practice, and not the reckoning, asks for so much.</param>
internal sealed record BoilPlan(PlannedBoil Boil, Volume Reserve, bool FloorSpeaks)
{
    /// <summary>After so long fire and brick have come to a balance.</summary>
    private const int HotMinutes = 180;

    /// <summary>Longer firing than this is more than one boil.</summary>
    private const int LongestMinutes = 48 * 60;

    /// <summary>A plan draws little and often, so that its syrup does not hang on whether a last draw just comes.</summary>
    private const double PartOfDraw = 0.1;

    /// <summary>The plan.</summary>
    /// <param name="setting">The rig, and how carefully.</param>
    /// <param name="sap">Sap beside what fills the pan.</param>
    /// <param name="sugar">Its sugar; null where nobody has measured it.</param>
    /// <param name="panSugar">The pan's; null where it is filled with the same sap.</param>
    /// <exception cref="UnusableException">The sap is too little or too much.</exception>
    public static BoilPlan Of(Setting setting, Volume sap, SugarContent? sugar, SugarContent? panSugar)
    {
        var (rig, units) = (setting.Rig, setting.Units);
        var cold = setting.Cold;
        cold = sugar is { } read ? cold.SapRead(read, fillsPan: true) : cold;
        cold = panSugar is { } sweet ? cold.PanSugarRead(sweet) : cold;
        var cautious = setting.Guidance == Guidance.Beginner;
        var draw = rig.LargeDraw * PartOfDraw;
        var reserve = CommonPractice.StopAt(setting, cold.FiredFor(HotMinutes, draw).Then.Forecasts, cautious);
        if (sap <= reserve)
        {
            throw new UnusableException(
                $"--sap: {Amount.Shown(units.From(sap))} is no more than the {Amount.Shown(units.From(reserve))} that the shutdown of this rig wants in the tank; nothing is left to boil. Wait for more sap.");
        }

        var boil = cold.TankRead(sap).Planned(reserve, draw, LongestMinutes)
            ?? throw new UnusableException(
                $"--sap: {Amount.Shown(units.From(sap))} keeps this rig boiling for more than {LongestMinutes / 60} hours; expected what one boil takes. Plan a part of it, or look at {rig.OfFire("the rig's charge and interval", "what the burner is said to boil away")}.");
        return new(boil, reserve, reserve.Liters <= CommonPractice.ReserveAtLastCharge(rig.WholeArea, cautious).Liters + 0.01);
    }
}
