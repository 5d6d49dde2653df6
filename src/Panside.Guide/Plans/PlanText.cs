using System.Text;
using Panside.Guide.Knowledge;

namespace Panside.Guide.Plans;

/// <summary>A plan as a file.</summary>
public static class PlanText
{
    /// <summary>The plan with what was asked in a walk in place of what it expected; lines that were not come to are left out.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="walked">What came of the walk.</param>
    public static string Of(Plan plan, Walked walked)
    {
        var text = new StringBuilder();
        text.Append("plan: ").Append(Quoted(plan.Name)).Append('\n');
        text.Append("guidance: ").Append(plan.Guidance == Guidance.Practised ? "practised" : "beginner").Append('\n');
        if (plan.Ends is { } ends)
        {
            text.Append("ends: ").Append(ends).Append('\n');
        }

        if (plan.NotTold.Count > 0)
        {
            text.Append("not-told: ").Append(List(plan.NotTold)).Append('\n');
        }

        text.Append("lines:\n");
        foreach (var (line, asked) in plan.Lines.Zip(walked.Asked))
        {
            text.Append("  - { ").AppendJoin(", ", Keys(line, asked)).Append(" }\n");
        }

        return text.ToString();
    }

    private static IEnumerable<string> Keys(PlanLine line, string asked)
    {
        if (line.At is { } at)
        {
            yield return $"at: \"{at}\"";
        }

        if (line.Phase is { } phase)
        {
            yield return $"phase: {phase}";
        }

        yield return $"asks: {asked}";
        if (line.Say is { } say)
        {
            yield return $"say: {Quoted(say)}";
        }

        if (line.Taken != PlanLine.Takings[0])
        {
            yield return $"taken: {line.Taken}";
        }

        if (line.Told.Count > 0)
        {
            yield return $"told: {List(line.Told)}";
        }

        if (line.NotTold.Count > 0)
        {
            yield return $"not-told: {List(line.NotTold)}";
        }
    }

    private static string List(IEnumerable<PlacedText> texts) => $"[{string.Join(", ", texts.Select(told => Quoted(told.Text)))}]";

    private static string Quoted(string text) =>
        $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
