using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Tests.Ensemble;

namespace Panside.Benchmarks;

/// <summary>Ten thousand members three hours on in steps of ten seconds, with cells, and quantiles: by vectors, and one by one.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class EnsembleForecasts
{
    private static readonly Run Run = new()
    {
        Steps = 1080,
        StepMinutes = 1.0 / 6,
        WoodMegajoules = 3.8,
        HeldLiters = 28,
        TankEnds = true,
    };

    private readonly RigEnsemble _rig = KnownRig.Boiling(10_000);

    /// <summary>By vectors.</summary>
    [Benchmark]
    public double ThreeHours()
    {
        var members = _rig.Members.Copy();
        var result = Stepping.Go(members, _rig.Constants, Run);
        return Quantiles(members[Field.Evaporated]) + Quantiles(members[Field.Tank]) + Quantiles(result.LeastLiters);
    }

    /// <summary>Each member in plain numbers.</summary>
    [Benchmark(Baseline = true)]
    public double ThreeHours_OneByOne()
    {
        var (evaporated, tank, least) = (new double[_rig.Count], new double[_rig.Count], new double[_rig.Count]);
        for (var member = 0; member < _rig.Count; member++)
        {
            var plain = new ScalarMember(_rig.Constants, Run).Go(_rig.Members, member);
            (evaporated[member], tank[member], least[member]) = (plain.Evaporated, plain.Tank, plain.Least);
        }

        return Quantiles(evaporated) + Quantiles(tank) + Quantiles(least);
    }

    private static double Quantiles(double[] values)
    {
        var sorted = Sorted.Of(values);
        return Sorted.At(sorted, 0.05) + Sorted.At(sorted, 0.5) + Sorted.At(sorted, 0.95);
    }
}
