using Panside.Reckoning.Batch;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>The values that the benchmarks reckon with: a boil of an ordinary night.</summary>
/// <remarks>Not readonly: the compiler would work the answers out beforehand, and the table would show nothing.</remarks>
internal static class Known
{
    public static Pressure Air = Pressure.FromKilopascals(98);
    public static Length Altitude = Length.FromMeters(300);
    public static Temperature Boiling = Temperature.FromCelsius(99);
    public static Temperature Hot = Temperature.FromCelsius(98);
    public static Temperature Cool = Temperature.FromCelsius(20);
    public static SugarContent Syrup = SugarContent.FromBrix(66.9);
    public static SugarContent Heavy = SugarContent.FromBrix(68.5);
    public static SugarContent Sap = SugarContent.FromBrix(2);
    public static Portion Tank = Portion.OfVolume(Volume.FromLiters(200), Sap, Temperature.FromCelsius(4));
    public static Portion HeavyBatch = Portion.OfVolume(Volume.FromLiters(8), Heavy, Hot);
    public static SugarContent Shown = SugarContent.FromBrix(59);
    public static Density Dense = Density.FromKilogramsPerCubicMeter(1290);
    public static TemperatureRise Rise = TemperatureRise.FromCelsius(4.1);
    public static Pressure Reported = Pressure.FromHectopascals(1016);
    public static Mass Wood = Mass.FromKilograms(3);
    public static Temperature Glowing = Temperature.FromCelsius(700);
    public static Volume Quart = Volume.FromUsQuarts(1);
    public static Energy Useful = Energy.FromMegajoules(435);
    public static VolumeRate Rate = VolumeRate.FromLitersPerHour(30);
    public static Area Pan = Area.FromSquareFeet(8);
    public static double Baume = 36;
    public static double Transmittance = 62;
    public static double Moisture = 0.2;
    public static double Efficiency = 0.28;
    public static bool Forced = true;
    public static FirewoodSpecies Species = FirewoodSpecies.SugarMaple;
    public static Jurisdiction Place = Jurisdiction.Vermont;
    public static HydrometerCalibration SapGlass = HydrometerCalibration.At38Fahrenheit;

    /// <summary>A file that is built in.</summary>
    public static string Text(string name)
    {
        using var stream = typeof(Known).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
