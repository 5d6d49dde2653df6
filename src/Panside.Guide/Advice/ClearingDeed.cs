using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>What is to be done where it does not clear by waiting: who is told that is told the deed.</summary>
internal static class ClearingDeed
{
    /// <summary>The deed, the gravest first, to stand within a sentence.</summary>
    public static string Of(Situation now)
    {
        var (rig, state) = (now.Setting.Rig, now.State);
        string Shown(Length depth) => Amount.Shown(now.Setting.Units.From(depth));
        return now.IsBurnerOn ? $"shut the {rig.Heater} off; say 'shut off'"
            : now.DrawOpenSince is not null ? "shut the draw-off; say 'drew' with the volume"
            : state.Last(ObservationName.Smell)?.Value == "scorched" ? $"pour sap or water {Figures.Of(now, "in-at-syrup-side")}; then smell again"
            : state.Last(ObservationName.Foam)?.Value is "rising" or "over" ? "see the foam down; say 'foam low'"
            : !now.IsHeld && !rig.IsBurner ? "put in no more wood; say 'shutdown'"
            : now.IsPanEmptied ? Look
            : rig.Back is { } back && (now.IsBackBelowLeast || now.Unfed!.IsBackShort(0)) ? $"fill the back pan to {Shown(back.FloodDepth)}; say its depth"
            : now.DepthRead < rig.LeastDepth || ClearToLeave.IsTooShallow(now) ? now.DepthRead >= rig.FloodDepth * Full
                ? $"keep the pan at {Shown(rig.FloodDepth)}, pouring as it falls; say its depth"
                : $"fill the pan to {Shown(rig.FloodDepth)}; say its depth"
            : ClearToLeave.CanPassSyrup(now) switch
            {
                ClearToLeave.WholePanSweet => "pour clean water in, a gallon at a time; say each with 'poured'",
                ClearToLeave.NearSyrup or ClearToLeave.NeverRead => "stir end to end; say 'gradient gone' once one color",
                ClearToLeave.NeverLooked => "see whether the channels differ; say 'gradient clear' or 'gone'",
                _ => Look,
            };
    }

    /// <summary>Nobody fills a pan that stands so near to what is asked.</summary>
    private const double Full = 0.95;

    private const string Look = "look once more at all that is asked";
}
