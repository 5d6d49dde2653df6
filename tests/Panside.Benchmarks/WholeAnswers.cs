using BenchmarkDotNet.Attributes;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Rigs;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Benchmarks;

/// <summary>What an operator waits for: a forecast, the flow at the start.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class WholeAnswers
{
    private readonly string _flow = Known.Text(SteadyBoil.FlowName);
    private readonly RigDescription _rig = KnownRig.Pan;
    private readonly RigState _state;

    /// <summary>A rig that has burned for two hours.</summary>
    public WholeAnswers()
    {
        var state = RigModel.Cold(_rig, Known.Boiling);
        for (var charge = 0; charge < 14; charge++)
        {
            state = RigModel.Step(_rig, RigModel.Charged(_rig, state, _rig.UsualCharge), 9);
        }

        _state = state;
    }

    /// <summary>Four hours ahead at four strengths of the heat.</summary>
    [Benchmark]
    public Shutdown Forecast() => Shutdown.Of(_rig, _state, Spread.Prior);

    /// <summary>The built-in flow read and checked.</summary>
    [Benchmark]
    public Flow ReadFlow() => FlowFile.Read(SteadyBoil.FlowName, _flow, Vocabularies.Flow);

    /// <summary>The rig's file.</summary>
    [Benchmark]
    public Rig ReadRig() => RigFile.Read(SteadyBoil.RigName, Known.Text(SteadyBoil.RigName));
}
