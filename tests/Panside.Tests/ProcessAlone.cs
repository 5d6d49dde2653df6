namespace Panside.Tests;

/// <summary>Tests that look at what the whole process shares run alone: its memory, its environment, its time.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class ProcessAlone
{
    public const string Name = "process";
}
