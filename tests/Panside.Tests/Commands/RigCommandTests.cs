using Panside.Commands;
using Panside.Guide.Rigs;
using Panside.Tests.Reckon;

namespace Panside.Tests.Checks;

/// <summary><c>panside rig</c>: the file comes whole or not at all, and the next boil uses it.</summary>
public sealed class RigCommandTests : IDisposable
{
    private static readonly string[] Answers = ["us", "4 ft", "23 1/2", "no", "yes", "rest", "name hill shed"];

    private readonly Scratch _scratch = new();

    private string RigPath => _scratch["rig.yaml"];

    public void Dispose() => _scratch.Dispose();

    [Fact]
    public void The_file_made_is_right_and_the_next_boil_uses_it_unless_another_is_named()
    {
        var run = Rig([.. Answers, "yes"]);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.Contains("- Fired so it boils away about 7.6", run.Out, StringComparison.Ordinal);
        Assert.EndsWith($"- Written: {RigPath}\n- Your next boil uses it: panside boil --home {_scratch.Folder}\n", run.Out, StringComparison.Ordinal);
        Assert.Equal([RigPath], Directory.GetFiles(_scratch.Folder));
        Assert.Equal(ExitStatus.Done, Captured.Run("check", RigPath).Status);
        var home = Home.Of(_scratch.Folder);
        Assert.Equal("hill shed", Library.Rig(null, home).Name);
        Assert.Equal("two by four, natural draft", Library.Rig(Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-natural.yaml"), home).Name);
        Assert.Contains("hill shed", Captured.Run("plan", "--sap", "60 gal", "--home", _scratch.Folder).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_of_another_name_is_made_where_it_is_named()
    {
        var path = _scratch["rigs/second.yaml"];
        var run = Typed.Into([.. Answers, "yes"], "rig", path, "--plain");
        Assert.EndsWith($"- Your next boil uses it: panside boil --rig {path}\n", run.Out, StringComparison.Ordinal);
        Assert.Equal("hill shed", Library.Rig(path, Home.Of(_scratch.Folder)).Name);
    }

    [Fact]
    public void The_end_of_the_input_in_the_midst_leaves_no_file()
    {
        for (var answered = 0; answered <= Answers.Length; answered++)
        {
            var run = Rig(Answers[..answered]);
            Assert.Equal(ExitStatus.Interrupted, run.Status);
            Assert.EndsWith("- Left before the end: nothing was written.\n", run.Out, StringComparison.Ordinal);
            Assert.Empty(Directory.GetFileSystemEntries(_scratch.Folder));
        }
    }

    [Fact]
    public void A_stop_keeps_the_answers_and_the_next_time_goes_on_with_them()
    {
        var stopped = Rig(["metric", "120", "60", "stop"]);
        Assert.Equal(ExitStatus.Done, stopped.Status);
        Assert.EndsWith("- Stopped; 3 answers are kept. 'panside rig' goes on.\n", stopped.Out, StringComparison.Ordinal);
        Assert.False(File.Exists(RigPath));
        var on = Rig(["yes", "yes", "rest", "yes"]);
        Assert.StartsWith("- Going on where it was stopped: 3 answers are kept.", on.Out, StringComparison.Ordinal);
        Assert.Equal(120, RigFile.Read(RigPath, File.ReadAllText(RigPath)).PanLength.Centimeters, 6);
        Assert.Equal([RigPath], Directory.GetFiles(_scratch.Folder));
    }

    [Fact]
    public void A_file_that_is_there_is_replaced_only_after_a_yes_and_stays_beside_the_new_one()
    {
        File.WriteAllText(RigPath, "rig: old shed\nunits: us\npan: { length: 30 in, width: 20 in }\nfire: { draft: natural }\n");
        var refused = Rig([.. Answers, "yes", "no"]);
        Assert.Contains("> A rig file is there already: 'old shed'. Is this one to take its place?", refused.Out, StringComparison.Ordinal);
        Assert.StartsWith("rig: old shed", File.ReadAllText(RigPath), StringComparison.Ordinal);
        var taken = Rig([.. Answers, "yes", "yes"]);
        Assert.Contains($"- The one before it: {_scratch["rig.before-1.yaml"]}\n", taken.Out, StringComparison.Ordinal);
        Assert.StartsWith("rig: old shed", File.ReadAllText(_scratch["rig.before-1.yaml"]), StringComparison.Ordinal);
        Assert.Equal("hill shed", RigFile.Read(RigPath, File.ReadAllText(RigPath)).Name);
        Rig([.. Answers, "yes", "yes"]);
        Assert.StartsWith("rig: old shed", File.ReadAllText(_scratch["rig.before-1.yaml"]), StringComparison.Ordinal);
        Assert.True(File.Exists(_scratch["rig.before-2.yaml"]));
    }

    [Fact]
    public void Where_it_cannot_be_written_the_text_is_shown_and_nothing_is_lost()
    {
        File.WriteAllText(_scratch["file"], "");
        var run = Typed.Into([.. Answers, "yes"], "rig", _scratch["file/rig.yaml"], "--plain");
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains("rig: 'hill shed'", run.Out, StringComparison.Ordinal);
        Assert.Contains("cannot be written", run.Errors, StringComparison.Ordinal);
        Assert.Contains("--rig", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_folder_is_no_rig_file()
    {
        var run = Typed.Into([], "rig", _scratch.Folder, "--plain");
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains("is a folder. Name a file in it", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void An_emergency_in_the_midst_brings_the_emergency_list()
    {
        var run = Rig(["us", "emergency"]);
        Assert.Contains("=== emergency ===", run.Out, StringComparison.Ordinal);
        Assert.Single(Directory.GetFiles(_scratch["sessions"], "*.jsonl"));
    }

    [Fact]
    public void The_conversation_in_the_guide_is_the_programs()
    {
        const string Begin = "<!-- conversation -->\n```\n";
        var guide = RepositoryFiles.Read("docs", "rig-questions.md").ReplaceLineEndings("\n");
        var shown = guide[(guide.IndexOf(Begin, StringComparison.Ordinal) + Begin.Length)..];
        shown = shown[..shown.IndexOf("```", StringComparison.Ordinal)];
        var typed = shown.Split('\n').Where(line => line.StartsWith("$ ", StringComparison.Ordinal)).Select(line => line[2..]).ToList();
        Assert.True(typed.Count > 6);
        var run = Rig(typed);
        Assert.Equal(WithoutTyped(shown), run.Out.Replace(_scratch.Folder, "/home/ada/panside", StringComparison.Ordinal));
    }

    private static string WithoutTyped(string shown) =>
        string.Concat(shown.Split('\n').Where(line => !line.StartsWith("$ ", StringComparison.Ordinal)).Select(line => line + "\n"))[..^1];

    private Captured Rig(IEnumerable<string> typed) => Typed.Into(typed, "rig", "--plain", "--home", _scratch.Folder);
}
