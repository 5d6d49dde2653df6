using Panside.Guide.Flows;
using Panside.Guide.Words;

namespace Panside.Guide.Wording;

/// <summary>What a step, a watch or an advice of a flow says, its figures put in.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Phase">The phase of a step; for a watch or an advice what it is.</param>
/// <param name="Urgency">Of the advice that it gives; <c>info</c> where it gives none.</param>
/// <param name="Action">The action that it advises; null where none.</param>
/// <param name="Text">The instruction.</param>
/// <param name="Because">The reason.</param>
/// <param name="Cautions">The cautions before it.</param>
/// <param name="IfNo">What is said to a no.</param>
/// <param name="Place">Line and column in the file.</param>
public sealed record FlowText(
    string Id,
    string Phase,
    string Urgency,
    string? Action,
    string Text,
    string? Because,
    IReadOnlyList<string> Cautions,
    string? IfNo,
    (int Line, int Column) Place)
{
    /// <summary>Whether it belongs to an emergency.</summary>
    public bool IsEmergency => Urgency == "danger";

    /// <summary>Whether it is told as an alarm.</summary>
    public bool IsAlarm => Action is not null && Urgency is "danger" or "now";

    /// <summary>The mark that it is told with.</summary>
    public string Mark => LinesOfText.Mark(Urgency);

    /// <summary>All that is told with it, in order.</summary>
    public IEnumerable<string> All => [.. Cautions, Text, .. new[] { Because, IfNo }.OfType<string>()];

    /// <summary>The texts of a flow.</summary>
    /// <param name="flow">The flow.</param>
    /// <param name="figure">What stands for a figure.</param>
    public static IReadOnlyList<FlowText> Of(Flow flow, Func<string, string> figure)
    {
        string Fill(string text) => Template.Fill(text, figure);
        string? Filled(string? text) => text is null ? null : Fill(text);
        return
        [
            .. flow.Watches.Select(watch => new FlowText(
                watch.Id, "watch", "info", watch.Advise, Fill(watch.Text), Filled(watch.Because), watch.Cautions, null, watch.Place)),
            .. flow.Steps.Values.Where(step => step.Ask is not null).Select(step => new FlowText(
                step.Id, step.Phase.Code, step.Urgency, step.Advise, Fill(step.Text), Filled(step.Because), step.Cautions, Filled(step.IfNo), step.Place)),
            .. flow.Advices.Select(rule => new FlowText(
                rule.Id, "advice", rule.Urgency, rule.Action, Fill(rule.Text), Fill(rule.Because), [], null, rule.Place)),
            .. flow.Watches.SelectMany(watch => watch.Instead, (watch, said) => new FlowText(
                watch.Id, "watch", "info", watch.Advise, Fill(said.Text ?? watch.Text), Filled(said.Because ?? watch.Because), said.Cautions ?? watch.Cautions, null, watch.Place)),
            .. flow.Steps.Values.SelectMany(step => step.Instead, (step, said) => new FlowText(
                step.Id, step.Phase.Code, step.Urgency, step.Advise, Fill(said.Text ?? step.Text), Filled(said.Because ?? step.Because), said.Cautions ?? step.Cautions, Filled(said.IfNo ?? step.IfNo), step.Place)),
            .. flow.Advices.SelectMany(rule => rule.Instead, (rule, said) => new FlowText(
                rule.Id, "advice", rule.Urgency, rule.Action, Fill(said.Text ?? rule.Text), Fill(said.Because ?? rule.Because), [], null, rule.Place)),
        ];
    }
}
