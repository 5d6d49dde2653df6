using Panside.Reckoning.Quantities;

namespace Panside.Guide.Flows;

/// <summary>The thresholds of a flow's procedure: what its file says, and the usual ones for the rest.</summary>
public sealed class FlowValues
{
    private readonly Dictionary<FlowValue, double> _said;

    /// <summary>Values of a flow.</summary>
    /// <param name="said">Those that the file says, each in its unit.</param>
    public FlowValues(IReadOnlyDictionary<FlowValue, double> said) => _said = new(said);

    /// <summary>Of a flow that says none.</summary>
    public static FlowValues Usual { get; } = new(new Dictionary<FlowValue, double>());

    /// <summary>One that is a time.</summary>
    public TimeSpan this[FlowValue value] => TimeSpan.FromMinutes(Number(value));

    /// <summary>One that is a part of something: 1 for the whole.</summary>
    public double Share(FlowValue value) => Number(value) / 100;

    /// <summary>One that is a number of degrees over or under something.</summary>
    public TemperatureRise Rise(FlowValue value) => TemperatureRise.FromFahrenheit(Number(value));

    private double Number(FlowValue value) => _said.Count > 0 && _said.TryGetValue(value, out var said) ? said : value.Usual;
}
