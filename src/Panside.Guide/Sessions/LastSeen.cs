using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Sessions;

/// <summary>Answers who asks whether something is so, or how it is done: what was told of it last and when, and why it is asked for. Nothing is taken.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed class LastSeen(Setting setting)
{
    /// <summary>Answers.</summary>
    /// <param name="turn">The turn.</param>
    /// <param name="kind">What is asked about, as the ear names it: <c>observed:coals:spent</c>.</param>
    public void Tell(Turn turn, string kind)
    {
        var parts = kind.Split(':');
        if (parts is ["did", "close-draw"] && turn.Holds("burner-on") && !turn.Holds("draw-open"))
        {
            // What can be shut off is the burner.
            parts[1] = DeedName.ShutOff.Code;
        }

        var (ask, told) = parts[0] switch
        {
            "observed" when ObservationName.FromCode(parts[1]) is { } name => (name.Code, Seen(turn, name)),
            "reading" when setting.Readings.Find(parts[1]) is { } name => (name.Code, Read(turn, name)),
            "did" when DeedName.FromCode(parts[1]) is { } name => ("", Done(turn, name)),
            _ => ("", ""),
        };
        turn.Tell($"{told}Nothing is taken of a question: say what you see or did.");
        if (Reason(turn, parts[0] == "did" ? DeedName.FromCode(parts[1]) : null, ask) is { } because)
        {
            turn.Tell(turn.Fill(because));
        }
    }

    private static string Seen(Turn turn, ObservationName name) => turn.State.Observations.TryGetValue(name, out var seen)
        ? $"Last told: {name.Code} {seen.Value}, {Ago(turn, seen.At)}. "
        : $"Nobody has told of the {name.Code} yet. ";

    private static string Read(Turn turn, ReadingName name) => turn.State.Last(name) is { } read
        ? $"Last read: {name.Spoken} {Amount.Plain(read.Value)}, {Ago(turn, read.At)}. "
        : $"Nobody has read it yet: {name.Spoken}. ";

    private static string Done(Turn turn, DeedName name) => turn.State.Deeds.TryGetValue(name, out var done)
        ? $"Last told: {name.Spoken}, {Ago(turn, done.At)}. "
        : $"Not told yet: {name.Spoken}. ";

    private static string Ago(Turn turn, Moment at) => $"{Amount.Minutes(turn.State.MinutesSince(at))} ago";

    /// <summary>Why a thing is done or asked: by what stands open, else by the first step or watch that has it on this rig; null where none gives a reason.</summary>
    private string? Reason(Turn turn, DeedName? deed, string ask)
    {
        if (deed is not null && turn.State.Open is { } open && setting.Flow.DeedOf(open.Step) == deed)
        {
            return $"Now: {open.Text}";
        }

        var step = setting.Flow.Steps.Values.Where(step => step.Deed is { } done && done == deed && step.Given.Where(RigFacts.IsOne).All(fact => RigFacts.Holds(setting.Rig, fact))).MinBy(step => step.Place.Line);
        return step is not null ? string.Join(' ', new[] { step.Because }.Concat(step.Cautions).OfType<string>())
            : setting.Flow.Watches.FirstOrDefault(watch => watch.Ask == ask && setting.IsThere(ask) && watch.Given.All(turn.Holds)) is { Because: { } because } watch && !because.Contains('{', StringComparison.Ordinal) ? $"{watch.Text} {because}"
            : null;
    }
}
