using System.Text.RegularExpressions;
using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <content>What a typed line turned out to be is taken, asked or answered.</content>
public sealed partial class Decider
{
    private void HearText(Turn turn, Text text)
    {
        if (turn.State.Doubted is Added added && PanOrTank.Answered(added, text.At, text.Words) is { } placed)
        {
            HearMeant(turn, placed);
            return;
        }

        if (SomePoured.Open(turn.State) is { } asked && text.At.Time - asked.At.Time <= Situation.DoubtLasts
            && MeasureText.TryNumber(text.Words.Trim(), out var bare, out var behind) && behind.Trim().Length == 0)
        {
            turn.Refuse($"Poured, or the depth? Say '{Amount.Plain(new(bare, _setting.Units.Preferred(Dimension.Volume)))}', or 'depth {text.Words.Trim()}'.", "text");
            return;
        }

        if (SomePoured.Open(turn.State) is { } poured && text.At.Time - poured.At.Time <= Situation.DoubtLasts && _listener.Measured(text.At, text.Words, poured) is { } measured)
        {
            HearMeant(turn, measured);
            return;
        }

        if (turn.State.Open is not null && WhatToDo.Asks(text.Words))
        {
            Conversation.Heard(turn, text.At, "say that again");
            _announcer.Repeat(turn);
            return;
        }

        if (turn.Holds("emergency-on") && (FalseAlarm.IsSaid(text.Words) || (IsCryLast(turn) && _setting.Flow.DangerAt(turn.State.Step)?.Code == "away" && FalseAlarm.SaysStays(text.Words))))
        {
            TakeCryBack(turn, text);
            return;
        }

        var understood = _listener.Understand(text.At, text.Words, Asked(turn.State));
        if (understood is MeansWord { Word: not ("note" or Supposition.Word) } or MeansCry or MeansLine(Lines.Answer { Word: AnswerWords.No }) && NothingLeft.IsSapIn(text.Words))
        {
            HearNoSap(turn, text, understood);
            return;
        }

        if (DepthCalledFor(turn, text, understood) is { } depth)
        {
            HearUnderstood(turn, text, depth);
            return;
        }

        HearUnderstood(turn, text, understood);
    }

    /// <summary>
    /// A bare number while the depth is called for is that depth, where nothing else takes it; where the tank is asked as well, which of the two is asked.
    /// Null for any other line, and over two pans, of which it could be either.
    /// </summary>
    private Understood? DepthCalledFor(Turn turn, Text text, Understood understood)
    {
        if (_setting.Rig.Back is not null || !MeasureText.TryNumber(text.Words.Trim(), out var number, out var behind) || behind.Trim().Length > 0 || !turn.Holds("depth-overdue"))
        {
            return null;
        }

        var reading = new Reading(text.At, ReadingName.PanDepth, new(number, ReadingName.PanDepth.UnitIn(_setting.Units)));
        return _possible.Fault(reading) is not null ? null
            : understood is MeansNothing ? new MeansLine(reading)
            : understood is MeansLine(Reading { Name.Code: "tank-volume" }) && turn.Holds("depth-unseen") && UnitSystem.Length(reading.Measure) <= _setting.Rig.WallDepth ? new MeansLine(reading)
            : understood is MeansLine(Reading { Name.Code: "tank-volume" })
                ? new MeansNothing($"The pan's depth, or the tank? Say 'depth {text.Words.Trim()}', or 'tank {text.Words.Trim()}'.")
            : null;
    }

    /// <summary>
    /// No sap is left, and something is wrong or is answered by it: the tank holds nothing from now on. It leads nowhere by itself, for what else
    /// was understood leads on; one undo takes both back.
    /// </summary>
    private void HearNoSap(Turn turn, Text text, Understood understood)
    {
        var (before, empty) = (turn.State, _listener.Empty(text.At));
        if (_possible.Fault(empty) is null && !before.SaidNow.Contains(empty))
        {
            turn.Say((at, number) => new HeardLine(at, number, empty));
            turn.Happen(new Took(empty));
        }

        HearUnderstood(turn, text, understood);
        if (!turn.State.IsOver)
        {
            turn.Happen(new SaidTogether(before, text.Words.Trim()));
        }
    }

