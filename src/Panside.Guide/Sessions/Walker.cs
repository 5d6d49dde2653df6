using System.Collections.Immutable;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>Moves the flow on by what is said and by what holds, and keeps what was done, skipped and put off.</summary>
internal sealed class Walker(Setting setting)
{
    private const int MovesAtMost = 50;

    private TimeSpan PutOff => setting.Flow.Values[FlowValue.PutOff];

    /// <summary>The deed that a yes to a step or a watch tells of.</summary>
    public DeedName? DeedOf(string id) => setting.Flow.DeedOf(id);

    /// <summary>Whether leaving now goes through the gate.</summary>
    public bool CanLeave(Turn turn) =>
        Next(turn, turn.State.Step, "did leave") == Flow.End;

    /// <summary>A line was taken: the watches that it answers are done, and the flow may move.</summary>
    public void Took(Turn turn, LineIn line)
    {
        var triggers = Triggers(line);
        var here = setting.Flow.Steps[turn.State.Step].Watches;
        foreach (var watch in setting.Flow.Watches.Where(watch =>
                     Answers(watch, triggers) && (here.Contains(watch.Id) || turn.State.Open?.Step == watch.Id)))
        {
            turn.Happen(new Completed(watch.Id, Skipped: false));
        }

        // What was passed over and is told of after all was not skipped.
        foreach (var passed in turn.State.Skipped.Where(id => line is Did told && setting.Flow.Steps.GetValueOrDefault(id)?.Deed == told.Name))
        {
            turn.Happen(new Completed(passed, Skipped: false));
        }

        // The deed that a yes would tell of sets what a yes would set.
        if (line is Did did && setting.Flow.Steps[turn.State.Step] is { Deed: { } deed } step && deed == did.Name)
        {
            Done(turn, step);
        }

        foreach (var trigger in triggers)
        {
            if (Fire(turn, trigger))
            {
                break;
            }
        }
    }

    /// <summary>An answer to the open prompt.</summary>
    public void Answer(Turn turn, Prompt open, string word)
    {
        var watch = setting.Flow.Watches.FirstOrDefault(one => one.Id == open.Step);
        var step = watch is null ? setting.Flow.Steps[open.Step] : null;
        switch (word)
        {
            case AnswerWords.Yes when open.Ask != Prompt.Confirm:
                turn.Refuse(
                    open.Choices is { } choices
                        ? $"What is seen is asked: one of {string.Join(", ", choices)}{Else(open)}."
                        : $"A number is asked, {UnitNames.SpokenOf(open.Unit!.Value.Kind())}{Else(open)}.",
                    "answer");
                break;
            case AnswerWords.No when open.Ask != Prompt.Confirm && !(watch is null && Leads(turn, "answer no")):
                turn.Refuse($"A value or a state is asked{Else(open)}.", "answer");
                break;
            case AnswerWords.Skip when step is { IsCritical: true }:
                turn.Refuse(step.Urgency == "danger"
                    ? "This step is not skipped: too much hangs on it. Do it now, then say so."
                    : "This step is not skipped: too much hangs on it. 'later' asks again.", "answer");
                break;
            case AnswerWords.Later when step is { Urgency: "danger" }:
                turn.Refuse("This cannot wait. Do it now, then say so.", "answer");
                break;
            case AnswerWords.Later:
                var wait = step is { After: var after } && after > TimeSpan.Zero ? after : PutOff;
                turn.Happen(new Remembered($"later to '{open.Step}'"));
                turn.Happen(new PutAside(open.Step, turn.State.Now!.Value.Time + wait));
                turn.Tell($"Asked again in {Amount.Minutes(wait.TotalMinutes)}.");
                break;
            case AnswerWords.No when watch is not null:
                turn.Happen(new Remembered($"no to '{open.Step}'"));
                turn.Happen(new PutAside(open.Step, turn.State.Now!.Value.Time + PutOff));
                break;
            case AnswerWords.No when Next(turn, open.Step, "answer no") is null:
                turn.Tell(turn.Fill(step!.IfNo ?? "Take the time it needs. Say yes when it is done."));
                break;
            default:
                turn.Happen(new Remembered($"{word} to '{open.Step}'"));
                if (word == AnswerWords.Yes && step is not null)
                {
                    Done(turn, step);
                }

                if (watch is not null)
                {
                    turn.Happen(new Completed(watch.Id, word == AnswerWords.Skip));
                }
                else
                {
                    Fire(turn, "answer " + word);
                }

                break;
        }
    }

