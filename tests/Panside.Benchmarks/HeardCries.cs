using BenchmarkDotNet.Attributes;
using Panside.Guide.Hearing.Cries;

namespace Panside.Benchmarks;

/// <summary>What it costs to weigh one sentence for dangers, and to make the ear that does.</summary>
[MemoryDiagnoser(displayGenColumns: false)]
public class HeardCries
{
    private static readonly DangerWords Words = DangerWords.Read("dangers.yaml", Known.Text("dangers.yaml"));
    private static readonly CryEar Ear = new(Words, "en", []);

    [Benchmark]
    public Cry? Hear_Cry() => Ear.Hear("help the sugarhouse roof is on fire above the stack");

    [Benchmark]
    public Cry? Hear_Everyday() => Ear.Hear("the foam came up an inch and went back down after a dab of butter");

    [Benchmark]
    public Cry? Hear_Slips() => Ear.Hear("teh chimny is glwoing redd and waht do i do its roarng");

    [Benchmark]
    public Cry? Hear_LongestLine() => Ear.Hear(
        "Good evening, I hope you do not mind my writing at such length, but I stepped out for more wood and when I came back in the whole of the front "
        + "pan had risen up and was running over the edge onto the floor, and although I put in the cream as you told me it has made no difference at all.");

    [Benchmark]
    public CryEar Make_Ear() => new(Words, "en", []);

    [Benchmark]
    public DangerWords Read_Words() => DangerWords.Read("dangers.yaml", Known.Text("dangers.yaml"));
}
