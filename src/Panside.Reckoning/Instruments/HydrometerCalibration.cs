namespace Panside.Reckoning.Instruments;

/// <summary>The temperature, printed on its scale, at which a hydrometer tells the truth.</summary>
public enum HydrometerCalibration
{
    /// <summary>60 °F, usual for syrup.</summary>
    At60Fahrenheit,

    /// <summary>68 °F, which is 20 °C.</summary>
    At68Fahrenheit,

    /// <summary>38 °F, usual for sap.</summary>
    At38Fahrenheit,
}
