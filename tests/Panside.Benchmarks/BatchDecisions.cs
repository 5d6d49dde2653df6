using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>What one decision on a batch costs.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class BatchDecisions
{
    [Benchmark]
    public DrawPoint DrawPoint_For() => DrawPoint.For(Known.Syrup, Known.Air);

    [Benchmark]
    public TargetCheck TargetCheck_OfReading() => TargetCheck.OfReading(Known.Shown, Known.Hot, Known.Syrup);

    [Benchmark]
    public Portion Blend_ThinnerToAdd() => Blend.ThinnerToAdd(Known.HeavyBatch, Known.Syrup, Known.Sap, Known.Cool);

    [Benchmark]
    public Portion Blend_Of() => Blend.Of(Known.HeavyBatch, Known.Tank);

    [Benchmark]
    public Mass Finishing_WaterToBoilOff() => Finishing.WaterToBoilOff(Known.Tank, Known.Syrup);

    [Benchmark]
    public Volume Yield_ByMassBalance() => SyrupYield.ByMassBalance(Known.Tank, Known.Syrup);

    [Benchmark]
    public Volume Yield_ByRuleOf86() => SyrupYield.ByRuleOf86(Known.Tank.Volume, Known.Sap);

    [Benchmark]
    public Volume Yield_ByRevisedRule() => SyrupYield.ByRevisedRule(Known.Tank.Volume, Known.Sap, Known.Syrup);

    [Benchmark]
    public ContainerFill HotPack_Fill() => HotPack.Fill(Known.HeavyBatch, Known.Quart, Known.Cool);

    [Benchmark]
    public ColorClass Color_FromTransmittance() => ColorClasses.FromTransmittance(Known.Transmittance);

    [Benchmark]
    public LegalDensity Law_In() => LegalDensity.In(Known.Place);

    [Benchmark]
    public Energy Wood_UsefulHeat() => WoodForSyrup.UsefulHeat(Known.Tank, Known.Syrup, Known.Boiling);

    [Benchmark]
    public Mass Wood_MassFor() => WoodForSyrup.MassFor(Known.Useful, Known.Species, Known.Moisture, Known.Efficiency);

    [Benchmark]
    public TimeSpan Time_For() => BoilingTime.For(Known.Tank, Known.Syrup, Known.Rate);

    [Benchmark]
    public VolumeRate Time_TypicalEvaporation() => BoilingTime.TypicalEvaporation(Known.Pan, Known.Forced);
}
