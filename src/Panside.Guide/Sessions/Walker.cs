using System.Collections.Immutable;
using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>Moves the flow on by what is said and by what holds, and keeps what was done, skipped and put off.</summary>
internal sealed class Walker(Setting setting)
{
    private const int MovesAtMost = 50;

    private static readonly TimeSpan PutOff = TimeSpan.FromMinutes(5);

    /// <summary>The deed that a yes to a step or a watch tells of.</summary>
    public DeedName? DeedOf(string id) => setting.Flow.Steps.TryGetValue(id, out var step)
        ? step.Deed
        : setting.Flow.Watches.FirstOrDefault(watch => watch.Id == id)?.Deed;

    /// <summary>Whether leaving now goes through the gate.</summary>
    public bool CanLeave(Turn turn) =>
        setting.Machine.Next(turn.State.Step, "did leave", turn.State.ReturnTo, turn.Holds) == Flow.End;

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

        // The deed that a yes would tell of sets what a yes would set.
        if (line is Did did && setting.Flow.Steps[turn.State.Step] is { Mark: { } mark, Deed: { } deed } && deed == did.Name)
        {
            turn.Happen(new Marked(mark));
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
                        : $"A number is asked, {UnitNames.CodesOf(open.Unit!.Value.Kind())}{Else(open)}.",
                    "answer");
                break;
            case AnswerWords.No when open.Ask != Prompt.Confirm:
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
            case AnswerWords.No when setting.Machine.Next(open.Step, "answer no", turn.State.ReturnTo, turn.Holds) is null:
                turn.Tell(turn.Fill(step!.IfNo ?? "Take the time it needs. Say yes when it is done."));
                break;
            default:
                turn.Happen(new Remembered($"{word} to '{open.Step}'"));
                if (word == AnswerWords.Yes && step?.Mark is { } mark)
                {
                    turn.Happen(new Marked(mark));
                }

                if (word == AnswerWords.Yes && step?.Unmark is { } gone)
                {
                    turn.Happen(new Unmarked(gone));
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

    private static string Else(Prompt open) => $"{(open.CanSkip ? "; or skip" : "")}{(open.CanWait ? "; or later" : "")}";

    /// <summary>Whether a trigger leads anywhere from here.</summary>
    public bool Leads(Turn turn, string trigger) =>
        setting.Machine.Next(turn.State.Step, trigger, turn.State.ReturnTo, turn.Holds) is not null;

    /// <summary>Moves by a trigger; false where it leads nowhere.</summary>
    public bool Fire(Turn turn, string trigger)
    {
        var from = turn.State.Step;
        if (setting.Machine.Next(from, trigger, turn.State.ReturnTo, turn.Holds) is not { } to)
        {
            return false;
        }

        var step = setting.Flow.Steps[from];
        var own = step.Passages.Any(passage => passage.When == trigger);
        var onItsOwn = own || step.Phase.On.Any(passage => passage.When == trigger);
        Leave(turn, from, to, own, trigger == "answer skip", comesOver: !onItsOwn);
        return true;
    }

    /// <summary>Moves on while facts lead on.</summary>
    public void FollowFacts(Turn turn)
    {
        for (var moves = 0; moves < MovesAtMost && !turn.State.IsOver; moves++)
        {
            var from = turn.State.Step;
            if (setting.Machine.NextByFact(from, turn.State.ReturnTo, turn.Holds) is not { } to)
            {
                return;
            }

            Leave(turn, from, to, own: true, skipped: true, comesOver: false);
        }
    }

    /// <param name="turn">The turn.</param>
    /// <param name="from">The step that is left.</param>
    /// <param name="to">The step that is reached.</param>
    /// <param name="own">Whether the step itself leads there.</param>
    /// <param name="skipped">Whether what was asked has not been done.</param>
    /// <param name="comesOver">Whether it comes over the step from anywhere, so that a danger that is not over is gone on with after it.</param>
    private void Leave(Turn turn, string from, string to, bool own, bool skipped, bool comesOver)
    {
        var step = setting.Flow.Steps[from];
        if (own && step.Ask is not null)
        {
            turn.Happen(new Completed(from, skipped));
        }
        else if (!own)
        {
            PassOver(turn, from, to);
        }

        if (to == Flow.End)
        {
            Outcomes.End(turn, setting, safe: true);
            return;
        }

        Reach(turn, step, setting.Flow.Steps[to], comesOver);
    }

    private void Reach(Turn turn, Step from, Step to, bool comesOver)
    {
        var back = Back(turn.State, from, to, comesOver);
        if (to.Phase.Code == "emergency" && turn.State.Doubted is { } doubted)
        {
            // A yes in an emergency answers the emergency, and nothing older.
            turn.Happen(new Doubted(null));
            turn.Tell($"Dropped: {Describe.Line(doubted)}. Say it again later.");
        }

        turn.Happen(new Moved(to.Id, back));

        // A step for beginners only is passed by a practised hand as if it had been done.
        if (to.BeginnerOnly && setting.Guidance == Guidance.Practised
            && setting.Machine.Next(to.Id, "answer skip", turn.State.ReturnTo, turn.Holds) is { } next && next != Flow.End)
        {
            Reach(turn, to, setting.Flow.Steps[next], comesOver: false);
        }
    }

    /// <summary>Where side trips lead back to after a move.</summary>
    private static ImmutableStack<string> Back(SessionState state, Step from, Step to, bool comesOver)
    {
        if (!to.Phase.IsSideTrip)
        {
            return [];
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

        var isNew = to.Phase.Code != from.Phase.Code || (comesOver && from.IsCritical && from.Id != to.Id);
        return isNew ? state.Back.Push(from.Id) : state.Back;
    }

    /// <summary>A jump forward skips the step that was asked, and those that its usual way would have led through; they stay listed.</summary>
    private void PassOver(Turn turn, string from, string to)
    {
        if (to == Flow.End || setting.Flow.Steps[to].Phase.IsSideTrip || setting.Flow.Steps[from].Phase.IsSideTrip)
        {
            return;
        }

        var passed = new List<Step>();
        for (var step = setting.Flow.Steps[from]; step.Id != to; step = setting.Flow.Steps[UsualNext(step)!])
        {
            if (passed.Contains(step) || UsualNext(step) is null or Flow.End or Flow.Return)
            {
                return;
            }

            passed.Add(step);
        }

        foreach (var step in passed.Where(step => step.Ask is not null && !turn.State.Done.Contains(step.Id)
                     && !(step.BeginnerOnly && setting.Guidance == Guidance.Practised)))
        {
            turn.Happen(new Completed(step.Id, Skipped: true));
        }
    }

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
