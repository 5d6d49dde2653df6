namespace Panside.Reckoning.Properties;

/// <summary>
/// One isotherm of the density polynomial: rho = rho_w(t) + sum over i of c_i(T) w^i, T = (t - 20 °C) / 100.
/// </summary>
/// <remarks>Source: [S3] for the coefficients, [S5] for water.</remarks>
internal readonly struct SucroseDensity
{
    private readonly double _c0, _c1, _c2, _c3, _c4, _c5, _c6;

    private SucroseDensity(double celsius)
    {
        double t = (celsius - 20) / 100;
        _c0 = WaterAt(celsius);
        _c1 = 385.1761 + (t * (-46.2720 + (t * (59.7712 + (t * (-47.2207 + (t * 18.3184)))))));
        _c2 = 135.3705 + (t * (-7.1720 + (t * (7.2491 + (t * (-21.6977 + (t * 12.3081)))))));
        _c3 = 40.9299 + (t * (1.1597 + (t * (12.3630 + (t * 27.6301)))));
        _c4 = -3.9643 + (t * (5.1126 + (t * -35.4791)));
        _c5 = 13.4853 + (t * 17.5254);
        _c6 = -17.2890;
    }

    public static SucroseDensity At(double celsius) => new(celsius);

    public double KilogramsPerCubicMeter(double w) =>
        _c0 + (w * (_c1 + (w * (_c2 + (w * (_c3 + (w * (_c4 + (w * (_c5 + (w * _c6)))))))))));

    /// <summary>
    /// The inverse, for a density on this isotherm between water and 85 Brix; Newton's steps on a nearly straight line.
    /// </summary>
    public double MassFraction(double kilogramsPerCubicMeter)
    {
        double w = Math.Clamp((kilogramsPerCubicMeter - _c0) / 520, 0, 0.85);
        for (int step = 0; step < 20; step++)
        {
            double correction = (KilogramsPerCubicMeter(w) - kilogramsPerCubicMeter) / Slope(w);
            w = Math.Clamp(w - correction, 0, 0.85);
            if (Math.Abs(correction) < 1e-13)
            {
                break;
            }
        }

        return w;
    }

    private double Slope(double w) =>
        _c1 + (w * ((2 * _c2) + (w * ((3 * _c3) + (w * ((4 * _c4) + (w * ((5 * _c5) + (w * 6 * _c6)))))))));

    private static double WaterAt(double t)
    {
        double high = -46.241757e-6 + (t * (105.84601e-9 - (t * 281.03006e-12)));
        double low = 999.83952 + (t * (16.952577 + (t * (-7.9905127e-3 + (t * high)))));
        return low / (1 + (16.887236e-3 * t));
    }
}
