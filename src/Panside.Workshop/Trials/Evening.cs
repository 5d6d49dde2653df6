using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Practice.Scenarios;

namespace Panside.Workshop.Trials;

/// <summary>What the trials boil on: an evening of an invented day, and the built-in rigs.</summary>
internal static class Evening
{
    /// <summary>The built-in rig with a blower.</summary>
    public const string Forced = "two-by-four-forced.yaml";

    /// <summary>The built-in rig without.</summary>
    public const string Natural = "two-by-four-natural.yaml";

    /// <summary>When it begins.</summary>
    public static DateTimeOffset Start { get; } = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>The setting on a built-in rig.</summary>
    public static Setting On(string rig, Guidance guidance = Guidance.Beginner) => On(RigFile.Read(rig, Library.BuiltIn("rigs/" + rig)), guidance);

    /// <summary>A beginner's setting on the rig that a scenario wants, else with the blower.</summary>
    public static Setting For(Scenario scenario) => ScenarioLibrary.RigOf(scenario) is { } wanted ? On(wanted, Guidance.Beginner) : On(Forced);

    private static Setting On(Rig rig, Guidance guidance) => new(Library.Flow(null), rig, guidance, Commands.WorkshopLine.Name, practice: true);
}
