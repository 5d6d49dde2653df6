using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Ensemble;

/// <summary>What a reading is off by of itself: a new one is held against what is expected with it, and then taken in with it.</summary>
internal static class ReadingErrors
{
    /// <summary>A ruler in a boiling pan, read to the eighth of an inch, in meters.</summary>
    public const double RulerMeters = 0.0015;

    /// <summary>A deeper pan by less than this is the ruler's doing, and no sap poured in.</summary>
    public const double PouredLiters = 4;

    /// <summary>The eye at a thermometer, in K; what it is off by all evening is a number of the members.</summary>
    public const double ThermometerEye = 0.08;

    private const double LeastGaugeLiters = 0.7;

    private const double GaugeShare = 0.01;

    /// <summary>An eye at a tank's gauge and its marks, in liters: the larger the tank, the coarser. Common practice, no source.</summary>
    public static double GaugeLiters(RigDescription rig) => rig.Tank is { } tank ? double.Max(LeastGaugeLiters, GaugeShare * tank.Liters) : 1.0;

    /// <summary>A cooled sample at the refractometer, in Brix: the thicker, the coarser.</summary>
    public static double SampleBrix(double brix) => 0.5 + (0.02 * brix);
}
