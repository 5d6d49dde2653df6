using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Physics;

/// <summary>
/// What is known of water, sugar and steam at one air pressure, tabulated once: the only thing that the practice rig shares
/// with the forecaster. Heat capacity is taken at 60 °C, where the published form is linear in the sugar, so that the heat of
/// a mixture is the sum of its parts' and balances close.
/// </summary>
internal sealed class Materials
{
    private const int MostBrix = 85;
    private const double ColdCelsius = 4;
    private const double HotCelsius = 100;

    private readonly double[] _elevation = new double[MostBrix + 1];
    private readonly double[] _litersCold = new double[MostBrix + 1];
    private readonly double[] _litersHot = new double[MostBrix + 1];

    /// <summary>The materials under an air pressure.</summary>
    public Materials(Pressure station)
    {
        var middle = Temperature.FromCelsius(60);
        var boiling = BoilingWater.TemperatureAt(station);
        WaterHeat = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(default, middle) / 1000;
        var half = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(SugarContent.FromBrix(50), middle) / 1000;
        SugarHeat = (2 * half) - WaterHeat;
        BoilingCelsius = boiling.Celsius;
        Latent = Steam.LatentHeatMegajoulesPerKilogram(boiling);
        for (var brix = 0; brix <= MostBrix; brix++)
        {
            var content = SugarContent.FromBrix(brix);
            _elevation[brix] = BoilingPointElevation.Of(content, station).Celsius;
            _litersCold[brix] = LitersAKilogram(content, ColdCelsius);
            _litersHot[brix] = LitersAKilogram(content, HotCelsius);
        }
    }

    /// <summary>Heat capacity of water in MJ/(kg K).</summary>
    public double WaterHeat { get; }

    /// <summary>Heat capacity that a kilogram of dissolved sugar adds, in MJ/(kg K).</summary>
    public double SugarHeat { get; }

    /// <summary>Where water boils, in °C.</summary>
    public double BoilingCelsius { get; }

    /// <summary>Heat that turns a kilogram of water to steam, in MJ.</summary>
    public double Latent { get; }

    /// <summary>Where a solution of this mass fraction boils, in °C. Past 85 Brix it is held there.</summary>
    public double BoilingOf(double fraction) => BoilingCelsius + Between(_elevation, fraction);

    /// <summary>Liters that a kilogram of a solution takes up.</summary>
    public double LitersOf(double fraction, double celsius)
    {
        var warm = double.Clamp((celsius - ColdCelsius) / (HotCelsius - ColdCelsius), 0, 1.1);
        return ((1 - warm) * Between(_litersCold, fraction)) + (warm * Between(_litersHot, fraction));
    }

    /// <summary>Vapor pressure of water in kPa: Antoine's form with the usual constants for 1–100 °C, from memory; a few per mille.</summary>
    public static double VaporKilopascals(double celsius) =>
        double.Pow(10, 8.07131 - (1730.63 / (233.426 + celsius))) * 0.133322;

    private static double LitersAKilogram(SugarContent content, double celsius) =>
        1000 / SugarSolution.DensityOf(content, Temperature.FromCelsius(celsius)).KilogramsPerCubicMeter;

    private static double Between(double[] table, double fraction)
    {
        var brix = double.Clamp(fraction * 100, 0, MostBrix);
        var low = int.Min((int)brix, MostBrix - 1);
        return table[low] + ((table[low + 1] - table[low]) * (brix - low));
    }
}
