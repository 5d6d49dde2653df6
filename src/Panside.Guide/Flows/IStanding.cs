namespace Panside.Guide.Flows;

/// <summary>One step left for another, or for itself again.</summary>
/// <param name="From">The step that is left.</param>
/// <param name="To">The step that is reached, <see cref="Flow.End"/> or <see cref="Flow.LeftAlone"/>.</param>
/// <param name="Trigger">What led there, as in the flow file.</param>
public readonly record struct Move(string From, string To, string Trigger);

/// <summary>Where somebody stands in a flow. The machine keeps its state here and nowhere else, so that one machine walks many sessions.</summary>
public interface IStanding
{
    /// <summary>The step.</summary>
    string Step { get; }

    /// <summary>Where a side trip leads back to.</summary>
    string ReturnTo { get; }

    /// <summary>Whether a fact holds.</summary>
    /// <param name="fact">The fact, without a leading <c>not</c>.</param>
    bool Holds(string fact);

    /// <summary>A step is left: what was asked there is done, skipped or passed over.</summary>
    /// <param name="move">From where and where to.</param>
    void Leave(Move move);

    /// <summary>A step is reached. Whoever stands here writes down where that is: with a graver danger before it, elsewhere than the way leads.</summary>
    /// <param name="move">From where and where to.</param>
    void Reach(Move move);
}
