using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Arguments;

/// <summary>The flows and rigs that are built in, and those that are files.</summary>
public static class Library
{
    /// <summary>The name of the built-in flow.</summary>
    public const string BuiltInFlow = "divided-pan.yaml";

    /// <summary>The name of the built-in rig.</summary>
    public const string BuiltInRig = "two-by-four-forced.yaml";

    /// <summary>The flow that is built in stays the same, and reading it takes longer than the rest of a short command.</summary>
    private static readonly Lazy<Flow> FlowBuiltIn = new(() => FlowFile.ReadUnwalked(BuiltInFlow, BuiltIn("flows/" + BuiltInFlow), Vocabularies.Flow));

    /// <summary>The flow of a file, or the built-in one.</summary>
    public static Flow Flow(string? file) => file is null ? FlowBuiltIn.Value : FlowFile.Read(file, ReadFile(file, "flow"), Vocabularies.Flow);

    /// <summary>
    /// The flow of a file, or the built-in one, that a record was made with: where it is the very same, it is good for that record even if it
    /// would guide nobody any more.
    /// </summary>
    /// <param name="file">The file; null for the built-in one.</param>
    /// <param name="hash">The hash in the record; null where it has none.</param>
    public static Flow FlowOfRecord(string? file, string? hash)
    {
        try
        {
            return Flow(file);
        }
        catch (FaultyFileException) when (file is not null && Panside.Guide.Flows.Flow.HashOf(ReadFile(file, "flow")) == hash)
        {
            return FlowFile.ReadUnwalked(file, ReadFile(file, "flow"), Vocabularies.Flow);
        }
    }

    /// <summary>The same, which is to guide on a rig: what leaving can want on it must be asked for. Of the built-in one the tests know it.</summary>
    public static Flow FlowFor(Rig rig, string? file)
    {
        var flow = Flow(file);
        if (file is not null)
        {
            FlowCheck.Clears(file, flow, rig);
        }

        return flow;
    }

    /// <summary>The rig of a file, or the one in the home folder, or the built-in one.</summary>
    public static Rig Rig(string? file, Home home)
    {
        var path = file ?? (File.Exists(home.RigFile) ? home.RigFile : null);
        return RigFile.Read(path ?? BuiltInRig, path is null ? BuiltIn("rigs/" + BuiltInRig) : ReadFile(path, "rig"));
    }

    /// <summary>A file's text, or a sentence that says what to do.</summary>
    public static string ReadFile(string path, string what)
    {
        try
        {
            return GivenFile.Text(path);
        }
        catch (UnusableException fault)
        {
            throw new UnusableException($"{path}: the {what} file cannot be read ({fault.Message[(path.Length + 2)..].TrimEnd('.')}). Check the name, or leave the option out for the built-in one.");
        }
    }

    /// <summary>The text of a built-in file.</summary>
    public static string BuiltIn(string name)
    {
        using var stream = typeof(Library).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException($"{name} is not built in.");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
