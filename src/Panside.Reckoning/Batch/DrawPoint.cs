using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>
/// The temperature at which boiling liquid is syrup today, with the band that the sources' disagreement leaves. The
/// thermometer calls for the hydrometer test; the hydrometer decides.
/// </summary>
/// <remarks>
/// Source: [S11] over [S1] for the point itself. The band spans that model with 0.2 °F each way and the quadratic of
/// [S12], widened by the 0.1 °F to which trade sheets are written. Range: targets of 60 to 70 Brix, 75 to 108 kPa.
/// Agreement: every statement of [S29] and the handbook of [S13] (from memory) lies in the band; [S15], weak, lies 1.4
/// °F above the point. Not covered: invert sugar and minerals, which raise the elevation a little; no source that was
/// read says how much.
/// </remarks>
public readonly record struct DrawPoint
{
    private const double ModelDoubtCelsius = 0.2 / 1.8;
    private const double RoundingCelsius = 0.1 / 1.8;

    private DrawPoint(Temperature temperature, TemperatureRise elevation, TemperatureRise below, TemperatureRise above) =>
        (Temperature, Elevation, Lowest, Highest) = (temperature, elevation, temperature - below, temperature + above);

    /// <summary>The best estimate.</summary>
    public Temperature Temperature { get; private init; }

    /// <summary>How far that is above boiling water.</summary>
    public TemperatureRise Elevation { get; }

    /// <summary>The lowest that a source puts it.</summary>
    public Temperature Lowest { get; private init; }

    /// <summary>The highest that a source puts it.</summary>
    public Temperature Highest { get; private init; }

    /// <summary>The draw point for a target under a station pressure (not reduced to sea level).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 60 to 70 Brix or 75 to 108 kPa.</exception>
    public static DrawPoint For(SugarContent target, Pressure station)
    {
        if (target.Brix is not (>= 60 and <= 70))
        {
            throw OutOfRange.For(
                "The target in Brix",
                target.Brix,
                "60 to 70 Brix; syrup is 66.0 to 68.9, and a number near 36 is degrees Baume");
        }

        TemperatureRise model = BoilingPointElevation.Of(target, station);
        double quadratic = QuadraticElevation.CelsiusAtSeaLevel(target)
            * (model / BoilingPointElevation.Of(target, QuadraticElevation.SeaLevel));
        double below = Math.Max(ModelDoubtCelsius, model.Celsius - quadratic) + RoundingCelsius;
        double above = Math.Max(ModelDoubtCelsius, quadratic - model.Celsius) + RoundingCelsius;
        return new(
            BoilingWater.TemperatureAt(station) + model,
            model,
            TemperatureRise.FromCelsius(below),
            TemperatureRise.FromCelsius(above));
    }

    /// <summary>The draw point for a target where water boils at a true temperature today.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside 60 to 70 Brix or 91.76 to 101.77 °C.</exception>
    public static DrawPoint ForBoilingWater(SugarContent target, Temperature boilingWater) =>
        For(target, BoilingWater.PressureAt(boilingWater));

    /// <summary>The same point as a thermometer of known offset shows it.</summary>
    public DrawPoint ShownWith(TemperatureRise thermometerOffset) => this with
    {
        Temperature = Temperature + thermometerOffset,
        Lowest = Lowest + thermometerOffset,
        Highest = Highest + thermometerOffset,
    };
}
