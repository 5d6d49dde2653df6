using Panside.Guide.Advice;
using Panside.Guide.Belief;
using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>
/// Decides what a line in brings about. Pure: the same state and line give the same state and the same lines out. The order is always the
/// same: the line is heard, checked, doubted or taken; the flow moves; then phase, advice, prompt and forecasts are told.
/// </summary>
public sealed class Decider
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

    private void HearText(Turn turn, Text text)
    {
        if (turn.State.Doubted is Added added && PanOrTank.Answered(added, text.At, text.Words) is { } placed)
        {
            HearMeant(turn, placed);
            return;
        }

        HearUnderstood(turn, text, _listener.Understand(text.At, text.Words, Asked(turn.State)));
    }

    private void HearUnderstood(Turn turn, Text text, Understood understood)
    {
        switch (understood)
        {
            case MeansSeveral(var facts):
                HearSeveral(turn, text, facts);
                break;
            case MeansUnsure(var unsure):
                AskWhether(turn, unsure);
                break;
            case MeansTalk(var meaning):
                _conversation.Answer(turn, text.At, meaning);
                break;
            case MeansLine(Added unplaced) when !PanOrTank.IsPanMeant(turn):
                Question(turn, unplaced, PanOrTank.Question(unplaced, _setting.Rig.HasFloat), Added.Places);
                break;
            case MeansLine(var meant):
                HearMeant(turn, meant is Added poured ? poured.IntoPan(text.At) : meant);
                break;
            case MeansWord(var word, var rest):
                var said = rest.Length > 0 ? $"{word} {rest}" : word;
                turn.Say((at, number) => new HeardLine(at, number, new Text(text.At, said)));
                if (_replies.Reply(turn, word, rest))
                {
                    break;
                }

                if (!_walker.Leads(turn, "word " + word))
                {
                    turn.Refuse($"'{word}' leads nowhere from here.", "text");
                    break;
                }

                turn.Happen(new Remembered(word));
                _walker.Fire(turn, "word " + word);
                break;
            case MeansCry(var dangers, var isSure):
                Cry(turn, text.At, dangers, isSure);
                break;
            case MeansNothing(var why):
                turn.Refuse(why, "text");
                break;
        }
    }

    /// <summary>
    /// What was said in one breath is taken one by one, and one undo takes all of it back. Of several that are not sure one is asked,
    /// and what could not be taken is told as that: what was taken stays.
    /// </summary>
    private void HearSeveral(Turn turn, Text text, IReadOnlyList<Understood> facts)
    {
        var (before, said) = (turn.State, new List<string>());
        foreach (var fact in facts)
        {
            if (turn.State.IsOver)
            {
                break;
            }

            if (turn.State.Doubted is { } open && open.At == text.At && !ReferenceEquals(open, before.Doubted))
            {
                // What was just asked is not answered in the same breath, and nothing goes past it.
                turn.Tell($"Not taken yet{(fact is MeansLine(var waiting) ? $": {Describe.Line(waiting)}" : "")}. Answer the question first.");
                break;
            }

            if (fact is MeansLine(Lines.Answer) && said.Count > 0)
            {
                continue;
            }

            if (fact is MeansNothing(var why))
            {
                turn.Tell($"Not taken: {why}");
                continue;
            }

            HearUnderstood(turn, text, fact);
            if (fact is MeansLine(var line) && turn.State.Doubted?.At != text.At)
            {
                said.Add(Describe.Line(line));
            }
        }

        if (said.Count > 1 && !turn.State.IsOver)
        {
            turn.Happen(new SaidTogether(before, string.Join("; ", said)));
        }
    }

    /// <summary>What may have been meant is asked, where it could be.</summary>
    private void AskWhether(Turn turn, LineIn line)
    {
        if (_possible.Fault(line) is not null || Sequence.Fault(turn, line) is not null)
        {
            turn.Refuse($"Not sure what was meant: perhaps '{Describe.Line(line)}', which cannot be now. Say it in other words.", "text");
            return;
        }

        Question(turn, line, _believable.Doubt(turn.State, line) ?? new($"{Sentence(Describe.Line(line))}: is that what you mean?", "Yes takes it. If not, say it in other words."));
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>A cry opens the emergency of its danger; where that is not sure, the list, with the likely ones first.</summary>
    private void Cry(Turn turn, Moment at, IReadOnlyList<string> dangers, bool isSure)
    {
        var meant = _setting.Flow.Dangers.Where(danger => danger.IsList || dangers.Contains(danger.Code)).ToList();
        var word = isSure && meant.FirstOrDefault(danger => danger.Code == dangers[0]) is { } sure ? sure.Code : meant.First(danger => danger.IsList).Code;
        turn.Say((_, number) => new HeardLine(at, number, new Text(at, word)));
        turn.Happen(new Remembered(word));
        turn.Happen(new Suspected([.. dangers.Where(code => meant.Any(danger => danger.Code == code))]));
        _walker.Fire(turn, "word " + word);
    }

    /// <summary>What was typed is told back as it was heard, but only where it could be: what is refused was not heard as anything.</summary>
    private void HearMeant(Turn turn, LineIn meant)
    {
        var isRefused = meant is Answer
            ? turn.State.Doubted is null && turn.State.Open is null
            : turn.State.SaidNow.Contains(meant) || _possible.Fault(meant) is not null || Sequence.Fault(turn, meant) is not null;
        if (!isRefused)
        {
            turn.Say((at, number) => new HeardLine(at, number, meant));
        }

        Hear(turn, meant);
    }

    /// <summary>What a bare number answers: the reading in doubt, where that was asked last, else the open prompt.</summary>
    private static Prompt? Asked(SessionState state) =>
        state.Doubted is Reading doubted && (state.Open is null || state.OpenSince.Time <= doubted.At.Time)
            ? new("doubt", doubted.Name.Code, doubted.Measure.Unit, "")
            : state.Open;

    private void HearAnswer(Turn turn, Answer answer)
    {
        if (turn.State.Doubted is { } doubted)
        {
            if (answer.At.Time - doubted.At.Time > Situation.DoubtLasts)
            {
                turn.Happen(new Doubted(null));
                turn.Tell($"Lapsed: {Describe.Line(doubted)}. Say it again if it holds.");
                return;
            }

            if (doubted is Added added && answer.Word == AnswerWords.Yes)
            {
                HearMeant(turn, PanOrTank.ByYes(added, answer.At, _setting.Rig.HasFloat));
                return;
            }

            if (answer.Word == AnswerWords.Later)
            {
                turn.Tell("The question stays open.");
                return;
            }

            turn.Happen(new Doubted(null));
            if (answer.Word == AnswerWords.Yes)
            {
                turn.Tell($"Taken: {Describe.Line(doubted)}.");
                Take(turn, doubted with { At = answer.At }, insisted: true);
            }
            else
            {
                turn.Tell($"Dropped: {Describe.Line(doubted)}.");
            }

            return;
        }

        if (turn.State.Open is not { } open)
        {
            turn.Refuse("Nothing is asked just now.", "answer");
            return;
        }

        if (_walker.DeedOf(open.Step) is { WantsAmount: false } deed && answer.Word == AnswerWords.Yes)
        {
            Consider(turn, new Did(answer.At, deed, null));
            return;
        }

        _walker.Answer(turn, open, answer.Word);
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
            turn.Refuse(order, "did");
            return;
        }

        var before = turn.State.Doubted is { } doubted && Describe.SameKind(doubted, line) ? doubted : null;
        if (before is not null)
        {
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
            Question(turn, line, doubt);
            return;
        }

        if (line is Did { Name.Code: "add-wood" } && _setting.Flow.PhaseOf(turn.State.Step).IsEmergency)
        {
            Question(turn, line, new("Wood in an emergency? Add none until it is over.", "Yes counts a charge that is in already."));
            return;
        }

        if (line is Did { Name.Code: "leave" } && !_walker.CanLeave(turn))
        {
            Question(turn, line, new(
                $"Leave now? It is not clear to leave: {string.Join("; ", turn.Now.Unmet.Take(2))}.",
                "Yes ends this session as unsafe. Stay, or have someone stay, until it is clear."));
            return;
        }

        Take(turn, line);
    }

    private static void Question(Turn turn, LineIn line, Doubt doubt, IReadOnlyList<string>? choices = null)
    {
        if (turn.State.Doubted is { } open)
        {
            turn.Tell($"Dropped, as it was not answered: {Describe.Line(open)}.");
        }

        turn.Happen(new Doubted(line));
        turn.Say((at, number) => new QuestionLine(at, number, doubt.Text, doubt.WouldTake) { Choices = choices });
    }

    private void Take(Turn turn, LineIn line, bool insisted = false)
    {
        turn.Happen(new Remembered(Describe.Line(line)));
        if (line is Reading { Name: var name })
        {
            // Who reads with it has it after all.
            foreach (var mark in name.Instruments.Select(Lacks.Mark).Where(turn.State.Marks.Contains).ToList())
            {
                turn.Happen(new Unmarked(mark));
            }
        }

        turn.Happen(new Took(line, insisted));
        _walker.Took(turn, line);
        if (line is Did { Name.Code: "leave" } && !turn.State.IsOver)
        {
            Outcomes.End(turn, _setting, safe: false);
        }
    }
}
