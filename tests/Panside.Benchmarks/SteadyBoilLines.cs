using BenchmarkDotNet.Attributes;

namespace Panside.Benchmarks;

/// <summary>What hearing one line costs on a steady boil: an hour of it, each minute a line.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class SteadyBoilLines
{
    private SteadyBoil _boil = new();

    /// <summary>A fresh boil for each round, since a session remembers.</summary>
    [IterationSetup]
    public void Begin() => _boil = new();

    /// <summary>One line heard and answered.</summary>
    [Benchmark(OperationsPerInvoke = SteadyBoil.Lines)]
    public int Hear() => _boil.AnHour();
}