    /// <summary>What a yes to a step brings with it: its marks, its clock.</summary>
    private static void Done(Turn turn, Step step)
    {
        foreach (var mark in step.Marks)
        {
            turn.Happen(new Marked(mark));
        }

        foreach (var gone in step.Unmarks.Where(turn.State.Marks.Contains))
        {
            turn.Happen(new Unmarked(gone));
        }

        if (step.Clock is { } clock)
        {
            turn.Happen(new ClockStarted(new(turn.Fill(clock.Text), turn.State.Now!.Value.Time + clock.Lasts, turn.Fill(clock.Over))));
        }
    }

    private static string Else(Prompt open) => $"{(open.CanSkip ? "; or skip" : "")}{(open.CanWait ? "; or later" : "")}";

    /// <summary>Whether a trigger leads anywhere from here.</summary>
    public bool Leads(Turn turn, string trigger) => Next(turn, turn.State.Step, trigger) is not null;

    /// <summary>Moves by a trigger; false where it leads nowhere.</summary>
    public bool Fire(Turn turn, string trigger) => setting.Machine.Fire(new Standing(this, turn, isPassingBy: false), trigger);

    /// <summary>Moves on while facts lead on.</summary>
    public void FollowFacts(Turn turn)
    {
        for (var moves = 0; moves < MovesAtMost && !turn.State.IsOver; moves++)
        {
            if (ComingBack(turn) is { } danger && Fire(turn, danger.Back))
            {
                continue;
            }

            if (setting.Flow.Steps[turn.State.Step] is { IsCritical: false, Ask: { } ask } && Lacks.IsLacking(turn.State, setting.Readings.Find(ask)) && Fire(turn, "answer skip"))
            {
                continue;
            }

            if (!setting.Machine.FireByFact(new Standing(this, turn, isPassingBy: false)))
            {
                return;
            }
        }
    }

    private string? Next(Turn turn, string step, string trigger) => setting.Machine.Next(step, trigger, turn.State.ReturnTo, turn.Holds);

    /// <summary>A step is left: what it asks is done where it leads on itself, and passed over where something else does.</summary>
    internal void Left(Turn turn, Move move)
    {
        var step = setting.Flow.Steps[move.From];
        var isByFact = FlowMachine.IsFact(move.Trigger);
        if (!isByFact && !IsOwn(step, move.Trigger))
        {
            PassOver(turn, move.From, move.To);
        }
        else if (step.Ask is not null)
        {
            turn.Happen(new Completed(move.From, (isByFact || move.Trigger == "answer skip") && !IsToldOf(turn.State, step)));
        }
    }

    /// <summary>A step is reached, or the end.</summary>
    internal void Reached(Turn turn, Move move, bool isPassingBy)
    {
        if (move.To is Flow.End or Flow.LeftAlone)
        {
            Outcomes.End(turn, setting, safe: move.To == Flow.End);
            return;
        }

        Reach(turn, setting.Flow.Steps[move.From], setting.Flow.Steps[move.To], !isPassingBy && ComesOver(move));
    }

    /// <summary>Whether a move comes over the step, as another danger does, so that what is not over is gone on with after it.</summary>
    private bool ComesOver(Move move)
    {
        if (FlowMachine.IsFact(move.Trigger))
        {
            return false;
        }

        var step = setting.Flow.Steps[move.From];
        var onItsOwn = IsOwn(step, move.Trigger) || step.Phase.On.Any(passage => passage.When == move.Trigger);
        return !onItsOwn || (move.To != move.From && setting.Flow.DangerAt(move.To) is not null && setting.Flow.DangerAt(move.From) is null);
    }

