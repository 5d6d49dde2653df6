using Panside.Reckoning.Batch;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Tests.Rules;

public class AllocationTests
{
    private static readonly Pressure Air = Pressure.FromKilopascals(98);
    private static readonly Temperature Hot = Temperature.FromCelsius(98);
    private static readonly Temperature Cool = Temperature.FromCelsius(20);
    private static readonly SugarContent Syrup = SugarContent.FromBrix(66.9);
    private static readonly SugarContent Sap = SugarContent.FromBrix(2);
    private static readonly Portion Tank = Portion.OfVolume(Volume.FromLiters(100), Sap, Cool);

    private static readonly Dictionary<string, Func<double>> Calls = new()
    {
        ["boiling water"] = () => BoilingWater.TemperatureAt(Air).Celsius + BoilingWater.PressureAt(Hot).Kilopascals,
        ["atmosphere"] = () => StandardAtmosphere.StationPressure(Pressure.FromHectopascals(1013), Length.FromMeters(300)).Kilopascals
            + StandardAtmosphere.PressureAt(Length.FromMeters(300)).Kilopascals,
        ["density"] = () => SugarSolution.DensityOf(Syrup, Hot).KilogramsPerCubicMeter,
        ["sugar content"] = () => SugarSolution.SugarContentOf(Density.FromKilogramsPerCubicMeter(1200), Hot).Brix,
        ["specific heat"] = () => SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(Syrup, Hot),
        ["elevation"] = () => BoilingPointElevation.Of(Syrup, Air).Celsius,
        ["elevation back"] = () => BoilingPointElevation.SugarContentAt(TemperatureRise.FromCelsius(4), Air).Brix,
        ["steam"] = () => Steam.LatentHeatMegajoulesPerKilogram(Hot),
        ["wood"] = () => Firewood.HeatAsFired(FirewoodSpecies.Ash, Mass.FromKilograms(1), 0.2).Megajoules
            + Firewood.MassOfCord(FirewoodSpecies.Ash, 0.2).Kilograms,
        ["brick"] = () => Firebrick.SpecificHeatJoulesPerKilogramKelvin(Temperature.FromCelsius(700)),
        ["baume"] = () => BaumeScale.SugarContentAt(BaumeScale.DegreesBaumeOf(Syrup)).Brix,
        ["evaporation"] = () => Evaporation.HeatToBoilAway(Mass.FromKilograms(1), Cool, Hot).Megajoules,
        ["instruments"] = () => SyrupHydrometer.TrueSugarContent(Syrup, Hot).Brix
            + SyrupHydrometer.ReadingOnTarget(Syrup, Hot).Brix
            + SapHydrometer.TrueSugarContent(Sap, Cool, HydrometerCalibration.At68Fahrenheit).Brix
            + Refractometer.Corrected(Syrup, Cool).Brix
            + Thermometer.Offset(Hot, Air).Celsius,
        ["batch"] = () => DrawPoint.For(Syrup, Air).Temperature.Celsius
            + SyrupYield.ByMassBalance(Tank, Syrup).Liters
            + Blend.Of(Tank, Tank).Volume.Liters
            + HotPack.ContractionFraction(Syrup, Hot, Cool)
            + BoilingTime.For(Tank, Syrup, VolumeRate.FromLitersPerHour(30)).TotalHours,
    };

    public static TheoryData<string> Names => [.. Calls.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_call_allocates(string name)
    {
        Func<double> call = Calls[name];
        double sum = call();
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 1000; i++)
        {
            sum += call();
        }

        long allocated = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(double.IsFinite(sum));
        Assert.Equal(0, allocated);
    }
}
