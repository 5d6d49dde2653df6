namespace Panside.Reckoning.Ensemble;

/// <summary>The bounds between an eye's words, which are none: each eye draws them elsewhere.</summary>
internal static class EyeBounds
{
    /// <summary>Steam below which the boil is called still, in liters a minute and a square meter: no source, calibrated.</summary>
    public const double StillBoil = 0.013;

    /// <summary>How far eyes differ in the bounds of the coals, as a deviation of their logarithm: no source, calibrated.</summary>
    public const double CoalsEye = 0.5;

    /// <summary>Bounds between the words for the boil, in liters of steam a minute and a square meter: no source, calibrated.</summary>
    public static readonly double[] OfBoil = [double.Log(StillBoil), double.Log(0.15), double.Log(0.40)];

    /// <summary>Bounds between the words for the coals, as shares of a long-fired bed: no source, calibrated.</summary>
    public static readonly double[] OfCoals = [double.Log(0.06), double.Log(0.45)];

    /// <summary>Bounds between the words for the gradient, as the difference of the ends over the mean: no source, calibrated.</summary>
    public static readonly double[] OfGradient = [0.3, 0.7];
}
