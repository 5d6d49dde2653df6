using Panside.Guide.Rigs;
using Panside.Practice.Scenarios;

namespace Panside.Arguments;

/// <summary>The scenarios that are built in, and those that are files.</summary>
public static class ScenarioLibrary
{
    private const string Folder = "scenarios/";
    private const string RigFolder = "rigs/";
    private const string Ending = ".yaml";

    /// <summary>The names of the built-in rigs, one of which a scenario may want.</summary>
    public static IReadOnlyList<string> Rigs { get; } = Names(RigFolder);

    /// <summary>The name of the short one before a season.</summary>
    public const string Refresher = "refresher";

    private static readonly Lazy<IReadOnlyList<Scenario>> BuiltIn = new(() =>
    [
        .. Scenario.All,
        .. Names(Folder).Select(name => ScenarioFile.Read(name + Ending, Library.BuiltIn(Folder + name + Ending), Rigs)),
    ]);

    /// <summary>The built-in ones, the plain ones first.</summary>
    public static IReadOnlyList<Scenario> All => BuiltIn.Value;

    /// <summary>Those that need no person: nobody is asked to try anything in them.</summary>
    public static IReadOnlyList<Scenario> WithoutPerson => [.. All.Where(one => one.Checks.Count == 0)];

    /// <summary>The built-in one of a name, or that of a file.</summary>
    /// <exception cref="UnusableException">There is neither.</exception>
    public static Scenario Of(string nameOrFile) =>
        All.FirstOrDefault(one => one.Name == nameOrFile) ?? (File.Exists(nameOrFile)
            ? ScenarioFile.Read(nameOrFile, Library.ReadFile(nameOrFile, "scenario"), Rigs)
            : throw new UnusableException($"--scenario {nameOrFile}: neither a built-in scenario nor a file. 'panside practice --list' shows the built-in ones."));

    /// <summary>The rig that a scenario wants; null where any will do.</summary>
    public static Rig? RigOf(Scenario scenario) =>
        scenario.RigName is { } name ? RigFile.Read(name + Ending, Library.BuiltIn(RigFolder + name + Ending)) : null;

    /// <summary>Every scenario with its summary, as lines.</summary>
    public static IEnumerable<string> List()
    {
        var width = All.Max(one => one.Name.Length) + 2;
        return All.Select(one => one.Name.PadRight(width) + one.Summary + (one.IsDangerous ? " (burns pans by habit)" : ""));
    }

    private static IReadOnlyList<string> Names(string folder) =>
    [
        .. typeof(ScenarioLibrary).Assembly.GetManifestResourceNames()
            .Where(name => name.StartsWith(folder, StringComparison.Ordinal) && name.EndsWith(Ending, StringComparison.Ordinal))
            .Select(name => name[folder.Length..^Ending.Length]).Order(StringComparer.Ordinal),
    ];
}
