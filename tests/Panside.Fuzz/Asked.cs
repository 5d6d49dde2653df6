using System.Globalization;
using Panside.Fuzz.Targets;

namespace Panside.Fuzz;

/// <summary>What a run of the fuzzer was asked for.</summary>
/// <param name="Targets">What is tried.</param>
/// <param name="Time">How long each is tried.</param>
/// <param name="Seed">The same seed makes the same cases.</param>
/// <param name="Runs">So many cases of each at the most.</param>
/// <param name="Only">One case alone, to see it again; null for all.</param>
/// <param name="Findings">Where inputs that found something are kept.</param>
internal sealed record Asked(IReadOnlyList<Target> Targets, TimeSpan Time, int Seed, long Runs, long? Only, string Findings)
{
    /// <summary>Reads the arguments; null where they are none.</summary>
    public static Asked? Read(string[] args)
    {
        var told = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["--seconds"] = "60",
            ["--seed"] = "1",
            ["--runs"] = long.MaxValue.ToString(CultureInfo.InvariantCulture),
            ["--case"] = "",
            ["--target"] = "",
            ["--findings"] = "findings",
        };
        for (var at = 0; at < args.Length; at += 2)
        {
            if (at + 1 == args.Length || !told.ContainsKey(args[at]))
            {
                return null;
            }

            told[args[at]] = args[at + 1];
        }

        var targets = Target.All.Where(one => told["--target"].Length == 0 || one.Name == told["--target"]).ToList();
        return targets.Count > 0 && double.TryParse(told["--seconds"], CultureInfo.InvariantCulture, out var seconds) && seconds is > 0 and < 1e6
            && int.TryParse(told["--seed"], CultureInfo.InvariantCulture, out var seed) && long.TryParse(told["--runs"], CultureInfo.InvariantCulture, out var runs)
            && (long.TryParse(told["--case"], CultureInfo.InvariantCulture, out var only) || told["--case"].Length == 0)
                ? new(targets, TimeSpan.FromSeconds(seconds / targets.Count), seed, runs, told["--case"].Length > 0 ? only : null, told["--findings"])
                : null;
    }
}
