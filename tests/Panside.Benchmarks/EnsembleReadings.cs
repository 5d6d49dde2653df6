using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>What taking in one reading of the tank costs.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class EnsembleReadings
{
    private RigEnsemble _rig = KnownRig.Boiling(8);

    /// <summary>How many members.</summary>
    [Params(1_000, 10_000)]
    public int Members { get; set; }

    /// <summary>A rig that has burned for two hours.</summary>
    [GlobalSetup]
    public void Begin() => _rig = KnownRig.Boiling(Members);

    /// <summary>A reading of the tank.</summary>
    [Benchmark]
    public RigEnsemble TankRead() => _rig.TankRead(KnownRig.Tank);
}
