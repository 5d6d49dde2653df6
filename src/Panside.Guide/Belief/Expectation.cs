namespace Panside.Guide.Belief;

/// <summary>What a reading is expected to be: in liters, meters, °C, Brix or kPa, as its name measures.</summary>
/// <param name="Mean">The value expected; where ratios count, the middle one.</param>
/// <param name="Deviation">The standard deviation of a good reading about it; where ratios count, of its logarithm.</param>
/// <param name="IsRatio">Whether twice as much is as far off as half as much.</param>
public readonly record struct Expectation(double Mean, double Deviation, bool IsRatio = false)
{
    /// <summary>How many deviations a value lies above what is expected; below it, less than none.</summary>
    public double Off(double value) => IsRatio
        ? double.Log(double.Max(value, 1e-6) / Mean) / Deviation
        : (value - Mean) / Deviation;
}
