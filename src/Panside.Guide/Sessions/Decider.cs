using Panside.Guide.Advice;
using Panside.Guide.Belief;
using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>
/// Decides what a line in brings about. Pure: the same state and line give the same state and the same lines out. The order is always the
/// same: the line is heard, checked, doubted or taken; the flow moves; then phase, advice, prompt and forecasts are told.
/// </summary>
public sealed partial class Decider
{
    private readonly Setting _setting;
    private readonly Evolver _evolver;
    private readonly Listener _listener;
    private readonly Possible _possible;
    private readonly Believable _believable;
    private readonly Walker _walker;
    private readonly Announcer _announcer;
    private readonly Adviser _adviser;
    private readonly Conversation _conversation;
    private readonly Replies _replies;

    /// <summary>A decider for a session's fixed parts.</summary>
    public Decider(Setting setting)
    {
        (_setting, _evolver) = (setting, new(setting));
        _listener = new(setting);
        _possible = new(setting);
        _believable = new(setting);
        _walker = new(setting);
        _announcer = new(setting);
        _adviser = new(setting);
        _replies = new(setting);
        _conversation = new(setting, _replies, _walker, _announcer);
    }

    /// <summary>The state after the line, and what is said to it.</summary>
    /// <param name="state">What is known.</param>
    /// <param name="line">The line.</param>
    /// <param name="withForecasts">Whether forecasts that have changed are told too: they take most of the time, and no step hangs on the telling.</param>
    public Decided Decide(SessionState state, LineIn line, bool withForecasts = true)
    {
        var turn = new Turn(_setting, _evolver, state);
        if (line is Unreadable { Stated: null } unreadable)
        {
            turn.Refuse(unreadable.Why, unreadable.Field);
            return turn.Decided;
        }

        if (state.Now is { } now && line.At.Time < now.Time)
        {
            turn.Refuse($"'at' is {line.At.Written}, earlier than the line before ({now.Written}). Time goes forward only.", "at");
            return turn.Decided;
        }

        if (state.Now is { } before && line.At.Time - before.Time > LongestPause)
        {
            // Taken as it stands it would leave no true time to come.
            turn.Refuse($"'at' is {line.At.Written}, more than a week after the line before ({before.Written}). Expected: the time of this boil; another boil begins a record of its own.", "at");
            return turn.Decided;
        }

        var phaseBefore = state.Step.Length == 0 || state.IsOver ? null : _setting.Flow.PhaseOf(state.Step).Code;
        turn.Come(line.At);
        if (state.IsOver)
        {
            turn.Refuse("This session is over. Start another.");
            return turn.Decided;
        }

        if (state.Step.Length == 0)
        {
            turn.Say((at, number) => new SessionLine(at, number, _setting.Header));
            turn.Tell(_setting.Flow.Opening);
            turn.Happen(new Moved(_setting.Flow.Start, []));
        }

        Hear(turn, line);
        if (!turn.State.IsOver)
        {
            _walker.FollowFacts(turn);
        }

        if (turn.State.IsOver)
        {
            return turn.Decided;
        }

        Announcer.Clocks(turn);
        _announcer.Phase(turn, line is Resumed ? null : phaseBefore);
        if (line is Resumed)
        {
            _announcer.GoOn(turn, state.Now);
        }

        // In danger, what to do comes before everything else.
        if (_setting.Flow.Steps[turn.State.Step].Urgency == "danger")
        {
            _announcer.Prompt(turn);
        }

        _adviser.Advise(turn);
        TellWayBack(turn);
        _announcer.Prompt(turn);
        if (withForecasts)
        {
            _adviser.Forecast(turn);
        }

        return turn.Decided;
    }

    /// <summary>What warns of danger is acted on at once and not questioned; that it may be a slip is told after what to do.</summary>
    private void TellWayBack(Turn turn)
    {
        if (turn.Taken is { } taken && _believable.WayBack(turn.AsItCame, taken) is { } wayBack)
        {
            turn.Tell(wayBack);
        }
    }

    private void Hear(Turn turn, LineIn line)
    {
        if (line is Text or Answer or Reading or Observed or Did && turn.State.Marks.Contains(Absences.Mark))
        {
            turn.Happen(new Unmarked(Absences.Mark));
        }

        switch (line)
        {
            case Unreadable unreadable:
                turn.Refuse(unreadable.Why, unreadable.Field);
                break;
            case Text text:
                HearText(turn, text);
                break;
            case Answer answer:
                HearAnswer(turn, answer);
                break;
            case Reading or Observed or Did:
                Consider(turn, line);
                break;
        }
    }

