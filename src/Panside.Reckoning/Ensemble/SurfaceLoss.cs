namespace Panside.Reckoning.Ensemble;

/// <summary>What a hot surface gives off without boiling, as medians: no source, calibrated.</summary>
internal static class SurfaceLoss
{
    /// <summary>Heat to the air, in MJ a minute, a square meter and a kelvin: 12 W/(m² K).</summary>
    public const double ToAir = 0.012 * 60 / 1000;

    /// <summary>Vapor, in liters a minute, a square meter and a kPa of vapor pressure: 0.04 kg/(m² h kPa).</summary>
    public const double Vapor = 0.04 / 60;
}
