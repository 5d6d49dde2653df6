using Panside.Practice.Physics;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Mishaps;

/// <summary>The weather of a boil: air and sap at its beginning, and what both air and barometer drift to.</summary>
/// <param name="AirCelsius">The air at the beginning; null for the seed's own.</param>
/// <param name="SapCelsius">The sap in the tank; null for the seed's own.</param>
/// <param name="AirLaterCelsius">The air at the end of the drift; null where it stays.</param>
/// <param name="BarometerFalls">By how much the barometer falls over the drift, in kPa; less than nothing where it rises.</param>
/// <param name="Hours">How long the drift takes.</param>
public sealed record Weather(double? AirCelsius, double? SapCelsius, double? AirLaterCelsius, double BarometerFalls, double Hours)
{
    /// <summary>What the seed has, without a drift.</summary>
    public static Weather Steady { get; } = new(null, null, null, 0, 1);

    /// <summary>Whether anything drifts.</summary>
    public bool Drifts => AirLaterCelsius is not null || BarometerFalls != 0;

    /// <summary>A rig under this weather, so many minutes after its beginning.</summary>
    internal Makeup Of(Makeup makeup, double minutes)
    {
        var gone = double.Clamp(minutes / 60 / Hours, 0, 1);
        var air = AirCelsius ?? makeup.AirCelsius;
        return Under(makeup, -BarometerFalls * gone) with
        {
            AirCelsius = air + (((AirLaterCelsius ?? air) - air) * gone),
            SapCelsius = SapCelsius ?? makeup.SapCelsius,
        };
    }

    /// <summary>The rig under another air pressure, in steps that no thermometer shows.</summary>
    internal static Makeup Under(Makeup makeup, double kilopascals)
    {
        var steps = (int)double.Round(kilopascals / Step);
        return steps == 0 ? makeup : makeup with
        {
            Materials = new(Guide.Knowledge.Setting.Within(Pressure.FromKilopascals(
                BoilingWater.PressureAt(Temperature.FromCelsius(makeup.Materials.BoilingCelsius)).Kilopascals + (steps * Step)))),
        };
    }

    private const double Step = 0.05;
}
