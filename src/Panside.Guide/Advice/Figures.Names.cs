using Panside.Guide.Rigs;

namespace Panside.Guide.Advice;

/// <content>The names of places and things as this rig has them: what a rig lacks is not spoken of.</content>
public static partial class Figures
{
    private static Dictionary<string, Func<Situation, string>> OfTheRig => new()
    {
        ["fire"] = now => now.Setting.Rig.OfFire("fire", "heat"),
        ["heater"] = now => now.Setting.Rig.Heater,
        ["tank-holds"] = now => RigFacts.Holds(now.Setting.Rig, "has-tank") ? $"the tank holds {Of(now, "tank")}" : $"{Of(now, "tank")} of sap is left",
        ["draw"] = now => now.Setting.Rig.IsBatch ? "batch" : "draw",
        ["at-draw-off"] = now => now.Setting.Rig.HasDrawOff ? "at the draw-off" : "in the pan",
        ["syrup-side"] = now => HasSides(now) ? "the syrup side" : "the pan",
        ["in-at-syrup-side"] = now => HasSides(now) ? "in at the syrup side" : "in",
        ["in-at-feed-side"] = now => HasSides(now) ? "in at the feed side" : "in",
        ["shallow-end"] = now => HasSides(now) ? "the shallow end" : "its lowest spot",
    };

    private static bool HasSides(Situation now) => now.Setting.Rig.Channels > 1;
}
