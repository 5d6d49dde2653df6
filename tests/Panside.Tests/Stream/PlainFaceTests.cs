using System.Diagnostics;
using System.Text;
using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Screen.Typing;

namespace Panside.Tests.Stream;

/// <summary>T8: nothing but lines, each event a line, and the whole procedure with every function can be worked by them.</summary>
public partial class PlainFaceTests
{
    /// <summary>A whole boil, with every function of the screen, a question, an emergency and something left out.</summary>
    private static readonly string[] Boil =
    [
        "help", "no", "why", "yes", "no", "1 1/2", "yes", "later", "tank 19", "sap 2.1", "status", "lit", "rolling", "210.5F", "wood", "undo", "wood", "draw 103", "no",
        "what if I stop now", "tank 18 1/2", "note sève 糖", "foam rising", "defoamer", "emergency", "yes", "skip", "drew 2 qt", "skip", "sample 185", "hydrometer 60.4", "yes",
        "skipped", "shutdown", "yes", "yes", "yes", "spread", "yes", "flooded", "depth 2 1/2", "still", "spent", "yes", "gradient gone", "covered", "yes", "depth 2 1/2", "yes", "no",
        "foam low", "leave", "yes",
    ];

    [Fact]
    public void T8_a_whole_boil_is_nothing_but_lines_and_every_function_is_a_word()
    {
        using var scratch = new Scratch();
        var (status, bytes) = Run(Boil, "boil", "--plain", "--home", scratch.Folder);
        AssertLines(bytes);
        var told = Encoding.UTF8.GetString(bytes);

        // Typed in a moment, it is left before anything can be clear.
        Assert.Equal(ExitStatus.Wrong, status);
        foreach (var phase in new[] { "start-up", "steady-boil", "draw-off", "emergency", "shutdown", "after", "over" })
        {
            Assert.Contains($"=== {phase} ===\n", told, StringComparison.Ordinal);
        }

        // One word is of the full screen only: letters are of any size in lines.
        Assert.Superset(WordKeys.All.Select(key => key.Word).Where(word => word != WordKeys.Large).ToHashSet(), Boil.ToHashSet());
        Assert.DoesNotMatch(Refused(), told);
        foreach (var mark in new[] { "> ", "  Why: ", "  [", "! Caution: ", "!! NOW: ", "!!! DANGER: ", "  Heard: ", "? ", "- " })
        {
            Assert.Contains("\n" + mark, told, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void T8_home_the_rig_practice_and_replay_are_nothing_but_lines_too()
    {
        using var scratch = new Scratch();
        (string Words, string[] Arguments, string Told)[] all =
        [
            ("rig\nus\n30\n20\nno\nno\nrest\nname hill shed\nyes\nleave\n", ["--plain"], "- Written: "),
            ("1\n", ["rig", "--plain", scratch["other.yaml"]], "x "),
            ("yes\nemergency\n", ["practice", "--plain", "--paused"], "PRACTICE"),
            ("", ["replay", "--plain", Reporting.Story.Demo("float-stuck")], "=== emergency ==="),
        ];
        foreach (var (words, arguments, told) in all)
        {
            var home = arguments[0] == "replay" ? [] : new[] { "--home", scratch.Folder };
            var (_, bytes) = Run(words.Split('\n'), [.. arguments, .. home]);
            AssertLines(bytes);
            Assert.Contains(told, Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
        }
    }

    /// <summary>No sign that moves a cursor, rings, or colors: of all controls the end of a line alone, and the last line has one.</summary>
    private static void AssertLines(byte[] bytes)
    {
        Assert.InRange(bytes.Length, 300, 1_000_000);
        Assert.Equal((byte)'\n', bytes[^1]);
        Assert.DoesNotContain(Encoding.UTF8.GetString(bytes), letter => char.IsControl(letter) && letter != '\n');
    }

    /// <summary>What the program said to typed lines, and how it ended.</summary>
    internal static (int Status, byte[] Output) Run(IEnumerable<string> typed, params string[] arguments)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "panside"), arguments)
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        start.Environment["TERM"] = "xterm-256color";
        using var process = Process.Start(start)!;
        using var output = new MemoryStream();
        var reading = process.StandardOutput.BaseStream.CopyToAsync(output);
        using (var input = new StreamWriter(process.StandardInput.BaseStream, new UTF8Encoding(false)))
        {
            foreach (var line in typed)
            {
                input.Write(line + "\n");
            }
        }

        reading.Wait(TimeSpan.FromMinutes(2));
        process.WaitForExit();
        return (process.ExitCode, output.ToArray());
    }

    [GeneratedRegex("^x ", RegexOptions.Multiline)]
    private static partial Regex Refused();
}
