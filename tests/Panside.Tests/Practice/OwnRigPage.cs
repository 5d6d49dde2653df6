using System.Text.RegularExpressions;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

/// <summary>
/// docs/rig-of-your-own.md followed word for word in a folder of its own: each piece is saved or put into its file where its context stands, each
/// command is run, and what it shows is what came.
/// </summary>
internal sealed partial class OwnRigPage : IDisposable
{
    private const string There = "# there";

    private readonly Scratch _scratch = new();

    /// <summary>What a command showed where the page shows nothing of it, by the command.</summary>
    public Dictionary<string, Captured> Ran { get; } = new(StringComparer.Ordinal);

    /// <summary>Lines that the reader types.</summary>
    public int Typed { get; private set; }

    public static OwnRigPage Followed()
    {
        var page = new OwnRigPage();
        foreach (Match part in Part().Matches(RepositoryFiles.Read("docs", "rig-of-your-own.md").ReplaceLineEndings("\n")))
        {
            if (part.Groups["yaml"].Success)
            {
                page.Take(part.Groups["yaml"].Value);
            }
            else if (part.Groups["shell"].Success)
            {
                page.Run(part.Groups["shell"].Value);
            }
            else
            {
                page.Put(part.Groups["old"].Value, part.Groups["new"].Value);
            }
        }

        return page;
    }

    public string Read(string file) => File.ReadAllText(_scratch[file]);

    public void Dispose() => _scratch.Dispose();

    /// <summary>A whole file is saved; a piece goes into the flow where the lines stand that it marks as there.</summary>
    private void Take(string piece)
    {
        var lines = piece.TrimEnd('\n').Split('\n');
        Typed += lines.Count(line => !line.EndsWith(There, StringComparison.Ordinal));
        if (piece.StartsWith("rig:", StringComparison.Ordinal) || piece.StartsWith("plan:", StringComparison.Ordinal))
        {
            File.WriteAllText(_scratch[piece.StartsWith("rig:", StringComparison.Ordinal) ? "my-rig.yaml" : "my-plan.yaml"], piece);
            return;
        }

        var known = lines.Where(line => line.EndsWith(There, StringComparison.Ordinal)).Select(line => line[..^There.Length].TrimEnd());
        Assert.NotEmpty(known);
        Put(string.Concat(known.Select(line => line + "\n")), piece);
    }

    private void Put(string old, string instead)
    {
        var flow = Read("my-flow.yaml");
        Assert.Equal(2, flow.Split(old).Length);
        File.WriteAllText(_scratch["my-flow.yaml"], flow.Replace(old, instead, StringComparison.Ordinal));
    }

    private void Run(string shell)
    {
        var lines = shell.TrimEnd('\n').Split('\n');
        for (var at = 0; at < lines.Length;)
        {
            Assert.StartsWith("$ ", lines[at], StringComparison.Ordinal);
            var command = lines[at][2..];
            var shown = lines.Skip(at + 1).TakeWhile(line => !line.StartsWith("$ ", StringComparison.Ordinal)).ToList();
            Run(command, shown);
            at += 1 + shown.Count;
        }
    }

    private void Run(string command, List<string> shown)
    {
        var words = command.Split(' ');
        if (words is ["cp", var from, var to])
        {
            File.Copy(Path.Combine(RepositoryFiles.Root, from), _scratch[to]);
            return;
        }

        Assert.Equal("panside", words[0]);
        var redirect = Array.IndexOf(words, ">");
        var args = words[1..(redirect < 0 ? words.Length : redirect)].Select(word => word.EndsWith(".yaml", StringComparison.Ordinal) ? _scratch[word] : word);
        var run = Captured.Run([.. args, .. words[1] == "practice" ? ["--home", _scratch.Folder] : Array.Empty<string>()]);
        Assert.True(run.Status == ExitStatus.Done, $"{command}: {run.Out}{run.Errors}");
        if (redirect > 0)
        {
            File.WriteAllText(_scratch[words[redirect + 1]], run.Out);
        }
        else if (shown.Count > 0)
        {
            Assert.Equal(shown, (run.Out + run.Errors).Replace(_scratch.Folder + Path.DirectorySeparatorChar, "", StringComparison.Ordinal).TrimEnd('\n').Split('\n'));
        }

        Ran[command] = run;
    }

    [GeneratedRegex("^```yaml\n(?<yaml>.*?)^```|^```\n(?<shell>.*?)^```|`(?<old>[^`\n]+)` becomes\\s`(?<new>[^`\n]+)`", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Part();
}