    private void HearUnderstood(Turn turn, Text text, Understood understood)
    {
        switch (understood)
        {
            case MeansSeveral(var facts):
                HearSeveral(turn, text, facts);
                break;
            case MeansUnsure(Observed) or MeansLine(Observed { Name.Code: "boil" }) or MeansNothing when GoesDown().IsMatch(text.Words) && IsFoamUp(turn):
                // The foam was up, and defoamer went on it: what is down is the foam.
                HearMeant(turn, new Observed(text.At, ObservationName.Foam, "low"));
                break;
            case MeansUnsure or MeansNothing when LeavesLater().IsMatch(text.Words):
                _conversation.Answer(turn, text.At, AskedPlainly.Asked("leave", text.Words).Meaning);
                break;
            case MeansUnsure(var unsure):
                AskWhether(turn, unsure);
                break;
            case MeansLine(Did { Name.Code: "flood-pan" }) when _setting.Rig.HasFloat && turn.Now.IsLit && !turn.Now.IsHeld && !turn.Holds("emergency-on") && !Absence.IsAway(turn):
                // In a boil nobody floods a pan on purpose, but a float that hangs open does.
                turn.Refuse("Flooded on purpose? Say its depth. If it fills by itself, say 'float stuck'.", "text");
                break;
            case MeansLine(Did { Name.Code: "leave" }) when ToLeaveLater().IsMatch(text.Words):
                _conversation.Answer(turn, text.At, AskedPlainly.Asked("leave", text.Words).Meaning);
                break;
            case MeansLine(Did { Name.Code: "leave" }) when TellsOfThePan().IsMatch(text.Words) && turn.Now.IsLit:
                // What is told behind it may be the very thing that speaks against it.
                turn.Refuse("First the pan, by itself: say 'depth …', what boils, how the coals lie. Then say 'leave' alone.", "text");
                break;
            case MeansLine(Did { Name.Code: "add-wood", Measure: null }) when Pouring.NamesAVessel(text.Words):
                HearPoured(turn, new Did(text.At, DeedName.FillPan, null) { Is = turn.State.Open?.Pour?.Liquid ?? Liquids.Sap });
                break;
            case MeansPoured(var pour):
                HearPoured(turn, pour);
                break;
            case MeansTalk(var meaning):
                _conversation.Answer(turn, text.At, meaning);
                break;
            case MeansLine(Added unplaced) when !PanOrTank.IsPanMeant(turn):
                Question(turn, unplaced, PanOrTank.Question(unplaced, _setting.Rig.HasFloat), Added.Places);
                break;
            case MeansLine(Did { Name.Code: "shut-off" }) when !_setting.Rig.IsBurner && turn.Holds("draw-open"):
                HearMeant(turn, new Did(text.At, DeedName.CloseDraw, null));
                break;
            case MeansLine(Did { Name.Code: "shut-off" }) when _setting.Rig.IsBurner && MayBeTheDraw(turn) && !(turn.State.Open is { } page && _walker.DeedOf(page.Step) == DeedName.ShutOff) && KnownTalk.Ear(_setting.Flow.Language)?.NamesFire(text.Words) != true:
                turn.Refuse($"The draw-off, or the {_setting.Rig.Heater}? Say 'drew' with the volume, or '{_setting.Rig.Heater} off'.", "text");
                break;
            case MeansLine(Did { Name.Code: "close-draw", Measure: null }) when turn.Holds("burner-on") && !turn.Holds("draw-open") && KnownTalk.Ear(_setting.Flow.Language)?.NamesFire(text.Words) == true:
                HearMeant(turn, new Did(text.At, DeedName.ShutOff, null));
                break;
            case MeansLine(Did { Name.Code: "close-draw", Measure: null }) when _setting.Rig.IsBurner && !turn.Holds("draw-open") && turn.State.Open is { } asked && _walker.DeedOf(asked.Step) == DeedName.ShutOff:
                // Nothing is open that could be shut: who turned it off was asked to.
                HearMeant(turn, new Did(text.At, DeedName.ShutOff, null));
                break;
            case MeansLine(Did { Name.Code: "close-draw", Measure: null }) when turn.Holds("burner-on") && !turn.Holds("draw-open"):
                AskWhether(turn, new Did(text.At, DeedName.ShutOff, null));
                break;
            case MeansLine(Did { Name.Code: "close-draw", Measure: null } shut) when !turn.Holds("draw-open") && !WhichValve.TellsOfADraw(text.Words):
                HearShut(turn, shut);
                break;
            case MeansLine(Did { Name.Code: "open-draw" }) when WhichValve.MayBeAnother(turn, text.Words):
                turn.Refuse($"'{text.Words.Trim()}': the draw-off? Then say 'draw open'. Else answer what is asked.", "text");
                break;
            case MeansLine(var meant):
                HearMeant(turn, meant is Added poured ? poured.IntoPan(text.At) : meant);
                break;
            case MeansWord("shutdown", _) when IsGuess(text.Words) && _setting.Flow.PhaseOf(turn.State.Step).IsEmergency:
                turn.Refuse($"'{text.Words}': first what stands open here. If no more wood goes in, say 'shutdown'.", "text");
                break;
            case MeansWord(var word, var rest):
                var said = rest.Length > 0 ? $"{word} {rest}" : word;
                turn.Say((at, number) => new HeardLine(at, number, new Text(text.At, said)));
                if (_replies.Reply(turn, word, rest))
                {
                    break;
                }

                if (!_walker.Leads(turn, "word " + word) && word == "shutdown" && turn.Now.IsHeld)
                {
                    turn.Tell($"{_setting.Rig.OfFire("That stands: no more wood goes in", "That stands: the shutdown is on")}. 'when can I leave' says what is missing.");
                    break;
                }

                if (!_walker.Leads(turn, "word " + word) && word == "tank-valve-shut" && turn.Holds("too-shallow-to-leave") && !turn.Holds("tank-empty"))
                {
                    turn.Tell("Open it again while the pan boils: nothing feeds it now. Then read the depth.");
                    break;
                }

                if (!_walker.Leads(turn, "word " + word))
                {
                    turn.Refuse($"'{text.Words.Trim()}' changes nothing here: go on with what stands asked. 'help' lists what can be said now.", "text");
                    break;
                }

                turn.Happen(new Remembered(word));
                _walker.Fire(turn, "word " + word);
                break;
            case MeansCry(var dangers, var isSure):
                Cry(turn, text.At, dangers, isSure);
                break;
            case MeansNothing { IsLow: true } when OwesALookAtTheFoam(turn):
                // It was asked for, and something weightier has taken its place since.
                HearMeant(turn, new Observed(text.At, ObservationName.Foam, "low"));
                break;
            case MeansNothing(var why):
                turn.Refuse(why, "text");
                if (turn.Now.IsLit && Unheard.Counts(text.Words))
                {
                    turn.Happen(new WentUnheard(text));
                }

                break;
        }
    }

