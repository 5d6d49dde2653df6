namespace Panside.Workshop.Trials;

/// <summary>One thing that must hold of one practised boil.</summary>
/// <param name="Name">What is tried, and on which rig.</param>
/// <param name="Fault">Tries it: what was not as it must be; null where all was.</param>
internal sealed record Trial(string Name, Func<string?> Fault)
{
    /// <summary>Rules, each with what is said where it is broken: the first that is.</summary>
    public static string? FirstBroken(params IEnumerable<(bool Holds, string Says)> rules) =>
        rules.Where(rule => !rule.Holds).Select(rule => rule.Says).FirstOrDefault();
}
