using System.Text.RegularExpressions;
using Panside.Guide.Advice;
using Panside.Guide.Answering;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>Answers what is asked, and what is said of the talk itself: a thing that nobody has, being away, say that again.</summary>
internal sealed partial class Conversation(Setting setting, Replies replies, Walker walker, Announcer announcer)
{
    private readonly Absence _absence = new(setting);
    private readonly LastSeen _lastSeen = new(setting);

    private AnswerBook Book => KnownAnswers.BookOf(setting.Flow.Language);

    private Terms Terms => KnownAnswers.TermsOf(setting.Flow.Language);

    /// <summary>Answers.</summary>
    public void Answer(Turn turn, Moment at, Meaning meaning)
    {
        var minutes = meaning.Amount is { Hint: not AmountHint.Clock, Value: > 0 } lasts ? lasts.Value * (lasts.Unit == Measures.Unit.Hour ? 60 : 1) : (double?)null;
        switch (meaning.Root)
        {
            case "ask" when meaning.Rest == "leave" && AskedPlainly.IsHowLong(meaning.Words) && turn.Holds("emergency-on"):
                Answer(turn, at, meaning with { Kind = "ask:bare" });
                break;
            case "ask":
                Heard(turn, at, Book.Asks.TryGetValue(meaning.Rest, out var ask) ? ask.Said : meaning.Rest.Replace('-', ' '));
                Asked(turn, meaning.Rest);
                if (meaning.Rest == "danger" && DangerIn(meaning.Words) is { } danger)
                {
                    turn.Tell($"Is it so now? Type '{danger}': what to do stands here at once.");
                }

                break;
            case "seen":
                Heard(turn, at, meaning.Words);
                _lastSeen.Tell(turn, meaning.Rest);
                break;
            case "define":
            case "measure":
                Explain(turn, at, meaning);
                break;
            case "lack":
                Heard(turn, at, $"no {meaning.Rest}");
                Lack(turn, meaning.Rest);
                break;
            case "unknown":
                Heard(turn, at, "I don't know");
                Unknown(turn, AskedPlainly.IsUnseen(meaning.Words));
                break;
            case "away":
                Heard(turn, at, minutes is { } going ? $"away {Measures.Amount.Minutes(going)}" : "away");
                _absence.Away(turn, minutes);
                break;
            case "gone-by" when meaning.Amount is { } by:
                _absence.GoneBy(turn, at, by);
                break;
            case "feed-found":
                Heard(turn, at, "the tank valve is open");
                _absence.FeedFound(turn);
                break;
            case "handover":
                Heard(turn, at, "somebody else takes over");
                Handover(turn);
                break;
            case "word" when meaning.Rest == "back":
                Heard(turn, at, "back");
                _absence.Back(turn);
                break;
            case "word":
                Heard(turn, at, "say that again");
                Again(turn);
                break;
            default:
                turn.Refuse("That is not understood. 'help' lists what can be said.", "text");
                break;
        }
    }

    /// <summary>The word of the danger that a question supposes; null where it names none.</summary>
    private string? DangerIn(string asked) => new[] { asked, If().Split(asked)[^1] }.Distinct()
        .Select(one => setting.Flow.Ear.Value.Hear(one)?.Hazards.FirstOrDefault(code => setting.Flow.Dangers.Any(danger => danger.Code == code && !danger.IsList)))
        .FirstOrDefault(code => code is not null);

