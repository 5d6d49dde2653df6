using Panside.Guide.Flows;

namespace Panside.Guide.Advice;

/// <summary>What is to be done where it does not clear by waiting, as the flow has it under <c>clearing</c>: who is told that is told the deed.</summary>
internal static class ClearingDeed
{
    /// <summary>What a flow without that list says.</summary>
    private const string Look = "look once more at all that is asked";

    /// <summary>The deed, to stand within a sentence.</summary>
    public static string Of(Situation now) => RuleOf(now) is { } rule ? Template.Fill(rule.Text, name => Figures.Of(now, name)) : Look;

    /// <summary>The action of the deed, for an advice that tells it; null where the advice keeps its own.</summary>
    /// <param name="now">What is known.</param>
    /// <param name="text">The text of the advice, with its figures.</param>
    public static string? ActionIn(Situation now, string text) => Template.FiguresIn(text).Contains("clearing-deed") ? RuleOf(now)?.Action : null;

    private static ClearingRule? RuleOf(Situation now) => now.Setting.Flow.Clearing.FirstOrDefault(rule => rule.When.All(fact => Facts.Holds(now, fact)));
}
