using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Sessions;

/// <summary>Gives the advice whose facts hold, and the forecasts that have changed.</summary>
internal sealed class Adviser(Setting setting)
{
    /// <summary>Advice that has just settled is not given again within this time, so that noise does not make it chatter: O4.</summary>
    private static readonly TimeSpan Quiet = TimeSpan.FromMinutes(1);

    /// <summary>The same of what is only good to know: it comes and goes with a forecast.</summary>
    private static readonly TimeSpan QuietForLong = TimeSpan.FromMinutes(5);

    private readonly IReadOnlyList<AdviceRule> _gravestFirst = [.. setting.Flow.Advices.OrderBy(rule => Urgencies.All.ToList().IndexOf(rule.Urgency))];

    /// <summary>Gives advice, the gravest first.</summary>
    public void Advise(Turn turn)
    {
        var phase = setting.Flow.PhaseOf(turn.State.Step).Code;
        foreach (var rule in _gravestFirst)
        {
            var holds = (rule.Phases.Count == 0 || rule.Phases.Contains(phase)) && rule.When.All(turn.Holds);
            var given = turn.State.Advised.TryGetValue(rule.Id, out var last);
            var age = given ? turn.State.Now!.Value.Time - last.Time : TimeSpan.MaxValue;
            if (holds && (!given || age >= rule.Again) && !IsJustSaid(turn, rule) && !IsJustAsked(turn, rule))
            {
                Give(turn, rule);
            }
            else if (!holds && given && age >= Settles(turn, rule, last))
            {
                turn.Happen(new Settled(rule.Id));
            }
        }
    }

    /// <summary>
    /// How long after it was given an advice whose facts have gone may be given anew. What was made ready stands ready until the draw has come,
    /// however the forecast that called for it comes and goes. That it is clear is said at once when it is so again.
    /// </summary>
    private static TimeSpan Settles(Turn turn, AdviceRule rule, Moment given) =>
        rule.Prepare && !(turn.State.DrawEnded?.Time >= given.Time) ? rule.Again ?? Quiet
        : rule.Action == "clear-to-leave" ? TimeSpan.Zero
        : rule.Urgency == "info" ? QuietForLong
        : Quiet;

    /// <summary>Tells the forecasts that have moved since they were last told.</summary>
    public void Forecast(Turn turn)
    {
        foreach (var forecast in Forecasts.All(turn.Now))
        {
            if (!turn.State.Forecasts.TryGetValue(forecast.Name, out var told) || Forecasts.IsAnother(told, forecast))
            {
                turn.Say((at, number) => new ForecastLine(at, number, forecast));
            }
        }
    }

    /// <summary>Whether the same words were given a moment ago for another reason: what they ask may well be under way.</summary>
    private bool IsJustSaid(Turn turn, AdviceRule rule) => setting.Flow.Advices.Any(other =>
        other.Id != rule.Id && other.Text == rule.Text
        && turn.State.Advised.TryGetValue(other.Id, out var last) && turn.State.Now!.Value.Time - last.Time < Quiet);

    /// <summary>Whether the step that stands asks for the very thing now, or asked for it a moment ago, and as pressing.</summary>
    private bool IsJustAsked(Turn turn, AdviceRule rule) => setting.Flow.Steps[turn.State.Step] is { Urgency: "now" or "danger" } step && step.Advise == rule.Action
        && turn.State.Now!.Value.Time - (turn.State.Open?.Step == step.Id ? turn.State.OpenSince : turn.State.StepSince).Time <= setting.Flow.Values[FlowValue.Patience];

    private static void Give(Turn turn, AdviceRule rule)
    {
        var forecast = rule.Forecast is { } name ? Forecasts.Told(turn.Now, name) : null;
        turn.Happen(new Advised(rule.Id));
        turn.Say((at, number) => new AdviceLine(
            at, number, new(ClearingDeed.ActionIn(turn.Now, rule.Text) ?? rule.Action, rule.Urgency, turn.Fill(rule.Text), turn.Fill(rule.Because), forecast) { Prepare = rule.Prepare }));
    }
}