    [GeneratedRegex(@"\b(?:if|when|that)\b ?", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex If();

    /// <summary>Tells how a sentence was understood.</summary>
    public static void Heard(Turn turn, Moment at, string words) => turn.Say((_, number) => new HeardLine(at, number, new Text(at, words)));

    private void Asked(Turn turn, string code)
    {
        switch (code)
        {
            case "why" or "status" or "help":
                replies.Reply(turn, code, "");
                return;
            case "what-if-stop":
                replies.Reply(turn, Supposition.Word, "I stop now");
                return;
            case "last-said":
                turn.Tell(turn.State.LastSaid.Length == 0 ? "Nothing was said yet that counts." : $"Last you said: {turn.State.LastSaid}. 'undo' takes it back.");
                return;
            case "next":
                turn.Tell(turn.State.Open is { } open ? $"Now: {open.Text}" : "Nothing is asked just now.");
                break;
        }

        if (Book.Asks.TryGetValue(code, out var ask))
        {
            turn.Tell(turn.Fill(ask.Answers.First(answer => answer.When.All(turn.Holds)).Say));
        }
        else
        {
            turn.Refuse($"That question is not answered here. It answers, for one: {string.Join(", ", Book.Asks.Values.Take(6).Select(other => $"'{other.Said}'"))}.", "text");
        }
    }

    /// <summary>Terms of what every rig has.</summary>
    private static readonly string[] OfAnyRig = ["Brix", "depth", "least depth", "flood", "rolling", "still", "reserve", "defoamer"];

    private void Explain(Turn turn, Moment at, Meaning meaning)
    {
        if (Terms.In(meaning.Words) is not { } term || !term.IsOf(setting.Rig))
        {
            if (OfWhatIsAsked(turn) is not { } asked)
            {
                if (meaning.Root == "measure" && turn.State.Open is { } open)
                {
                    // How do I turn it off: what stands open, and why.
                    Heard(turn, at, meaning.Words);
                    turn.Tell($"Now: {open.Text}");
                    replies.Reply(turn, "why", "");
                    return;
                }

                turn.Refuse($"That word is not explained here. These are, for example: {string.Join(", ", OfAnyRig)}.", "text");
                return;
            }

            term = asked;
        }

        term = term.On(setting.Rig);
        var name = term.Name.Replace('-', ' ');
        Heard(turn, at, meaning.Root == "define" ? $"what is {name}" : $"how do I measure {name}");
        if (meaning.Root == "define" || term.Measure is null)
        {
            turn.Tell(term.Is);
        }

        if (term.Measure is { } measure)
        {
            turn.Tell(measure);
        }
    }

    private Term? OfWhatIsAsked(Turn turn) => turn.State.Open is { } open
        ? Terms.In(setting.Readings.Find(open.Ask)?.Spoken ?? open.Ask)
        : null;

    /// <summary>What nobody has is asked for no more tonight, and something takes its place.</summary>
    private void Lack(Turn turn, string thing)
    {
        var before = turn.State;
        turn.Happen(new Remembered($"no {thing}"));
        turn.Happen(new Marked(Lacks.Mark(thing)));
        turn.Tell(turn.Fill(Book.InsteadOf(
            thing == "hydrometer" && !setting.IsThere(ReadingName.DrawTemperature.Code) ? "hydrometer alone"
            : thing == "thermometer" && setting.Rig.IsBatch ? "thermometer on a batch"
            : thing)));
        if (turn.State.Open is { CanSkip: true } open && Lacks.IsLacking(turn.State, setting.Readings.Find(open.Ask)))
        {
            walker.Answer(turn, open, AnswerWords.Skip);
            turn.Happen(new SaidTogether(before, $"no {thing}"));
        }
    }

    /// <summary>What nobody knows is put off; what steam hides is looked at again, and until then it is taken for the worse.</summary>
    private void Unknown(Turn turn, bool isUnseen)
    {
        if (isUnseen)
        {
            turn.Tell(turn.Fill(Book.Asks["unseen"].Answers.First(answer => answer.When.All(turn.Holds)).Say));
        }

        if (turn.State.Open is not { } open)
        {
            if (!isUnseen)
            {
                turn.Tell("Nothing is asked just now: then nothing is missing.");
            }

            return;
        }

        if (!isUnseen && OfWhatIsAsked(turn)?.Measure is { } measure)
        {
            turn.Tell(measure);
        }

        if (open.CanWait)
        {
            walker.Answer(turn, open, AnswerWords.Later);
        }
    }

    /// <summary>Where things stand, for whoever comes new.</summary>
    private void Handover(Turn turn)
    {
        turn.Tell($"For whoever takes over: {setting.Flow.PhaseOf(turn.State.Step).Code.Replace('-', ' ')}, {Figures.Of(turn.Now, "clock")}. Last said: {(turn.State.LastSaid.Length == 0 ? "nothing" : turn.State.LastSaid)}.");
        replies.Reply(turn, "status", "");
        if (turn.State.Skipped.Count > 0)
        {
            replies.Reply(turn, "skipped", "");
        }

        turn.Tell(turn.State.Open is { } open ? $"Now: {open.Text}" : "Nothing is asked just now.");
        turn.Tell(turn.Fill("Read the depth and smell {syrup-side} before anything else."));
    }

    private void Again(Turn turn)
    {
        if (turn.State.Open is null)
        {
            replies.Reply(turn, "why", "");
        }
        else
        {
            announcer.Repeat(turn);
        }
    }
}
