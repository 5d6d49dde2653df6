using Panside.Guide.Advice;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Sessions;

/// <summary>The operator must go: for ten minutes, or for good at some time.</summary>
internal sealed class Absence(Setting setting)
{
    private const string AwayClock = "Away";
    private const string GoneClock = "Latest last wood";

    /// <summary>Who does not say for how long is taken to be gone for so long.</summary>
    private const double UsualMinutes = 10;

    /// <summary>With fewer minutes than this until the floor could show the depth is read first; no source.</summary>
    private const double LeastLeft = 4;

    /// <summary>Whether somebody has said to be away, and was told what to do before, and is not back yet.</summary>
    /// <param name="turn">The turn.</param>
    public static bool IsAway(Turn turn) => turn.State.Clocks.Any(clock => clock.Text == AwayClock);

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

        if (Stays(turn) is { } why)
        {
            turn.Tell(why);
            return;
        }

        var wanted = minutes ?? UsualMinutes;
        turn.Tell(turn.Fill(now.DrawOpenSince is null
            ? "Before you go: read the depth, " + setting.Rig.OfFire("fill to {flood-depth}, put in no wood, shut the door", "fill to {flood-depth}, shut the burner off") + ". Better: someone stays."
            : "Before you go: shut the draw-off. Then read the depth, fill to {flood-depth}, " + setting.Rig.OfFire("put in no wood", "shut the burner off") + ". Better: someone stays."));
        var left = now.MinutesToBare - now.MinutesDepthUnseen;
        if (left < LeastLeft)
        {
            turn.Tell("Not before the depth is read: it was last read too long ago for that. Read it now, then say it again.");
            return;
        }

