using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>What a prompt wants to hear, in words, for whoever said something else.</summary>
internal static class AskedFor
{
    /// <summary>The words.</summary>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public static string Expected(Prompt? open)
    {
        if (open is null)
        {
            return "a reading like 'tank 22', something done like 'wood', or something seen like 'boil rolling'";
        }

        if (open.Choices is { } choices)
        {
            return string.Join(", ", choices);
        }

        return open.Ask == Prompt.Confirm || open.Unit is not { } unit
            ? "yes, no, skip or later"
            : $"a number in {UnitNames.SpokenOf(unit.Kind())}, skip or later";
    }
}
