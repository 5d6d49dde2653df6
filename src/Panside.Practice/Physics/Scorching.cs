namespace Panside.Practice.Physics;

/// <summary>
/// When a pan burns: the floor under a cell is hotter than its liquid by the heat through it, more where the liquid is thick
/// with sugar and much more where it is too shallow to boil over the floor; above some 150 °C sugar chars, twice as fast for
/// each 7 K. No source, calibrated: an inch and a half takes any fire, a quarter of an inch a few minutes of it.
/// </summary>
internal static class Scorching
{
    /// <summary>Resistance from floor to boiling water, in m² K/MW.</summary>
    private const double Resistance = 250;

    /// <summary>Below this depth, in m, the floor shows between the bubbles.</summary>
    private const double Shallow = 0.012;

    private const double CharsAtCelsius = 150;

    private const double SecondsToBurn = 120;

    /// <summary>Damage of the worst cell in one second with this heat from below, in MJ; 1 is a burnt pan.</summary>
    public static double Worst(Makeup makeup, Truth truth, double heat)
    {
        var worst = 0.0;
        for (var cell = 0; cell < truth.Pan.Length; cell++)
        {
            worst = double.Max(worst, Damage(makeup, truth, cell, heat));
        }

        return worst;
    }

    /// <summary>Temperature of the floor under a cell, in °C.</summary>
    public static double FloorCelsius(Makeup makeup, Truth truth, int cell, double heat)
    {
        var liquid = truth.Pan[cell];
        var flux = heat * Pan.Shares(makeup, truth, cell) / makeup.HeatedOf(cell);
        var depth = double.Max(Pan.Depth(makeup, liquid, cell), 5e-4);
        var thick = double.Max(liquid.Fraction - 0.6, 0) / 0.2;
        var bare = depth < Shallow ? (Shallow / depth) * (Shallow / depth) : 1;
        return liquid.Celsius(makeup.Materials) + (flux * Resistance * makeup.Scale * (1 + (thick * thick)) * bare);
    }

    private static double Damage(Makeup makeup, Truth truth, int cell, double heat)
    {
        var over = FloorCelsius(makeup, truth, cell, heat) - CharsAtCelsius;
        return over <= 0 ? 0 : double.Min(double.Pow(2, over / 7) / SecondsToBurn, 1 / 20.0);
    }
}
