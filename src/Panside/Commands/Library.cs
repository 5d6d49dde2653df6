using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Rigs;

namespace Panside.Commands;

/// <summary>The flows and rigs that are built in, and those that are files.</summary>
internal static class Library
{
    /// <summary>The name of the built-in flow.</summary>
    public const string BuiltInFlow = "divided-pan.yaml";

    /// <summary>The name of the built-in rig.</summary>
    public const string BuiltInRig = "two-by-four-forced.yaml";

    /// <summary>The flow of a file, or the built-in one.</summary>
    public static Flow Flow(string? file) => FlowFile.Read(
        file ?? BuiltInFlow, file is null ? BuiltIn("flows/" + BuiltInFlow) : ReadFile(file, "flow"), Vocabularies.Flow);

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
            return File.ReadAllText(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UnusableException($"{path}: the {what} file cannot be read ({fault.Message.TrimEnd('.')}). Check the name, or leave the option out for the built-in one.");
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
