using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>Where a rig file is made: it comes whole or not at all, and what was there before stays beside it.</summary>
internal sealed class RigPlace(string path)
{
    /// <summary>The file.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>The answers of a conversation that was stopped, a line each.</summary>
    public string AnswersPath => System.IO.Path.ChangeExtension(Path, ".answers");

    /// <summary>The name of the rig whose file is there already; null where none is.</summary>
    public string? There
    {
        get
        {
            if (!File.Exists(Path))
            {
                return null;
            }

            try
            {
                return RigFile.Read(Path, GivenFile.Text(Path)).Name;
            }
            catch (Exception fault) when (fault is FaultyFileException or UnusableException)
            {
                return "a file with faults";
            }
        }
    }

    /// <summary>The answers that were kept; empty where there are none.</summary>
    public IReadOnlyList<string> Answers() => File.Exists(AnswersPath) ? File.ReadAllLines(AnswersPath) : [];

    /// <summary>Keeps answers for another time.</summary>
    public void Keep(IReadOnlyList<string> answers) => PrivateFile.Replace(AnswersPath, string.Concat(answers.Select(answer => answer + "\n")));

    /// <summary>Writes the file; the answers are no longer wanted.</summary>
    /// <returns>Where the one that was there before is now; null where there was none.</returns>
    public string? Write(string text)
    {
        string? before = null;
        if (File.Exists(Path))
        {
            before = FreeName();
            File.Copy(Path, before);
        }

        PrivateFile.Replace(Path, text);
        File.Delete(AnswersPath);
        return before;
    }

    private string FreeName()
    {
        var number = 1;
        string name;
        do
        {
            name = System.IO.Path.ChangeExtension(Path, $".before-{number++}.yaml");
        }
        while (File.Exists(name));
        return name;
    }
}
