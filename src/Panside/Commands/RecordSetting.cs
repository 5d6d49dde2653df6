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
    /// <summary>What was made with another flow and is looked at with this one, in a sentence; null where it is the same flow.</summary>
    public string? OtherFlow { get; private init; }

    /// <summary>The same of a file that was named; the warning goes to the errors.</summary>
    public static Setting Told(string path, string? flowFile, TextWriter errors) => Told(path, flowFile, errors, takesOther: false).Setting;

    /// <summary>The same, with another flow where that is what is wanted.</summary>
    public static RecordSetting Told(string path, string? flowFile, TextWriter errors, bool takesOther)
    {
        var told = Of(path, GivenFile.Head(path), flowFile, null, takesOther);
        if (told.Warning is { } warning)
        {
            errors.WriteLine(warning);
        }

        return told;
    }

    /// <summary>What the first lines of a record tell.</summary>
    /// <param name="path">The record's name.</param>
    /// <param name="head">Its first lines.</param>
    /// <param name="flowFile">The flow that it was made with; null for the built-in one.</param>
    /// <param name="instead">What to take where the record does not tell; null for what is built in.</param>
    /// <param name="takesOther">Whether a flow that it was not made with is taken all the same, to see whether it says the same.</param>
    /// <exception cref="UnusableException">It is no record, or was made with another flow.</exception>
    public static RecordSetting Of(string path, IReadOnlyList<string> head, string? flowFile, GuidedArguments? instead, bool takesOther = false)
    {
        if (HeaderParts.Of(head) is not { } parts)
        {
            throw new UnusableException($"{path}:1:1: no session line was found, expected the record of a boil. Name another file, or a new one.");
        }

        var taken = new List<string>();
        var flow = FlowOf(parts, flowFile, taken, out var isOther);
        var other = isOther ? $"{path}: was made with the flow '{parts.Flow}' ({parts.FlowHash}); this one is '{flow.Name}' ({flow.Hash})." : null;
        if (other is not null && !takesOther)
        {
            throw new UnusableException($"{other} Name the flow it was made with: --flow FILE. 'panside replay --verify {path} --flow FILE' tells where another one first differs.");
        }

        var rig = RigOf(path, parts, instead, taken);
        if (parts.Guidance is not ("beginner" or "practised"))
        {
            taken.Add(instead is null ? "guidance for a beginner" : $"the guidance '{instead.Guidance}'");
        }

        var guidance = RigOptions.Meant(parts.Guidance is "beginner" or "practised" ? parts.Guidance : instead?.Guidance ?? "beginner");
        var setting = new Setting(flow, rig, guidance, parts.Program ?? Product.Name, parts.Practice, LearnedOf(path, parts, taken), parts.Imported);
        if (parts.LineNumber is not null)
        {
            // What the record says of its flow stays as it stands there, so that its session line agrees with itself.
            setting = setting.Recorded(header => isOther
                ? header with { Flow = parts.Flow ?? flow.Name, FlowHash = parts.FlowHash!, FlowVersion = parts.FlowVersion }
                : header with { FlowVersion = parts.FlowVersion });
        }

        return new(setting, Warn(path, parts, taken)) { OtherFlow = other };
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
    private static Flow FlowOf(HeaderParts parts, string? flowFile, List<string> taken, out bool isOther)
    {
        var flow = Library.FlowOfRecord(flowFile, parts.FlowHash);
        isOther = false;
        if (flow.Hash == parts.FlowHash)
        {
            return flow;
        }

        var isHash = parts.FlowHash is { } hash && hash.Length == flow.Hash.Length && hash.All(char.IsAsciiHexDigitLower);
        if (isHash && parts.FlowHash!.Zip(flow.Hash).Count(pair => pair.First != pair.Second) > 1)
        {
            isOther = true;
            return flow;
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
