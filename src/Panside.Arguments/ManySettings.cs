using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Practice.Scenarios;

namespace Panside.Arguments;

/// <summary>What many practised boils run on: the rig named, or the two built-in ones in turn; both guidances in turn.</summary>
/// <param name="Program">The program that practises.</param>
/// <param name="RigFile">The rig's file; null for the built-in ones.</param>
/// <param name="FlowFile">The flow's file; null for the built-in one.</param>
/// <param name="HomeFolder">The home folder; null for the usual one.</param>
public sealed record ManySettings(string Program, string? RigFile = null, string? FlowFile = null, string? HomeFolder = null)
{
    /// <summary>What boil number so many runs on.</summary>
    /// <param name="boil">Its number, from 0 on.</param>
    /// <param name="wanted">The rig that it wants where none is named; null where any will do.</param>
    /// <param name="learned">What was learned of the rig.</param>
    public Setting Of(int boil, Rig? wanted = null, LearnedRig? learned = null)
    {
        var rig = RigFile is null && wanted is not null ? wanted : RigFile is null
            ? Guide.Rigs.RigFile.Read("built-in", Library.BuiltIn(boil % 2 == 0 ? "rigs/two-by-four-natural.yaml" : "rigs/two-by-four-forced.yaml"))
            : Library.Rig(RigFile, Home.Of(HomeFolder));
        return new(Library.FlowFor(rig, FlowFile), rig, boil / 2 % 2 == 0 ? Guidance.Beginner : Guidance.Practised, Program, practice: true, learned);
    }

    /// <summary>The same, on the rig that a scenario wants.</summary>
    public Setting For(int boil, Scenario scenario) => Of(boil, ScenarioLibrary.RigOf(scenario));
}
