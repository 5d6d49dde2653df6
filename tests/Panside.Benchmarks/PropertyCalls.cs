using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>What one call of each property costs.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class PropertyCalls
{
    [Benchmark]
    public Temperature BoilingWater_TemperatureAt() => BoilingWater.TemperatureAt(Known.Air);

    [Benchmark]
    public Pressure BoilingWater_PressureAt() => BoilingWater.PressureAt(Known.Boiling);

    [Benchmark]
    public double Steam_LatentHeat() => Steam.LatentHeatMegajoulesPerKilogram(Known.Boiling);

    [Benchmark]
    public Pressure Atmosphere_PressureAt() => StandardAtmosphere.PressureAt(Known.Altitude);

    [Benchmark]
    public Pressure Atmosphere_StationPressure() => StandardAtmosphere.StationPressure(Known.Reported, Known.Altitude);

    [Benchmark]
    public bool Atmosphere_LooksReduced() => StandardAtmosphere.LooksReducedToSeaLevel(Known.Air, Known.Altitude);

    [Benchmark]
    public Density Solution_DensityOf() => SugarSolution.DensityOf(Known.Syrup, Known.Hot);

    [Benchmark]
    public SugarContent Solution_SugarContentOf() => SugarSolution.SugarContentOf(Known.Dense, Known.Hot);

    [Benchmark]
    public double Solution_SpecificHeat() => SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(Known.Syrup, Known.Hot);

    [Benchmark]
    public double Baume_Of() => BaumeScale.DegreesBaumeOf(Known.Syrup);

    [Benchmark]
    public SugarContent Baume_Back() => BaumeScale.SugarContentAt(Known.Baume);

    [Benchmark]
    public TemperatureRise Elevation_Of() => BoilingPointElevation.Of(Known.Syrup, Known.Air);

    [Benchmark]
    public SugarContent Elevation_Back() => BoilingPointElevation.SugarContentAt(Known.Rise, Known.Air);

    [Benchmark]
    public Energy Firewood_HeatAsFired() => Firewood.HeatAsFired(Known.Species, Known.Wood, Known.Moisture);

    [Benchmark]
    public Mass Firewood_MassOfCord() => Firewood.MassOfCord(Known.Species, Known.Moisture);

    [Benchmark]
    public double Firebrick_SpecificHeat() => Firebrick.SpecificHeatJoulesPerKilogramKelvin(Known.Glowing);

    [Benchmark]
    public Energy Firebrick_HeatOnCooling() => Firebrick.HeatOnCooling(Known.Wood, Known.Glowing, Known.Boiling);

    [Benchmark]
    public Energy Evaporation_HeatToBoilAway() => Evaporation.HeatToBoilAway(Known.Wood, Known.Cool, Known.Boiling);
}
