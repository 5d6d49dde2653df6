using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Sessions;

/// <summary>The operator must go: for ten minutes, or for good at some time.</summary>
internal sealed class Absence(Setting setting)
{
    private const string AwayClock = "Away";
    private const string GoneClock = "Latest last wood";

    /// <summary>Who does not say for how long is taken to be gone for so long.</summary>
    private const double UsualMinutes = 10;

    /// <summary>Coals, depth and cover are looked at once the boil is still: common practice, no source.</summary>
    private const double LastLooksMinutes = 15;

    /// <summary>What to do before going for a while, and by when to be back.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="minutes">For how long; null where nobody said.</param>
    public void Away(Turn turn, double? minutes)
    {
        var now = turn.Now;
        if (now.Unmet.Count == 0)
        {
            turn.Tell("Go: it is clear to leave, and nothing can boil down.");
            return;
        }

        if (!now.IsLit)
        {
            turn.Tell("Go: nothing burns yet. Light it when you are back.");
            return;
        }

        var wanted = minutes ?? UsualMinutes;
        turn.Tell(turn.Fill(now.DrawOpenSince is null
            ? "Before you go: read the depth, fill to {flood-depth}, put in no wood, shut the door. Better: someone stays."
            : "Before you go: shut the draw-off. Then read the depth, fill to {flood-depth}, put in no wood. Better: someone stays."));
        var safe = now.MinutesToBare is { } bare ? double.Floor(bare / 2) : (double?)null;
        var back = double.Max(1, double.Min(wanted, safe ?? wanted));
        turn.Tell(safe is null ? $"When the pan would fall is not known before its depth is read. Be back in {Amount.Minutes(double.Min(wanted, 5))}."
            : safe < wanted ? turn.Fill($"If the float hung as you go, the floor would show in about {{minutes-to-bare}}. {Amount.Minutes(wanted)} is too long: be back in {Amount.Minutes(back)}, or have someone stay.")
            : turn.Fill($"If the float hung as you go, the floor would show in about {{minutes-to-bare}}. Be back in {Amount.Minutes(back)}."));
        Start(turn, new(AwayClock, turn.State.Now!.Value.Time.AddMinutes(safe is null ? double.Min(wanted, 5) : back), "You said that you are away. Back at the pan now: read its depth first. Say 'back'."));
    }

    /// <summary>The operator is back: the depth comes first.</summary>
    public void Back(Turn turn)
    {
        foreach (var clock in turn.State.Clocks.Where(clock => clock.Text == AwayClock))
        {
            turn.Happen(new ClockRanDown(clock));
        }

        if (!turn.Now.IsLit)
        {
            turn.Tell("Good. Nothing burns yet.");
        }
        else
        {
            turn.Tell("Good. The pan's depth first of all: type 'depth' and what it is.");
        }
    }

    /// <summary>Plans the shutdown backwards from the time at which the operator must be gone.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="at">When it was said.</param>
    /// <param name="ofDay">Minutes since midnight; either half of the day where nobody said which.</param>
    public void GoneBy(Turn turn, Moment at, double ofDay)
    {
        var now = turn.State.Now!.Value.Time;
        var by = new ClockTime((int)(ofDay % 1440), ofDay <= 720).NextAfter(now);
        Conversation.Heard(turn, at, $"gone by {by:HH:mm}");
        var minutes = (by - now).TotalMinutes;
        var situation = turn.Now;
        if (situation.Unmet.Count == 0)
        {
            turn.Tell("It is clear to leave now.");
            return;
        }

        if (!situation.IsLit)
        {
            turn.Tell($"Nothing burns yet. 'panside plan --end {by:HH:mm}' reckons when to light, and whether it is worth it.");
            return;
        }

        if (situation.IsHeld)
        {
            var dying = situation.StillMinutes!.Value;
            turn.Tell($"With no more wood the boil goes still about {Figures.In(situation, dying.P50)}, {Figures.In(situation, dying.P95)} at the latest; then coals and depth are looked at. "
                + (dying.P95 + LastLooksMinutes <= minutes ? $"That is before {by:HH:mm}. Unless wood goes in again." : $"That can be after {by:HH:mm}: have someone stay. 'when can I leave' says what would help."));
            return;
        }

        var still = Band.Of(situation.State.Rigs.OnceLastCharged(setting.Rig.Charge).StillMinutes);
        var latest = minutes - still.P95 - LastLooksMinutes;
        if (latest < 0)
        {
            turn.Tell($"Too late for {by:HH:mm} with certainty: with no more wood from now the boil goes still about {Figures.In(situation, situation.StillMinutes!.Value.P50)}, {Figures.In(situation, situation.StillMinutes!.Value.P95)} at the latest. No more wood from now, and have someone stay.");
            return;
        }

        turn.Tell($"To be gone by {by:HH:mm} the last charge goes in at {Figures.In(situation, latest)} at the latest. Then it is still about {Figures.In(situation, latest + still.P50)}, and the last looks take a quarter of an hour.");
        turn.Tell(turn.Fill(situation.MinutesToLastCharge is { } last && last.P50 > latest
            ? "The tank would last longer: what is left of {tank} then stays raw. Keep it cold, or have someone boil on."
            : "The tank asks for the last charge about then or sooner, in about {minutes-to-last-charge}. Go by whichever comes first."));
        Start(turn, new(GoneClock, now.AddMinutes(latest), $"No more wood from now, to be gone by {by:HH:mm}. Say 'shutdown'."));
    }

    /// <summary>Starts a clock, in place of one of the same kind.</summary>
    private static void Start(Turn turn, RunningClock clock)
    {
        foreach (var old in turn.State.Clocks.Where(old => old.Text == clock.Text))
        {
            turn.Happen(new ClockRanDown(old));
        }

        turn.Happen(new ClockStarted(clock));
    }
}