        var safe = left is { } bare ? double.Floor(bare / 2) : (double?)null;
        var back = double.Max(1, double.Min(wanted, safe ?? wanted));
        turn.Tell(safe is null ? $"When the pan would fall is not known before its depth is read. Be back in {Amount.Minutes(double.Min(wanted, 5))}."
            : safe < wanted ? $"Unfed, the floor would show in about {Amount.Minutes(left!.Value)}. {Amount.Minutes(wanted)} is too long: be back in {Amount.Minutes(back)}, or have someone stay."
            : $"Unfed, the floor would show in about {Amount.Minutes(left!.Value)}. Be back in {Amount.Minutes(back)}.");
        turn.Happen(new Marked(Absences.Mark));
        Start(turn, "away", new(AwayClock, turn.State.Now!.Value.Time.AddMinutes(safe is null ? double.Min(wanted, 5) : back), "You said that you are away. Back at the pan now: read its depth first. Say 'back'."));
    }

    /// <summary>Why nobody may go now; null where nothing that was told speaks against it.</summary>
    private string? Stays(Turn turn) =>
        setting.Flow.PhaseOf(turn.State.Step).IsEmergency ? "Not now: this is an emergency. Do what stands above first, or call somebody to the pan."
        : turn.Holds("smell-scorched") ? "Not now: it smelled scorched when you last said. Pour sap in at the syrup side and smell again; somebody must stay."
        : turn.Holds("foam-up") ? "Not now: the foam is up. Stay until it is down."
        : turn.Holds("draw-due") || turn.Holds("draw-near") ? "Not now: a draw is due or near, and syrup runs past its point in minutes. Draw first."
        : turn.Holds("tank-empty") && !turn.Holds("boil-still") ? "Not now: no sap is left to feed the pan, and it still boils. Fill it with water, and stay until it is still."
        : turn.Holds("pan-fallen") ? "Not now: the pan was read low. Pour sap in first, and see that it holds."
        : null;

    /// <summary>The operator is back: the depth comes first.</summary>
    public void Back(Turn turn)
    {
        if (turn.State.Clocks.Any(clock => clock.Text == AwayClock))
        {
            turn.Happen(new Remembered("back"));
        }

        foreach (var clock in turn.State.Clocks.Where(clock => clock.Text == AwayClock))
        {
            turn.Happen(new ClockRanDown(clock));
        }

        if (!turn.Now.IsLit)
        {
            turn.Tell("Good. Nothing heats the pan yet.");
        }
        else
        {
            turn.Happen(new Marked(DepthOwed.Mark));
            turn.Tell("Good. The pan's depth first of all: type 'depth' and what it is.");
        }
    }

    /// <summary>The valve of the tank was found shut, and is open: nobody watched over what the pan got, so its depth comes first as well.</summary>
    public void FeedFound(Turn turn)
    {
        var open = setting.Rig.Feed == Feed.ByValve ? "Set it so that the pan holds its depth." : "Leave it open all the way.";
        if (!turn.Now.IsLit)
        {
            turn.Tell($"{open} Nothing heats the pan yet.");
            return;
        }

        turn.Happen(new Remembered("the tank valve is open"));
        turn.Happen(new Marked(DepthOwed.Mark));
        turn.Tell($"{open} No wood before the pan's depth is read: type 'depth' and what it is.");
    }

    /// <summary>Plans the shutdown backwards from the time at which the operator must be gone.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="at">When it was said.</param>
    /// <param name="told">The time of day.</param>
    public void GoneBy(Turn turn, Moment at, SpokenAmount told)
    {
        var now = turn.State.Now!.Value.Time;
        var by = new ClockTime((int)(told.Value % (told.IsEither ? 720 : 1440)), told.IsEither).NextAfter(now);
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
            turn.Tell($"Nothing heats the pan yet. 'panside plan --end {by:HH:mm}' reckons when to light, and whether it is worth it.");
            return;
        }

        if (situation.IsHeld)
        {
            var dying = situation.StillMinutes!.Value;
            turn.Tell($"{setting.Rig.OfFire("With no more wood", "With the burner off")} the boil goes still about {Figures.In(situation, dying.P50)}, {Figures.In(situation, dying.P95)} at the latest; then {setting.Rig.OfFire("coals and depth are looked at", "the depth is read")}. "
                + ((Clearing.Minutes(situation) ?? Clearing.Once(situation, dying)).P95 <= minutes ? $"That is before {by:HH:mm}. Unless {setting.Rig.OfFire("wood goes in", "it is lit")} again." : $"That can be after {by:HH:mm}: have someone stay. 'when can I leave' says what would help."));
            return;
        }

        var still = Band.Of(situation.Ahead.OnceLastCharged(setting.Rig.Charge).StillMinutes);
        var latest = minutes - Clearing.Once(situation, still).P95;
        if (latest < 0)
        {
            turn.Tell($"Too late for {by:HH:mm} with certainty: with {setting.Rig.OfFire("no more wood", "the burner off")} from now the boil goes still about {Figures.In(situation, situation.StillMinutes!.Value.P50)}, {Figures.In(situation, situation.StillMinutes!.Value.P95)} at the latest. {setting.Rig.OfFire("No more wood from now", "Shut it off now")}, and have someone stay.");
            return;
        }

        turn.Tell($"To be gone by {by:HH:mm} {setting.Rig.OfFire("the last charge goes in", "the burner goes off")} at {Figures.In(situation, latest)} at the latest. Then it is still about {Figures.In(situation, latest + still.P50)}, and the last looks take {Measures.Amount.Minutes(double.Round(Clearing.Once(situation, still).P95 - still.P95))}.");
        turn.Tell(turn.Fill(situation.MinutesToLastCharge is { } last && last.P50 > latest
            ? "The tank would last longer: what is left of {tank} then stays raw. Keep it cold, or have someone boil on."
            : $"The tank asks for {setting.Rig.OfFire("the last charge", "that")} about then or sooner, in about {{minutes-to-last-charge}}. Go by whichever comes first."));
        Start(turn, $"gone by {by:HH:mm}", new(setting.Rig.OfFire(GoneClock, "Latest shut-off"), now.AddMinutes(latest), $"{setting.Rig.OfFire("No more wood from now", "Shut off now")}, to be gone by {by:HH:mm}. Say 'shutdown'."));
    }

    /// <summary>Starts a clock, in place of one of the same kind.</summary>
    private static void Start(Turn turn, string what, RunningClock clock)
    {
        turn.Happen(new Remembered(what));
        foreach (var old in turn.State.Clocks.Where(old => old.Text == clock.Text))
        {
            turn.Happen(new ClockRanDown(old));
        }

        turn.Happen(new ClockStarted(clock));
    }
}
