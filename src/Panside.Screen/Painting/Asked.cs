using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Words;

namespace Panside.Screen.Painting;

/// <summary>What the operator is to do or to answer now: the words, their tone, and what may be typed.</summary>
/// <param name="Action">The one thing to do.</param>
/// <param name="Tone">Its tone.</param>
/// <param name="Reasons">Why.</param>
/// <param name="Hint">What may be typed.</param>
internal sealed record Asked(string Action, Tone Tone, IReadOnlyList<string> Reasons, string Hint)
{
    private const string Leaving = "Leave the session? It can be gone on with. Press Ctrl-C again, or any key to stay.";

    /// <summary>What stands above the input line.</summary>
    public static Asked Of(Situation now, ScreenPicture picture)
    {
        if (picture.Mode == ScreenMode.AskingToLeave)
        {
            return new(Leaving, Tone.Doubt, [], "");
        }

        if (now.State.IsOver)
        {
            return new("This boil is over. Press Enter to leave.", Tone.Strong, [], "");
        }

        if (now.State.Doubted is { } doubted)
        {
            var question = picture.Said.LastOrDefault(entry => entry.Kind == EntryKind.Question)?.Texts
                ?? [$"? Is this right: {Describe.Line(doubted)}?", "  [yes, no, or the right value]"];
            return new(question[0], Tone.Doubt, [.. question.Skip(1)], "");
        }

        return now.State.Open is { } open ? Of(now, open) : Resting(now);
    }

    private static Asked Of(Situation now, Prompt open)
    {
        var (advise, urgency) = now.Setting.Flow.Steps.TryGetValue(open.Step, out var step)
            ? (step.Advise, step.Urgency)
            : (now.Setting.Flow.Watches.FirstOrDefault(watch => watch.Id == open.Step)?.Advise, "info");
        var words = (advise is { } action
            ? Alarm.Words(action, urgency, open.Text, open.Because ?? "")
            : LinesOfText.Of([new PromptLine(null, 0, open)])).ToList();
        var hint = LinesOfText.Hint(open);
        var tone = advise is null ? Tone.Plain : Entry.ToneOf(urgency);
        return new(
            Columns.Clean(words[0]), tone == Tone.Plain ? Tone.Strong : tone,
            [.. words.Skip(1).Where(text => text != hint).Select(Columns.Clean)], hint);
    }

    private static Asked Resting(Situation now)
    {
        const string Hint = "  [a reading, something done or seen; 'help' for the words]";
        return now.State.Now is { } at && Dues.Next(now) is { } due
            ? new($"Nothing to do just now. Next: {due.Name} {Times.Until(at.Time, due.At)}.", Tone.Plain, [], Hint)
            : new("Nothing to do just now.", Tone.Plain, [], Hint);
    }
}
