namespace Panside.Guide.Lines;

/// <summary>What a reading is expected to be: in liters, meters, °C, Brix or kPa, as its name measures.</summary>
/// <param name="Mean">The value expected; where ratios count, the middle one.</param>
/// <param name="Deviation">The standard deviation of a good reading above it; where ratios count, of its logarithm.</param>
public readonly record struct Expectation(double Mean, double Deviation)
{
    /// <summary>A reading further off by so many deviations is no matter of chance, even where chance has long tails.</summary>
    public const double Far = 5;

    /// <summary>Whether twice as much is as far off as half as much.</summary>
    public bool IsRatio { get; init; }

    /// <summary>The deviation of a good reading below the mean, where it is another.</summary>
    public double? Below { get; init; }

    /// <summary>How many deviations a value lies above what is expected; below it, less than none.</summary>
    public double Off(double value)
    {
        var off = IsRatio ? double.Log(double.Max(value, 1e-6) / Mean) : value - Mean;
        return off / (off < 0 ? Below ?? Deviation : Deviation);
    }

    /// <summary>Whether a value is far off.</summary>
    public bool IsFar(double value) => double.Abs(Off(value)) > Far;
}
