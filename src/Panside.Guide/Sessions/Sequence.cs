using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;

namespace Panside.Guide.Sessions;

/// <summary>Deeds that cannot be at this point, whatever the procedure: a fire is lit once, a draw is opened when it is shut.</summary>
internal static class Sequence
{
    /// <summary>Why the deed cannot be; null where it can.</summary>
    public static string? Fault(Turn turn, LineIn line)
    {
        if (line is Observed { Name: var seen } && seen == ObservationName.Coals && turn.Now.Setting.Rig.IsBurner)
        {
            return $"This pan has no coals: {(turn.Now.Setting.Rig.Fuel == Fuel.Electric ? "current" : "a burner")} heats it.";
        }

        if (line is not Did did)
        {
            return null;
        }

        var state = turn.State;
        var open = turn.Holds("draw-open");
        var (rig, units) = (turn.Now.Setting.Rig, turn.Now.Setting.Units);
        return did.Name.Code switch
        {
            "lit-fire" when rig.IsBurner && turn.Now.IsBurnerOn && !turn.Now.Setting.Flow.PhaseOf(state.Step).IsEmergency && turn.Now.Setting.Flow.Steps[state.Step].Deed != DeedName.ShutOff => $"The {rig.Heater} is on already. Say 'shut off' once it is off.",
            "add-wood" or "spread-coals" when rig.IsBurner => $"This pan has no wood fire. 'lit' and 'shut off' tell of its {rig.Heater}.",
            "shut-off" when !rig.IsBurner => "This pan has a wood fire: it is not shut off. Say 'shutdown' to end it.",
            "shut-off" when !turn.Now.IsBurnerOn && turn.Now.Setting.Flow.Steps[state.Step].Deed != DeedName.ShutOff => $"The {rig.Heater} is off already.",
            "lit-fire" when rig.IsBurner => null,
            "lit-fire" when state.Last(DeedName.LitFire) is not null && !IsOut(state) => "The fire is lit already. For more wood say 'wood'.",
            "open-draw" when rig.IsBatch => "This pan has no draw-off: its batch is poured out whole. Say 'poured out' with how much.",
            "close-draw" when rig.IsBatch => "This pan has no draw-off. If the batch is out, say 'poured out' with how much.",
            "open-draw" when open => "The draw-off is open already. Say 'drew' with the volume when it is shut.",
            "empty-pan" when turn.Now.Setting.Flow.PhaseOf(state.Step).IsEmergency => "Not in an emergency: do what stands above first. Once it is over, say it again.",
            "empty-pan" when !rig.IsBatch && turn.Now.IsLit && !turn.Holds("fire-spent")
                => $"This pan is not emptied over a fire: its syrup is {(rig.DrawnBy == DrawnBy.Ladle ? "ladled" : "drawn")} off. Say 'drew' with the volume.",
            "refill-tank" when did.Measure is { } added && state.Rig.Tank is { } tank && turn.Now.Setting.Rig.TankIsStated
                && (tank + turn.Now.Setting.Units.Volume(added)).Liters > turn.Now.Setting.Rig.Tank.Liters * 1.05
                => $"With {added} more the tank would hold over its {turn.Now.Setting.Units.From(turn.Now.Setting.Rig.Tank)}. Say what the tank reads instead.",
            "fill-pan" when did.Measure is { } poured
                && (state.Rig.Pan + units.Volume(poured)).Liters > rig.ToWalls.Liters * 1.05
                => $"With {poured} more the pan would run over its wall, {units.From(rig.WallDepth)} high. Say its depth instead.",
            _ => null,
        };
    }

    /// <summary>Whether the fire may have gone out, so that lighting it again is no slip: the boil was seen still, the coals down, or nobody put in wood for so long.</summary>
    private static bool IsOut(SessionState state) => state.StillSince is not null
        || (state.Last(ObservationName.Coals) is { Value: "spent" or "thin" } coals && !(state.Last(DeedName.AddWood)?.At.Time > coals.At.Time))
        || state.MinutesSince((state.Last(DeedName.AddWood) ?? state.Last(DeedName.LitFire)!.Value).At) > BurnsOut.TotalMinutes;

    /// <summary>No charge of a small firebox burns so long: no source.</summary>
    private static readonly TimeSpan BurnsOut = TimeSpan.FromHours(2);
}