    private void Consider(Turn turn, LineIn line)
    {
        if (turn.State.SaidNow.Contains(line))
        {
            turn.Refuse("This very line was said at this very time already.");
            return;
        }

        if (_possible.Fault(line) is { } fault)
        {
            turn.Refuse(fault.Why, fault.Field);
            return;
        }

        if (Sequence.Fault(turn, line) is { } order)
        {
            turn.Refuse(order, line is Observed ? "observed" : "did");
            return;
        }

        if (line is Did { Name.Code: "close-draw", Measure: { } later } && turn.State.Doubted is Reading { Name.Code: "drawn-volume" } && !turn.Holds("draw-open"))
        {
            // The draw is shut, and only its volume was asked again.
            line = new Reading(line.At, ReadingName.DrawnVolume, later);
        }

        var before = turn.State.Doubted is { } doubted && Describe.SameKind(doubted, line) ? doubted : null;
        if (before is not null)
        {
            turn.Happen(new Doubted(null));
        }

        if (SomePoured.Open(turn.State) is not null && line is Reading { Name.Code: "pan-depth" or "back-pan-depth" })
        {
            // The depth says how much it was.
            turn.Happen(new Doubted(null));
        }

        if (_believable.Confirms(turn.State, before, line))
        {
            turn.Tell($"Taken, as two readings agree: {Describe.Line(line)}.");
            Take(turn, line, insisted: true);
            return;
        }

        if (_believable.Doubt(turn.State, line) is { } doubt)
        {
            if (line is Did { Name.Code: "close-draw", Measure: { } drawn } shut && turn.Holds("draw-open"))
            {
                // Only how much it was is in doubt: that it is shut is taken at once.
                Take(turn, shut with { Measure = null });
                line = new Reading(line.At, ReadingName.DrawnVolume, drawn);
            }

            Question(turn, line, doubt);
            return;
        }

        if (line is Observed { Name.Code: "coals", Is: "spent" } && SpentTooSoon(turn, line.At) is { } soon)
        {
            Question(turn, line, new(soon, "Yes, where none glows any more."));
            return;
        }

        if (line is Did { Name.Code: "lit-fire" } && !_setting.Rig.IsBurner && _setting.Flow.PhaseOf(turn.State.Step).IsEmergency)
        {
            Question(turn, line, new("A new fire in an emergency? Light none until it is over.", "Yes counts what burns already."));
            return;
        }

        if (line is Did { Name.Code: "add-wood" } && (_setting.Flow.PhaseOf(turn.State.Step).IsEmergency || IsWoodForbidden(turn)))
        {
            // What burns is counted, or all that follows is told too soon.
            Take(turn, line);
            turn.Tell("Counted. Add no more wood until this is over. 'undo' takes it back.");
            return;
        }

        if (line is Did { Name.Code: "lit-fire" } && _setting.Rig.IsBurner && _setting.Flow.PhaseOf(turn.State.Step).IsEmergency)
        {
            Question(turn, line, new("Light it in an emergency? Not before it is over, and nothing smells.", "Yes counts what burns already."));
            return;
        }

        if (line is Did { Name.Code: "leave" } && before is null && turn.State.Doubted is { } unsettled && SpeaksAgainstLeaving(unsettled))
        {
            // Nobody goes past a question whose yes would keep him here.
            turn.Happen(new Doubted(null));
            Question(turn, unsettled with { At = line.At }, new($"Before you leave: {Describe.Line(unsettled)}? Yes or no.", "Yes takes it, no drops it. Then say 'leave' again."));
            return;
        }

        if (line is Did { Name.Code: "leave" } && before is null && _walker.CanLeave(turn) && Unheard.Before(turn) is { } unheard)
        {
            turn.Happen(new WentUnheard(null));
            Question(turn, line, new($"'{unheard}' was not understood. Leave all the same?", "Yes leaves. In doubt stay, and say it in other words."));
            return;
        }

        if (line is Did { Name.Code: "leave" } && !_walker.CanLeave(turn))
        {
            var open = _setting.Flow.PhaseOf(turn.State.Step).IsEmergency ? new[] { "the emergency is not over" } : [];
            Question(turn, line, new(
                $"Leave now? It is not clear to leave: {string.Join("; ", open.Concat(turn.Now.Unmet).Take(2))}.",
                "Yes ends this session as unsafe. Stay, or have someone stay, until it is clear."));
            return;
        }

        Take(turn, line, isAmountTold: before is Did { IsUnmeasured: true } && line.At.Time - before.At.Time <= Situation.DoubtLasts);
    }