    private static bool IsOwn(Step step, string trigger) => step.Passages.Any(passage => passage.When == trigger);

    private void Reach(Turn turn, Step from, Step to, bool comesOver)
    {
        if (comesOver && Waits(from, to))
        {
            turn.Happen(new Moved(from.Id, Below(turn.State.Back, to)));
            turn.Tell($"Then: {setting.Flow.DangerAt(to.Id)!.Code}. First what stands here.");
            return;
        }

        if (Overtaken(turn.State, from, to) is { IsEmpty: false } overtaken)
        {
            // Begun with, the graver danger no longer presses: what waited comes before what is left to do about it.
            turn.Happen(new Moved(overtaken.Peek(), overtaken.Pop()));
            return;
        }

        if (Pending(turn.State, from, to) is { IsEmpty: false } pending)
        {
            // What waited under the emergency that ends comes first; then it goes where that one led to.
            turn.Happen(new Moved(pending.Peek(), pending.Pop()));
            return;
        }

        var back = Back(turn.State, from, to, comesOver);
        if (to.Phase.IsEmergency && turn.State.Doubted is { } doubted)
        {
            // A yes in an emergency answers the emergency, and nothing older.
            turn.Happen(new Doubted(null));
            if (doubted is not Did { IsUnmeasured: true })
            {
                turn.Tell($"Dropped: {Describe.Line(doubted)}. Say it again later.");
            }
        }

        turn.Happen(new Moved(to.Id, back));
        PassBy(turn, to);
    }

    /// <summary>What is not for this hand, this rig or this moment is passed by as if it had been done.</summary>
    private void PassBy(Turn turn, Step step)
    {
        // Nobody is sent round: a step that was passed by already is asked, whatever it hangs on.
        if (!setting.PassesBy(step, turn.Holds) || !turn.PassedBy.Add(step.Id))
        {
            return;
        }

        var trigger = step.IsCritical ? Prompt.AnsweredBy(step.Ask) : "answer skip";
        if (Next(turn, step.Id, trigger) is not (null or Flow.End or Flow.LeftAlone))
        {
            setting.Machine.Fire(new Standing(this, turn, isPassingBy: true), trigger);
        }
    }

    /// <summary>The danger that comes back: the gravest whose fact holds, and that was not gone through just now.</summary>
    private Danger? ComingBack(Turn turn) => setting.Flow.PhaseOf(turn.State.Step).IsEmergency
        ? null
        : setting.Flow.Dangers.FirstOrDefault(danger => danger.While is { } fact && turn.Holds(fact) && danger.Given.All(turn.Holds)
            && !(turn.State.Watched.TryGetValue(danger.Go, out var gone) && turn.State.Now!.Value.Time - gone.Time < danger.Again));

    /// <summary>Whether a danger waits until the one that stands here is dealt with: people first, then what kills the pan first.</summary>
    private bool Waits(Step from, Step to) => from.Id != to.Id
        && setting.Flow.RankOf(from.Id) < setting.Flow.RankOf(to.Id)
        && setting.Flow.DangerAt(to.Id) is { IsList: false };

    /// <summary>The steps to lead back to with a danger put among them: under the graver ones, over all others.</summary>
    private ImmutableStack<string> Below(ImmutableStack<string> back, Step danger)
    {
        var rank = setting.Flow.RankOf(danger.Id);
        var others = back.Where(id => id != danger.Id).ToList();
        var graver = others.TakeWhile(id => setting.Flow.RankOf(id) < rank).ToList();
        return Stack([.. graver, danger.Id, .. others.Skip(graver.Count)]);
    }

    /// <summary>The dangers that wait while an emergency goes on to a step that is no danger any more, that step under them; else none.</summary>
    private ImmutableStack<string> Overtaken(SessionState state, Step from, Step to)
    {
        if (!from.Phase.IsEmergency || !to.Phase.IsEmergency || to.Urgency == "danger" || state.Back.Contains(to.Id))
        {
            return [];
        }

        var waiting = state.Back.TakeWhile(id => setting.Flow.DangerAt(id) is { IsList: false }).ToList();
        return waiting.Count == 0 ? [] : Stack([.. waiting, to.Id, .. state.Back.Skip(waiting.Count)]);
    }

