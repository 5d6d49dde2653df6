using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Debriefing;

/// <summary>What a debrief needs of a session, kept while it goes on: what was known at the last charge, and what came.</summary>
public sealed class Course(Setting setting)
{
    private const int AlarmsKept = 1000;

    private readonly List<Moment> _alarms = [];
    private bool _isDue;

    /// <summary>What was known when the wood was held for the last time; null before.</summary>
    internal Held? Held { get; private set; }

    /// <summary>The shallowest depth that was read over a fire, and when.</summary>
    internal (Moment At, Length Depth)? Shallowest { get; private set; }

    /// <summary>When a scorched smell was told first.</summary>
    internal Moment? Scorched { get; private set; }

    /// <summary>When the boil was seen still first after the wood was held.</summary>
    internal Moment? Still { get; private set; }

    /// <summary>When it was said first that it is clear to leave.</summary>
    internal Moment? Clear { get; private set; }

    /// <summary>Charges that went in after the wood was held.</summary>
    internal int WoodAfter { get; private set; }

    /// <summary>Advice of danger so far, with its times.</summary>
    internal IReadOnlyList<Moment> Dangers => _alarms;

    /// <summary>A line was heard and answered.</summary>
    /// <param name="state">What is known after it.</param>
    /// <param name="answers">The answers.</param>
    public void Hear(SessionState state, IReadOnlyList<LineOut> answers)
    {
        if (state.Now is not { } now || state.Step.Length == 0)
        {
            return;
        }

        var situation = new Situation(setting, state);
        if (situation.IsLit && state.Last(ReadingName.PanDepth) is { } read && read.At == now
            && UnitSystem.Length(read.Value) is var depth && (Shallowest is not { } before || depth < before.Depth))
        {
            Shallowest = (now, depth);
        }

        if (state.Last(ObservationName.Smell) is { Value: "scorched" } smell)
        {
            Scorched ??= smell.At;
        }

        if (answers.Any(answer => answer is AdviceLine { Advice.Urgency: "danger" }) && _alarms.Count < AlarmsKept)
        {
            _alarms.Add(now);
        }

        if (answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" }))
        {
            Clear ??= now;
        }

        Hold(state, now, situation.IsHeld);
    }

    /// <summary>Writes what is kept.</summary>
    internal void Write(BinaryWriter to)
    {
        to.MaybeText(Held, held =>
        {
            to.Moment(held.At);
            to.Maybe(held.Tank, tank => to.Write(tank.Liters));
            to.Write(held.Evaporated.Liters);
            to.MaybeText(held.Residual, to.Forecast);
            to.MaybeText(held.ToStill, to.Forecast);
        });
        to.Maybe(Shallowest, shallowest =>
        {
            to.Moment(shallowest.At);
            to.Write(shallowest.Depth.Meters);
        });
        to.Maybe(Scorched, to.Moment);
        to.Maybe(Still, to.Moment);
        to.Maybe(Clear, to.Moment);
        to.Write(WoodAfter);
        to.All(_alarms, to.Moment);
        to.Write(_isDue);
    }

    /// <summary>Reads what <see cref="Write"/> has written.</summary>
    internal static Course Read(BinaryReader from, Setting setting)
    {
        var course = new Course(setting)
        {
            Held = from.MaybeText(() => new Held(
                from.Moment(), from.Maybe(() => Volume.FromLiters(from.ReadDouble())), Volume.FromLiters(from.ReadDouble()),
                from.MaybeText(from.Forecast), from.MaybeText(from.Forecast))),
            Shallowest = from.Maybe(() => (from.Moment(), Length.FromMeters(from.ReadDouble()))),
            Scorched = from.Maybe(from.Moment),
            Still = from.Maybe(from.Moment),
            Clear = from.Maybe(from.Moment),
            WoodAfter = from.ReadInt32(),
        };
        course._alarms.AddRange(from.All(from.Moment));
        course._isDue = from.ReadBoolean();
        return course;
    }

    private void Hold(SessionState state, Moment now, bool isHeld)
    {
        if (!isHeld)
        {
            // Fired on after all: the last charge is still to come.
            (Held, Still, WoodAfter, _isDue) = state.IsOver ? (Held, Still, WoodAfter, false) : (null, null, 0, false);
            return;
        }

        if (!_isDue)
        {
            _isDue = true;
            Held = new(now, state.Rig.Tank, state.Rig.Evaporated,
                state.Forecasts.GetValueOrDefault(Forecasts.Residual), state.Forecasts.GetValueOrDefault(Forecasts.ToStill));
        }

        if (state.Last(DeedName.AddWood) is { } wood && wood.At == now && wood.At.Time > Held!.At.Time)
        {
            WoodAfter++;
        }

        if (state.Last(ObservationName.Boil) is { Value: "still" } still && still.At.Time > Held!.At.Time)
        {
            Still ??= still.At;
        }
    }
}

/// <summary>What was known when the wood was held.</summary>
/// <param name="At">When.</param>
/// <param name="Tank">Sap in the tank; null where it was never read.</param>
/// <param name="Evaporated">The water that had left till then.</param>
/// <param name="Residual">The water still to leave, as it was told; null where it was not.</param>
/// <param name="ToStill">The minutes to the still boil, as they were told.</param>
internal sealed record Held(
    Moment At, Volume? Tank, Volume Evaporated, Forecast? Residual, Forecast? ToStill)
{
    /// <summary>
    /// Water that has left since, as reckoned: tank and pan alone would not tell, since who floods may pour in water that no one told.
    /// Null where readings have since put right what had left before by more than that: then nobody knows.
    /// </summary>
    public Volume? Gone(SessionState state) => state.Rig.Evaporated - Evaporated is { Liters: >= 0 } gone ? gone : null;
}
