using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>What correcting one reading costs.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class InstrumentCalls
{
    [Benchmark]
    public SugarContent SyrupHydrometer_True() => SyrupHydrometer.TrueSugarContent(Known.Shown, Known.Hot);

    [Benchmark]
    public SugarContent SyrupHydrometer_OnTarget() => SyrupHydrometer.ReadingOnTarget(Known.Syrup, Known.Hot);

    [Benchmark]
    public SugarContent SapHydrometer_True() =>
        SapHydrometer.TrueSugarContent(Known.Sap, Known.Cool, Known.SapGlass);

    [Benchmark]
    public SugarContent Refractometer_Corrected() => Refractometer.Corrected(Known.Syrup, Known.Cool);

    [Benchmark]
    public TemperatureRise Thermometer_Offset() => Thermometer.Offset(Known.Boiling, Known.Air);
}
