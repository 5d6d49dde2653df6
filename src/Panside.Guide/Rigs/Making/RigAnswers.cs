using System.Collections.Immutable;
using Panside.Guide.Measures;
using Panside.Guide.Yaml;

namespace Panside.Guide.Rigs.Making;

/// <summary>What has been answered about a rig so far.</summary>
internal sealed record RigAnswers(ImmutableDictionary<string, RigAnswer> All)
{
    private Rig? _rig;

    /// <summary>Nothing answered yet.</summary>
    public static RigAnswers None { get; } = new(ImmutableDictionary<string, RigAnswer>.Empty);

    /// <summary>The answer to a question; null where it was not answered yet.</summary>
    public RigAnswer? this[string name] => All.GetValueOrDefault(name);

    /// <summary>The units assumed and shown.</summary>
    public UnitSystem Units => UnitSystem.All.FirstOrDefault(one => one.Code == this["units"]?.Value) ?? UnitSystem.Us;

    /// <summary>Whether a burner heats the pan.</summary>
    public bool IsBurner => this["draft"]?.Value is "gas" or "oil" or "electric";

    /// <summary>Whether a hand feeds it; so it is taken where nobody knows.</summary>
    public bool IsFedByHand => this["float"] is { Value: null or "hand" };

    /// <summary>Whether a second pan stands behind the one with the draw-off: each of two has a float.</summary>
    public bool HasPanBehind => this["float"]?.Value == "float" && this["behind"]?.Value is { } behind && behind != RigQuestions.None;

    /// <summary>The questions that are asked of it.</summary>
    public IReadOnlyList<RigQuestion> Questions => [.. RigQuestions.All.Where(question => question.Applies(this))];

    /// <summary>The rig as the answers so far describe it; what is not answered is as usual.</summary>
    /// <exception cref="FaultyFileException">The answers contradict each other.</exception>
    public Rig Rig => _rig ??= RigFile.Read("rig", RigText.Of(this));

    /// <summary>With one more answer, or another one.</summary>
    public RigAnswers With(string name, RigAnswer answer) => new(All.SetItem(name, answer));

    /// <summary>What is wrong with the answers together; null where they go together.</summary>
    public string? Contradiction()
    {
        try
        {
            return Rig is null ? "" : null;
        }
        catch (FaultyFileException faulty)
        {
            return $"{faulty.Faults[0].Wrong}; expected {faulty.Faults[0].Expected}";
        }
    }
}
