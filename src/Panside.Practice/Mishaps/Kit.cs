namespace Panside.Practice.Mishaps;

/// <summary>By how much the instruments are wrong, beside their usual errors.</summary>
internal sealed record Kit
{
    /// <summary>The thermometer shows so much more, in K.</summary>
    public double ThermometerOff { get; init; }

    /// <summary>The ruler shows so much more, in m.</summary>
    public double RulerOff { get; init; }

    /// <summary>The tank's gauge hangs at so many liters; null where it moves.</summary>
    public double? GaugeHangs { get; init; }

    /// <summary>The hydrometer shows so much more, in Brix.</summary>
    public double HydrometerOff { get; init; }
}
