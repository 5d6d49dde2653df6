namespace Panside.Reckoning.Properties;

/// <summary>
/// The saturation line of water, both ways, in the units of its source and without its own range check:
/// the elevation model walks a little beyond the pressures that the public calls accept.
/// </summary>
/// <remarks>
/// Source: [S1] region 4; the coefficients are from memory, checked against the source's verification points.
/// </remarks>
internal static class If97Saturation
{
    private const double N1 = 0.11670521452767e4;
    private const double N2 = -0.72421316703206e6;
    private const double N3 = -0.17073846940092e2;
    private const double N4 = 0.12020824702470e5;
    private const double N5 = -0.32325550322333e7;
    private const double N6 = 0.14915108613530e2;
    private const double N7 = -0.48232657361591e4;
    private const double N8 = 0.40511340542057e6;
    private const double N9 = -0.23855557567849;
    private const double N10 = 0.65017534844798e3;

    /// <summary>The boiling temperature in kelvin; [S1] eq. 31.</summary>
    public static double Kelvin(double megapascals)
    {
        double square = Math.Sqrt(megapascals);
        double beta = Math.Sqrt(square);
        double e = square + (N3 * beta) + N6;
        double f = (N1 * square) + (N4 * beta) + N7;
        double g = (N2 * square) + (N5 * beta) + N8;
        double d = 2 * g / (-f - Math.Sqrt((f * f) - (4 * e * g)));
        double sum = N10 + d;
        return (sum - Math.Sqrt((sum * sum) - (4 * (N9 + (N10 * d))))) / 2;
    }

    /// <summary>The saturation pressure in megapascals; [S1] eq. 30.</summary>
    public static double Megapascals(double kelvin)
    {
        double theta = kelvin + (N9 / (kelvin - N10));
        double a = (((theta + N1) * theta) + N2);
        double b = (((N3 * theta) + N4) * theta) + N5;
        double c = (((N6 * theta) + N7) * theta) + N8;
        double root = 2 * c / (-b + Math.Sqrt((b * b) - (4 * a * c)));
        double square = root * root;
        return square * square;
    }
}
