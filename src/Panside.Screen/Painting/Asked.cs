using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Screen.Painting;

/// <summary>What the operator is to do or to answer now: the words, their tone, and what may be typed.</summary>
/// <param name="Action">The one thing to do.</param>
/// <param name="Tone">Its tone.</param>
/// <param name="Reasons">Why.</param>
/// <param name="Hint">What may be typed.</param>
/// <param name="Stands">The kind of entry that stands here instead of in the conversation.</param>
/// <param name="Said">The advice that stands here instead of in the conversation, as its entry begins; null where none does.</param>
/// <param name="Alarmed">The action of the alarm that stands in the step's place; null where none does.</param>
internal sealed record Asked(
    string Action, Tone Tone, IReadOnlyList<string> Reasons, string Hint, EntryKind? Stands = null, string? Said = null, string? Alarmed = null)
{
    private const string Leaving = "Leave the session? It can be gone on with.";
    private const string LeavingPractice = "Leave the practice? It cannot be gone on with.";
    private const string HowToLeave = "  Press Ctrl-C again, or any key to stay.";

    /// <summary>What stands above the input line.</summary>
    public static Asked Of(Situation now, ScreenPicture picture)
    {
        if (picture.Mode == ScreenMode.AskingToLeave)
        {
            return new(now.Setting.Header.Practice ? LeavingPractice : Leaving, Tone.Doubt, [], HowToLeave);
        }

        if (picture.Replay is { } replay)
        {
            return InReplay(now, picture, replay);
        }

        if (now.State.IsOver)
        {
            return new("This boil is over. Press Enter to leave.", Tone.Strong, [], "");
        }

        return AtBoil(now, picture);
    }

    /// <summary>What was asked then stands where it stood; what was typed at the replay is answered in the row of the hint.</summary>
    private static Asked InReplay(Situation now, ScreenPicture picture, ReplaySight replay)
    {
        var asked = now.State.IsOver ? new("This boil is over.", Tone.Strong, [], "") : AtBoil(now, picture);
        var isWaiting = now.State is { Open: not null, IsOver: false };
        return asked with
        {
            Hint = replay.Reply.Length > 0 ? "- " + replay.Reply
                : replay.IsAtEnd ? "- The record ends here. 'back 10', 'start', or Ctrl-C to leave."
                : isWaiting ? asked.Hint : "",
        };
    }

    private static Asked AtBoil(Situation now, ScreenPicture picture)
    {
        var asked = now.State.Open is { } open ? Of(now, open) : Resting(now);
        if (now.State.Doubted is not { } doubted)
        {
            return asked;
        }

        var question = picture.Said.LastOrDefault(entry => entry.Kind == EntryKind.Question)?.Texts
            ?? (doubted is Added
                ? [$"? {Describe.Line(doubted)}: into the pan, or into the tank?", $"  [{string.Join(", ", Added.Places)}, no]"]
                : [$"? Is this right: {Describe.Line(doubted)}?", "  [yes, no, or say it anew]"]);

        // Danger is never hidden behind a question about a number.
        return asked.Tone == Tone.Danger
            ? asked with { Reasons = [$"{question[0]} [{(doubted is Added ? "pan or tank" : doubted is Did { IsUnmeasured: true } ? "an amount" : "yes or no")} answers this first]"] }
            : new(question[0], Tone.Doubt, [.. question.Skip(1)], "", EntryKind.Question);
    }

    private static Asked Of(Situation now, Prompt open)
    {
        var (advise, urgency) = now.Setting.Flow.Steps.TryGetValue(open.Step, out var step)
            ? (step.Advise, step.Urgency)
            : (now.Setting.Flow.Watches.FirstOrDefault(watch => watch.Id == open.Step)?.Advise, "info");
        var words = (advise is { } action
            ? Standing.Words(action, urgency, open.Text, open.Because ?? "")
            : LinesOfText.Of([new PromptLine(null, 0, open)])).ToList();
        var hint = LinesOfText.Hint(open);
        var age = now.Setting.Readings.Find(open.Ask) is { } reading && now.State.Last(reading) is { } last
            ? now.State.MinutesSince(last.At)
            : open.LastMinutes;
        var tone = advise is null ? Tone.Plain : Entry.ToneOf(urgency);
        if (tone == Tone.Plain && Standing.AlarmOf(now, advise) is { } alarm)
        {
            // The alarm asks for the very action of the step: it stands in the step's place, told once.
            var text = Columns.Clean(alarm.Words[0]);
            return new(text, alarm.Tone, [.. alarm.Words.Skip(1).Select(Columns.Clean)], hint, EntryKind.Prompt, text, advise);
        }

        return new(
            Columns.Clean(words[0]), tone == Tone.Plain ? Tone.Strong : tone,
            [.. words.Skip(1).Where(text => text != hint).Select(Columns.Clean)],
            LinesOfText.Hint(open with { LastMinutes = age }), EntryKind.Prompt);
    }

    private static Asked Resting(Situation now)
    {
        var next = now.State.Now is { } at && Dues.Next(now) is { } due ? $"Next: {due.What} {Times.Until(at.Time, due.At)}." : "";
        if (Standing.Quiet(now) is { Count: > 0 } advice)
        {
            return new(Columns.Clean(advice[0]), Tone.Strong, [.. advice.Skip(1).Select(Columns.Clean)], ("  " + next).TrimEnd(), Said: Columns.Clean(advice[0]));
        }

        var calm = Standing.Alarm(now) is not null ? "" : TopRow.IsEmergency(now.State, now.Setting) ? "Stay at the pan. " : "Nothing to do just now. ";
        return new((calm + next).TrimEnd(), Tone.Plain, [], "  [a reading, something done or seen; 'help' for the words]");
    }
}