    /// <summary>The emergencies that wait where one of them leads out of the emergency, and under them the step that it leads to; else none.</summary>
    private ImmutableStack<string> Pending(SessionState state, Step from, Step to)
    {
        if (!from.Phase.IsEmergency || to.Phase.IsSideTrip)
        {
            return [];
        }

        var waiting = state.Back.Where(id => setting.Flow.PhaseOf(id).IsEmergency).ToList();
        return waiting.Count == 0 || state.Back.Contains(to.Id) ? [] : Stack([.. waiting, to.Id]);
    }

    private static ImmutableStack<string> Stack(IEnumerable<string> fromTheTop) => ImmutableStack.CreateRange(fromTheTop.Reverse());

    /// <summary>Where side trips lead back to after a move.</summary>
    private static ImmutableStack<string> Back(SessionState state, Step from, Step to, bool comesOver)
    {
        if (!to.Phase.IsSideTrip)
        {
            return [];
        }

        if (state.Back.Contains(to.Id) && comesOver && from.IsCritical)
        {
            // Cried out again while it waits: it comes now, and what was being done after it.
            return Stack(state.Back.Where(id => id != to.Id).Prepend(from.Id));
        }

        if (state.Back.Contains(to.Id))
        {
            // It goes on where it had been left: what stood over it is over.
            var back = state.Back;
            while (back.Peek() != to.Id)
            {
                back = back.Pop();
            }

            return back.Pop();
        }

        // A side trip begins where none was, though both parts be of one phase.
        var isNew = !from.Phase.IsSideTrip || to.Phase.Code != from.Phase.Code || (comesOver && from.IsCritical && from.Id != to.Id);
        return isNew ? state.Back.Push(from.Id) : state.Back;
    }

    /// <summary>A jump forward skips the step that was asked, and those that its usual way would have led through; they stay listed.</summary>
    private void PassOver(Turn turn, string from, string to)
    {
        if (to is Flow.End or Flow.LeftAlone || setting.Flow.Steps[to].Phase.IsSideTrip || setting.Flow.Steps[from].Phase.IsSideTrip)
        {
            return;
        }

        var passed = new List<Step>();
        for (var step = setting.Flow.Steps[from]; step.Id != to; step = setting.Flow.Steps[UsualNext(step)!])
        {
            if (passed.Contains(step) || UsualNext(step) is null or Flow.End or Flow.Return or Flow.LeftAlone)
            {
                return;
            }

            passed.Add(step);
        }

        foreach (var step in passed.Where(step => step.Ask is not null && !turn.State.Done.Contains(step.Id) && !IsToldOf(turn.State, step)
                     && !setting.PassesBy(step, turn.Holds)))
        {
            turn.Happen(new Completed(step.Id, Skipped: true));
        }
    }

    /// <summary>Whether what a step asks to do was told of, since wood went in last: the lighting once and for all.</summary>
    private static bool IsToldOf(SessionState state, Step step) => step.Deed is { } deed && state.Last(deed) is { } told
        && (deed == DeedName.LitFire || !(state.Last(DeedName.AddWood)?.At.Time > told.At.Time));

    /// <summary>Where a step leads when it is simply done.</summary>
    private static string? UsualNext(Step step) =>
        step.Passages.LastOrDefault(passage => passage.Given.Count == 0 && passage.When != "answer no")?.Go;

    private static bool Answers(Watch watch, IReadOnlyList<string> triggers) =>
        watch.DoneBy.Any(triggers.Contains)
        || triggers.Contains("reading " + watch.Ask)
        || triggers.Contains("observed " + watch.Ask);

    private static IReadOnlyList<string> Triggers(LineIn line) => line switch
    {
        Reading reading => ["reading " + reading.Name.Code],
        Observed observed => [$"observed {observed.Name.Code} {observed.Is}", "observed " + observed.Name.Code],
        Did did => ["did " + did.Name.Code],
        _ => [],
    };
}
