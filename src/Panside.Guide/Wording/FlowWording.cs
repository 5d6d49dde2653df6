using Panside.Guide.Flows;
using Panside.Guide.Yaml;

namespace Panside.Guide.Wording;

/// <summary>
/// How the texts of a flow read to a tired person: one action a step, at most two cautions before it that ask for nothing, a short
/// reason, no text longer than its place. A flow that fails here still guides; whoever writes it is told.
/// </summary>
public static class FlowWording
{
    /// <summary>Columns of a prompt beside its mark, on a screen of 80.</summary>
    public const int PromptWidth = 78;

    /// <summary>Columns of an alarm with its mark: two lines of 76.</summary>
    public const int AlarmWidth = 2 * 76;

    /// <summary>Words of a reason.</summary>
    public const int ReasonWords = 15;

    /// <summary>Cautions of a step.</summary>
    public const int Cautions = 2;

    /// <summary>Actions in an emergency, and in what is said to a no.</summary>
    public const int EmergencyActions = 3;

    /// <summary>Words of an emergency.</summary>
    public const int EmergencyWords = 27;

    /// <summary>What stands for a figure whose value is not known: a number and a unit.</summary>
    private const string SomeFigure = "12.5 gal";

    private const string ClearToLeave = "clear-to-leave";

    /// <summary>What reads badly, in the order of the file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="flow">The flow.</param>
    /// <param name="figure">What stands for a figure; null for a number and a unit.</param>
    public static IReadOnlyList<Fault> Of(string file, Flow flow, Func<string, string>? figure = null)
    {
        var texts = FlowText.Of(flow, figure ?? (_ => SomeFigure));
        return [.. texts.SelectMany(text => Of(file, text)).Distinct().OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)];
    }

    private static IEnumerable<Fault> Of(string file, FlowText text)
    {
        Fault At(string wrong, string expected) => new(file, text.Place.Line, text.Place.Column, $"'{text.Id}' {wrong}", expected);

        var asked = Instruction.Of(text.Text);
        var most = text.IsEmergency ? EmergencyActions : 1;
        if (asked.Actions.Count > most)
        {
            yield return At($"asks for {asked.Actions.Count} actions: {string.Join(" | ", asked.Actions)}", most == 1 ? "one action a step" : $"{most} actions at the most");
        }

        if (asked.Actions.Count + asked.Replies.Count == 0 && !asked.IsQuestion && text.Action != ClearToLeave)
        {
            yield return At("begins with no verb that is known", "the verb first, as in 'Read the head tank.'");
        }

        if (text.IsEmergency && ReadingGrade.WordsIn(text.Text) > EmergencyWords)
        {
            yield return At($"has {ReadingGrade.WordsIn(text.Text)} words", $"{EmergencyWords} at the most in an emergency");
        }

        var (width, room) = text.IsAlarm ? (text.Mark.Length + 1 + text.Text.Length, AlarmWidth) : (text.Text.Length, PromptWidth);
        if (width > room)
        {
            yield return At($"takes {width} columns", $"{room} at the most");
        }

        if (text.Because is { } because && ReadingGrade.WordsIn(because) > ReasonWords)
        {
            yield return At($"has a reason of {ReadingGrade.WordsIn(because)} words", $"{ReasonWords} at the most");
        }

        if (text.Cautions.Count > Cautions)
        {
            yield return At($"has {text.Cautions.Count} cautions", $"{Cautions} at the most");
        }

        foreach (var caution in text.Cautions.Where(caution => Instruction.Of(caution) is { Actions.Count: > 0 } or { Replies.Count: > 0 }))
        {
            yield return At($"has a caution that asks for something: {caution}", "the hazard and what comes of it");
        }

        if (text.IfNo is { } ifNo && Instruction.Of(ifNo) is var said && (said.Actions.Count > EmergencyActions || said.Actions.Count > said.Sentences))
        {
            yield return At($"answers a no with {said.Actions.Count} actions in {said.Sentences} sentences", $"{EmergencyActions} actions at the most, each a sentence");
        }
    }
}