    /// <summary>Something was shut while the draw-off stands as shut: whether there was a draw that nobody told of is asked, and nothing is taken for one.</summary>
    private void HearShut(Turn turn, Did shut)
    {
        if (_setting.Rig.IsBatch)
        {
            turn.Refuse("This pan has no draw-off; nothing is taken. If the batch is out, say 'poured out' with how much.", "text");
        }
        else if (_setting.Flow.PhaseOf(turn.State.Step) is { IsEmergency: true } or { Kind: "draw-off" })
        {
            turn.Refuse($"{WhichValve.Stands(_setting.Rig)}; nothing is taken. If syrup was drawn, say 'drew' with the volume.", "text");
        }
        else
        {
            Question(turn, shut, new($"{WhichValve.Stands(_setting.Rig)}. Was syrup drawn?", "Yes counts a draw. Anything else that was shut is not asked for here."));
        }
    }

    /// <summary>Whether a watch at this step asks for the foam, and its time has come.</summary>
    private bool OwesALookAtTheFoam(Turn turn) => _setting.Flow.Watches.Any(watch => watch.Ask == ObservationName.Foam.Code
        && _setting.Flow.Steps[turn.State.Step].Watches.Contains(watch.Id)
        && !(_setting.LastAnswered(watch, turn.State) is { } answered && turn.State.Now!.Value.Time - answered < _setting.Every(watch)));

