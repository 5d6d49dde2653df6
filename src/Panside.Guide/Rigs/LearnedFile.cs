using System.Globalization;
using System.Text;
using Panside.Guide.Yaml;
using Panside.Reckoning.Ensemble;

namespace Panside.Guide.Rigs;

/// <summary>What was learned of a rig, as a file that a person can read, change and delete.</summary>
public static class LearnedFile
{
    /// <summary>Digits behind the point: as fine as anything here is known, and the same on every machine.</summary>
    private const string Form = "0.0000";

    /// <summary>Reads the text of such a file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static LearnedRig Read(string file, string text)
    {
        var root = YamlMap.Read(file, text, "what was learned");
        var rig = root.Text("learned", required: true);
        var mark = root.Text("rig-mark", required: true);
        var boils = root.Whole("boils", 1, 100_000, required: true);
        var date = root.Text("date", required: true);
        root.Text("says");
        var traits = root.Map("traits", required: true);
        var all = RigTraits.Names.Select(name =>
        {
            var trait = traits?.Map(name, required: true);
            var found = new RigTrait(name, trait?.Number("mean", -6, 6, required: true) ?? 0, trait?.Number("spread", 0.0001, 3, required: true) ?? 1);
            trait?.Finish();
            return found;
        }).ToList();
        traits?.Finish();
        root.Finish();
        root.Demand();
        return new(rig!, mark!, boils!.Value, date!, new(all), text);
    }

    /// <summary>Puts what a boil taught together, with the file's text.</summary>
    /// <param name="rig">The rig that boiled.</param>
    /// <param name="traits">What is known of it now.</param>
    /// <param name="before">What was known before the boil, of the same rig; null where nothing was.</param>
    /// <param name="date">The day of the boil.</param>
    public static LearnedRig Write(Rig rig, RigTraits traits, LearnedRig? before, DateTimeOffset date)
    {
        var learned = new LearnedRig(rig.Name, RigMark.Of(rig), (before?.Boils ?? 0) + 1, date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture), traits, "");
        var text = new StringBuilder("# What past boils have taught of this rig, beside what its file suggests. Delete this file, or say --forget, to begin anew.\n");
        text.Append("learned: ").Append(Quoted(rig.Name)).Append('\n')
            .Append("rig-mark: ").Append(Quoted(learned.Mark)).Append('\n')
            .Append(CultureInfo.InvariantCulture, $"boils: {learned.Boils}\n")
            .Append("date: ").Append(Quoted(learned.Date)).Append('\n')
            .Append("says: ").Append(Quoted(learned.Says(before))).Append('\n')
            .Append("# Differences of natural logarithms (0.10 is about 10 % more), coal-share a plain difference; spread is a standard deviation.\ntraits:\n");
        foreach (var (name, mean, deviation) in traits.All)
        {
            text.Append("  ").Append(name).Append(": { mean: ").Append(mean.ToString(Form, CultureInfo.InvariantCulture))
                .Append(", spread: ").Append(double.Max(deviation, 0.0001).ToString(Form, CultureInfo.InvariantCulture)).Append(" }\n");
        }

        // What the next boil begins with is what stands in the file, to the last digit.
        return Read("learned", text.ToString());
    }

    private static string Quoted(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";
}
