using Panside.Guide.Measures;

namespace Panside.Guide.Advice;

/// <summary>One figure that runs down, or up, to something that is to be done.</summary>
/// <param name="Value">What is left, in the unit that is shown.</param>
/// <param name="Share">The same as a share of the whole way, 0 to 1: what a bar shows of it.</param>
public readonly record struct Count(Measure Value, double Share)
{
    /// <summary>Whether it is what is likely, and no clock: where nothing is left of it, what it counts to is near and has not come yet.</summary>
    public bool IsForecast { get; init; }
}
