using System.Text.RegularExpressions;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <summary>
/// S1: no text says that it is clear to leave but that of an advice behind the gate. A person goes by the words, whatever action stands beside
/// them. The usual wordings in English are looked for; what a text means nothing here knows.
/// </summary>
internal static partial class PromiseCheck
{
    /// <summary>The texts that promise, at the part that they stand in.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="flow">The flow.</param>
    public static IEnumerable<Fault> Faults(string file, Flow flow) =>
        from said in Texts(flow)
        let promise = Promise().Match(said.Text ?? "")
        where promise.Success
        select new Fault(
            file, said.Place.Line, said.Place.Column, $"'{said.Id}' tells that it is clear ('{promise.Value.Trim()}'), whether it is or not",
            $"that said by an advice 'clear-to-leave' alone, with '{Flow.Gate}' in its 'when' (S1)")
        { Kind = FaultKind.Gate, Help = "Whoever reads it goes. Leave it to the advice: it comes as soon as it is clear, wherever one stands." };

    private static IEnumerable<(string Id, (int Line, int Column) Place, string? Text)> Texts(Flow flow) =>
    [
        .. flow.Steps.Values.SelectMany(step => Told(step.Id, step.Place, step.Instead, [step.Text, step.Because, step.IfNo, step.Clock?.Text, step.Clock?.Over, .. step.Cautions])),
        .. flow.Watches.SelectMany(watch => Told(watch.Id, watch.Place, watch.Instead, [watch.Text, watch.Because, .. watch.Cautions])),
        .. flow.Clearing.Select(rule => ("clearing", rule.Place, (string?)rule.Text)),
        .. flow.Counts.Select(rule => (rule.Count, rule.Place, (string?)rule.Text)),
        .. flow.Advices.Where(rule => rule.Action != "clear-to-leave").SelectMany(rule => Told(rule.Id, rule.Place, rule.Instead, [rule.Text, rule.Because])),
    ];

    private static IEnumerable<(string Id, (int Line, int Column) Place, string? Text)> Told(
        string id, (int Line, int Column) place, IReadOnlyList<Reworded> instead, IReadOnlyList<string?> texts) => texts
        .Concat(instead.SelectMany(said => (string?[])[said.Text, said.Because, said.IfNo, .. said.Cautions ?? []]))
        .Select(text => (id, place, text));

    /// <summary>
    /// It is clear to leave; you may go. What waits for that ('until it is clear to leave'), asks for it, or goes on ('you can leave the lid off')
    /// promises nothing.
    /// </summary>
    [GeneratedRegex(
        @"(?<!\b(?:until|till|when|once|whether|if|before|unless|soon as) )(?:\b(?:it is|it's|you are|you're)|(?:^|[.!?;:,]))[ ]*(?:all |now |then )?(?:clear|safe|free|all right|ok|okay) to (?:leave|go)(?: (?:now|home|away|then|the (?:pan|rig|fire|house|sugarhouse)))?(?= *(?:[.,;:!]|$))"
        + @"|(?<!\b(?:until|till|when|once|whether|if|before|unless|soon as) )\byou (?:can|may) (?:now |then |safely )?(?:leave|go)(?: (?:now|home|away|then|to bed|the (?:pan|rig|fire|house|sugarhouse)))?(?= *(?:[.,;:!]|$))",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Promise();
}
