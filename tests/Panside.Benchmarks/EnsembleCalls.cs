using BenchmarkDotNet.Attributes;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Benchmarks;

/// <summary>What a session asks of its ensemble on one line.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class EnsembleCalls
{
    private readonly RigEnsemble _rig = KnownRig.Boiling(RigEnsemble.UsualCount);

    /// <summary>A minute on.</summary>
    [Benchmark]
    public RigEnsemble After_Minute() => _rig.After(1);

    /// <summary>Four hours with no more wood, quantiles included.</summary>
    [Benchmark]
    public Outlook WithoutWood() => Outlook.Of(_rig, fed: true);

    /// <summary>A minute on, and up to six hours of firing until the draw-off is syrup: an ensemble that was asked before remembers.</summary>
    [Benchmark]
    public RankedValues After_MinutesTo_Syrup() => _rig.After(1).Forecasts.MinutesTo(Known.Syrup);

    /// <summary>A minute on, and the rate over a charge to come.</summary>
    [Benchmark]
    public RankedValues After_Rates() => _rig.After(1).Forecasts.RatesLitersPerHour(firing: true);

    /// <summary>All that a line asks: a minute on, three shutdowns, a draw.</summary>
    [Benchmark]
    public (double, double, RankedValues) Line()
    {
        var rig = _rig.After(1);
        var charged = rig.Charged(rig.Rig.UsualCharge);
        return (
            rig.Forecasts.WithoutWood.ReserveLiters(0.95) + rig.Flooded().Forecasts.WithoutWood.ReserveLiters(0.95),
            charged.Forecasts.WithoutWood.StillMinutes(0.5), rig.Forecasts.MinutesTo(Known.Syrup));
    }
}
