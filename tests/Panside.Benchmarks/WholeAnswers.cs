using BenchmarkDotNet.Attributes;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Rigs;

namespace Panside.Benchmarks;

/// <summary>What an operator waits for: the flow and the rig at the start.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class WholeAnswers
{
    private readonly string _flow = Known.Text(SteadyBoil.FlowName);

    /// <summary>The built-in flow read and checked.</summary>
    [Benchmark]
    public Flow ReadFlow() => FlowFile.Read(SteadyBoil.FlowName, _flow, Vocabularies.Flow);

    /// <summary>The rig's file.</summary>
    [Benchmark]
    public Rig ReadRig() => RigFile.Read(SteadyBoil.RigName, Known.Text(SteadyBoil.RigName));
}
