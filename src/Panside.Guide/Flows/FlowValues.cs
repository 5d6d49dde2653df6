namespace Panside.Guide.Flows;

/// <summary>The times of a flow's procedure: what its file says, and the usual ones for the rest.</summary>
public sealed class FlowValues
{
    private readonly Dictionary<FlowValue, TimeSpan> _said;

    /// <summary>Values of a flow.</summary>
    /// <param name="said">Those that the file says.</param>
    public FlowValues(IReadOnlyDictionary<FlowValue, TimeSpan> said) => _said = new(said);

    /// <summary>Of a flow that says none.</summary>
    public static FlowValues Usual { get; } = new(new Dictionary<FlowValue, TimeSpan>());

    /// <summary>One of them.</summary>
    public TimeSpan this[FlowValue value] => _said.Count > 0 && _said.TryGetValue(value, out var said) ? said : value.Usual;
}
