namespace Panside.Reckoning.Ensemble;

/// <summary>
/// The random numbers of the thing that is told next, drawn once: each minute's forecasts let a charge go in, with the same numbers as
/// long as nothing else is told.
/// </summary>
/// <param name="count">How many members.</param>
/// <param name="told">The number of the thing.</param>
internal sealed class ToldNoise(int count, int told)
{
    private double[]? _noise;
    private ToldNoise? _next;

    /// <summary>A normal number for each member; to be read only.</summary>
    public double[] Noise => _noise ??= Beginning.Noise(count, told);

    /// <summary>Those of the thing that is told after it.</summary>
    public ToldNoise Next => _next ??= new(count, told + 1);
}
