using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>What a record's session ran on, and what a person must know where the record does not tell all of it.</summary>
/// <param name="Setting">What it ran on.</param>
/// <param name="Warning">What of it is damaged or new, and what was taken in its place; null where the record tells all.</param>
internal sealed record RecordSetting(Setting Setting, string? Warning)
{
    /// <summary>The same of a file that was named; the warning goes to the errors.</summary>
    public static Setting Told(string path, string? flowFile, TextWriter errors)
    {
        var (setting, warning) = Of(path, GivenFile.Head(path), flowFile, null);
        if (warning is not null)
        {
            errors.WriteLine(warning);
        }

        return setting;
    }

    /// <summary>What the first lines of a record tell.</summary>
    /// <param name="path">The record's name.</param>
    /// <param name="head">Its first lines.</param>
    /// <param name="flowFile">The flow that it was made with; null for the built-in one.</param>
    /// <param name="instead">What to take where the record does not tell; null for what is built in.</param>
    /// <exception cref="UnusableException">It is no record, or was made with another flow.</exception>
    public static RecordSetting Of(string path, IReadOnlyList<string> head, string? flowFile, GuidedArguments? instead)
    {
        if (HeaderParts.Of(head) is not { } parts)
        {
            throw new UnusableException($"{path}:1:1: no session line was found, expected the record of a boil. Name another file, or a new one.");
        }

        var taken = new List<string>();
        var flow = FlowOf(path, parts, flowFile, taken);
        var rig = RigOf(path, parts, instead, taken);
        if (parts.Guidance is not ("beginner" or "practised"))
        {
            taken.Add(instead is null ? "guidance for a beginner" : $"the guidance '{instead.Guidance}'");
        }

        var guidance = RigOptions.Meant(parts.Guidance is "beginner" or "practised" ? parts.Guidance : instead?.Guidance ?? "beginner");
        var setting = new Setting(flow, rig, guidance, parts.Program ?? Product.Name, parts.Practice, LearnedOf(path, parts, taken), parts.Imported);
        return new(setting, Warn(path, parts, taken));
    }

    private static string? Warn(string path, HeaderParts parts, List<string> taken)
    {
        if (parts.IsWhole && taken.Count == 0)
        {
            return null;
        }

        var place = parts.LineNumber is { } number ? $"{path}:{number}: the session line is {(parts.IsWhole ? "not fully understood" : "damaged")}" : $"{path}: the session line is missing";
        return taken.Count == 0
            ? $"{place}; what the session ran on can still be read from it."
            : $"{place}. Taken in its place: {string.Join("; ", taken)}. Check them, or name the right ones by --rig, --flow and --guidance.";
    }

    /// <summary>A hash that is none, or differs from the flow's by one sign, is damaged; any other is another flow's.</summary>
    private static Flow FlowOf(string path, HeaderParts parts, string? flowFile, List<string> taken)
    {
        var flow = Library.Flow(flowFile);
        if (flow.Hash == parts.FlowHash)
        {
            return flow;
        }

        var isHash = parts.FlowHash is { } hash && hash.Length == flow.Hash.Length && hash.All(char.IsAsciiHexDigitLower);
        if (isHash && parts.FlowHash!.Zip(flow.Hash).Count(pair => pair.First != pair.Second) > 1)
        {
            throw new UnusableException(
                $"{path}: was made with the flow '{parts.Flow}' ({parts.FlowHash}); this one is '{flow.Name}' ({flow.Hash}). Name the flow it was made with: --flow FILE.");
        }

        taken.Add($"the flow '{flow.Name}'");
        return flow;
    }

    private static Rig RigOf(string path, HeaderParts parts, GuidedArguments? instead, List<string> taken)
    {
        if (parts.RigText is { } text)
        {
            try
            {
                return RigFile.Read($"{path} (rig)", text);
            }
            catch (FaultyFileException)
            {
                // Perhaps only a key that this version does not know.
            }

            try
            {
                var known = RigFile.Read($"{path} (rig)", text, passesOver: true);
                taken.Add($"what is known of its rig '{known.Name}', without the keys that are not");
                return known;
            }
            catch (FaultyFileException)
            {
                // It is damaged: told below.
            }
        }

        var rig = instead is null
            ? RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig))
            : Library.Rig(instead.Rig, Home.Of(instead.Home));
        taken.Add($"the rig '{rig.Name}'");
        return rig;
    }

    private static LearnedRig? LearnedOf(string path, HeaderParts parts, List<string> taken)
    {
        try
        {
            return parts.LearnedText is { } text ? LearnedFile.Read($"{path} (learned-file)", text) : null;
        }
        catch (FaultyFileException)
        {
            taken.Add("nothing learned of the rig");
            return null;
        }
    }
}