    /// <summary>Whether what stands asked says that no wood goes in before it is done: a blower that does not run, a pan to be filled.</summary>
    private bool IsWoodForbidden(Turn turn) => turn.State.Open is { } open && _setting.Flow.Steps.TryGetValue(open.Step, out var step)
        && step is { Urgency: "now", Advise: "hold-wood" or "raise-level" } && !step.Phase.IsEnding;

    /// <summary>Whether what waits to be settled would keep its operator there: wood, a boil that is up, coals that glow, a pan that was read.</summary>
    private static bool SpeaksAgainstLeaving(LineIn line) => line is Did { Name.Code: "add-wood" or "lit-fire" } or Observed { Name.Code: "boil", Is: not "still" } or Observed { Name.Code: "coals", Is: not "spent" }
        or Observed { Name.Code: "smell", Is: "scorched" } or Reading { Name.Code: "pan-depth" or "back-pan-depth" };

    /// <summary>Why coals are hardly spent already; null where they may be.</summary>
    private static string? SpentTooSoon(Turn turn, Moment at)
    {
        var state = turn.State;
        return state.Last(DeedName.AddWood) is { } wood && at.Time - wood.At.Time < BurnsDown ? $"Spent now? Wood went in {Amount.Minutes(state.MinutesSince(wood.At))} ago."
            : state.CoalsDeepAt is { } deep && at.Time - deep.Time < BurnsDown && !(state.Last(DeedName.SpreadCoals)?.At.Time > deep.Time)
                ? $"Spent now? They were deep {Amount.Minutes(state.MinutesSince(deep))} ago."
            : null;
    }

    /// <summary>No boil stands still for so long: no source.</summary>
    private static readonly TimeSpan LongestPause = TimeSpan.FromDays(7);

    /// <summary>No deep bed, and no charge, burns out in so little time: no source.</summary>
    private static readonly TimeSpan BurnsDown = TimeSpan.FromMinutes(10);

    private static void Question(Turn turn, LineIn line, Doubt doubt, IReadOnlyList<string>? choices = null)
    {
        if (turn.State.Doubted is { } open && SomePoured.Open(turn.State) is null)
        {
            turn.Tell($"Dropped, as it was not answered: {Describe.Line(open)}.");
        }

        turn.Happen(new Doubted(line));
        turn.Say((at, number) => new QuestionLine(at, number, doubt.Text, doubt.WouldTake) { Choices = choices });
    }

    private void Take(Turn turn, LineIn line, bool insisted = false, bool isAmountTold = false)
    {
        turn.Happen(new Remembered(Describe.Line(line)));
        if (isAmountTold)
        {
            turn.Happen(new AmountTold());
        }

        if (line is Reading { Name: var name })
        {
            // Who reads with it has it after all.
            foreach (var mark in name.Instruments.Select(Lacks.Mark).Where(turn.State.Marks.Contains).ToList())
            {
                turn.Happen(new Unmarked(mark));
            }
        }

        if (line is Reading { Name.Code: "pan-depth" } && turn.State.Marks.Contains(DepthOwed.Mark))
        {
            turn.Happen(new Unmarked(DepthOwed.Mark));
        }

        if (line is Did { Name.Code: "add-wood" or "lit-fire" } && turn.State.Doubted is Observed { Name.Code: "boil" or "coals" })
        {
            // What was asked of the fire before is not so of this one.
            turn.Happen(new Doubted(null));
        }

        if (turn.State.Unheard is not null && line is Observed { Name.Code: "boil" or "coals" } or Did { Name.Code: not "leave" })
        {
            turn.Happen(new WentUnheard(null));
        }

        turn.Happen(new Took(line, insisted));
        _walker.Took(turn, line);
        if (line is Observed { Name.Code: "boil", Is: "still" } && !turn.State.IsOver && turn.Now.IsHeld && turn.State.StillSince is null)
        {
            // Who looks too soon is told so, or the look seems to be lost.
            turn.Tell(ClearToLeave.MinutesToSettle(turn.State) is var minutes and > 0
                ? $"Noted. A still pan tells nothing yet: look again in {Amount.Minutes(double.Max(double.Ceiling(minutes), 1))}."
                : "Noted. It was seen up minutes ago: look once more.");
        }

        if (line is Did { Name.Code: "leave" } && !turn.State.IsOver)
        {
            Outcomes.End(turn, _setting, safe: false);
        }
    }
}