    private bool IsFoamUp(Turn turn) => turn.State.Open?.Ask != ObservationName.Boil.Code && (turn.State.Open is not { } open || _setting.Readings.Find(open.Ask) is null || IsDefoamerToldSince(turn))
        && turn.State.Last(ObservationName.Foam) is { Value: "rising" or "over" } foam && turn.State.MinutesSince(foam.At) <= Situation.DoubtLasts.TotalMinutes;

    [GeneratedRegex(@"^(?:it'?s|its|it|she'?s)(?: is| has| gone| went| all| back)* down(?: (?:now|again|some|a bit))*$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex GoesDown();

    [GeneratedRegex(@"\b(?:coals?|embers?|glow\w*|simmer\w*|boil\w*|bubbl\w*|steam\w*|flames?|fire|wood|logs?|inch\w*|depth|shallow|burn\w*|half|low)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TellsOfThePan();

    /// <summary>Who goes later, or asks what is left to do, does not go now.</summary>
    [GeneratedRegex(@"\?|\bin (?:[0-9]|a few|a bit|ten|twenty|half)|\bwhat'?s left\b|\bsoon\b|\bin a (?:minute|while)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ToLeaveLater();

    [GeneratedRegex(@"^(?:i'?m |we'?re |i'?ll be |will be )?(?:leaving|heading out|heading home) (?:soon|shortly|later|in (?:a|an|half|ten|twenty|thirty|[0-9]+)\b)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex LeavesLater();

    /// <summary>Whether a word of the flow was made of other words than its own.</summary>
    private bool IsGuess(string said) => !_setting.Flow.Words.ContainsKey(said.Trim().TrimEnd('.', '!'));

    /// <summary>
    /// Liquid went into the pan, and nobody said how much. It is taken at once as a pour of unknown size, for cold liquid hides a boil whatever
    /// its amount; then how much is asked, and the depth is read soon. In an emergency its own steps ask for the depth.
    /// </summary>
    private void HearPoured(Turn turn, Did pour)
    {
        if (_possible.Fault(pour with { Measure = _setting.Units.From(_setting.Rig.Portion) }) is { } fault)
        {
            turn.Refuse(fault.Why, "text");
            return;
        }

        if (turn.State.SaidNow.Contains(pour))
        {
            turn.Refuse("This very line was said at this very time already.");
            return;
        }

        turn.Say((at, number) => new HeardLine(at, number, pour));
        Take(turn, pour);
        if (_setting.Flow.PhaseOf(turn.State.Step).IsEmergency)
        {
            turn.Tell(SomePoured.Unasked);
        }
        else
        {
            Question(turn, pour, SomePoured.Question(pour, _setting.Units));
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

            if (turn.State.Doubted is { } open && open.At == text.At && !ReferenceEquals(open, before.Doubted) && SomePoured.Open(turn.State) is null)
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
            if (fact is MeansLine(var line) && (turn.State.Doubted?.At != text.At || SomePoured.Open(turn.State) is not null))
            {
                said.Add(Describe.Line(line));
            }
            else if (fact is MeansPoured(var pour))
            {
                said.Add(Describe.Line(pour));
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
        if ((line is Observed { Name.Code: "boil" or "foam" or "coals" } or Did { Name.Code: "spread-coals" } && !turn.Now.IsLit)
            || (line is Observed { Name.Code: "coals" or "gradient" or "boil" } && turn.Holds("emergency-on")))
        {
            turn.Refuse("Not sure what was meant. Answer what is asked, or say it in other words.", "text");
            return;
        }

        if (_possible.Fault(line) is not null || Sequence.Fault(turn, line) is not null)
        {
            turn.Refuse($"Not sure what was meant: perhaps '{Describe.Line(line)}', which cannot be now. Say it in other words.", "text");
            return;
        }

        Question(turn, line, _believable.Doubt(turn.State, line) ?? new($"{Sentence(Describe.Line(line))}: is that what you mean?", "Yes takes it. If not, say it in other words."));
    }

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    /// <summary>What was shut off in a draw is the burner only where the words say so.</summary>
    private static bool MayBeTheDraw(Turn turn) => turn.Holds("draw-open") || turn.Holds("draw-due");

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
}
