using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

/// <summary>What is told when a session is over.</summary>
public class DebriefTests
{
    private static readonly string[] Rows = ["Planned", "Happened", "Why", "Next time", "Score"];

    [Theory]
    [InlineData("two-by-four-forced.yaml", "1")]
    [InlineData("two-by-four-forced.yaml", "2")]
    [InlineData("two-by-four-natural.yaml", "3")]
    public void It_fits_a_screen_and_tells_the_water_that_truly_left(string rig, string seed)
    {
        using var scratch = new Scratch();
        var run = Captured.Run(
            "practice", "--unattended", "--scenario", "last-hour", "--seed", seed, "--home", scratch.Folder,
            "--rig", Path.Combine(RepositoryFiles.Root, "flows", "rigs", rig));
        Assert.Equal(ExitStatus.Done, run.Status);

        FitsAScreen(run.Out);
        Assert.Equal(Gallons(run.Out, @"([0-9.]+) gal boiled away after the last charge"), Gallons(run.Out, @"([0-9.]+) gal gone by the end"), 1.0);
    }

    [Theory]
    [InlineData("last-charge", "1")]
    [InlineData("float-stuck", "2")]
    [InlineData("leaving-early", "3")]
    [InlineData("foamy-night", "4")]
    [InlineData("tank-empty", "5")]
    public void P_however_it_went_it_fits_a_screen(string scenario, string seed)
    {
        using var scratch = new Scratch();
        var run = Captured.Run("practice", "--unattended", "--scenario", scenario, "--seed", seed, "--home", scratch.Folder);
        FitsAScreen(run.Out);
        Assert.All(run.Out.TrimEnd().Split('\n'), line => Assert.StartsWith("PRACTICE ", line, StringComparison.Ordinal));

        var report = Captured.Run("report", Directory.GetFiles(Path.Combine(scratch.Folder, "practice")).Single());
        Assert.Equal(Words(Told(run.Out)), Words(Reported(report.Out)));
    }

    [Theory]
    [InlineData("first-shutdown.jsonl")]
    [InlineData("float-stuck.jsonl")]
    [InlineData("long-boil.jsonl")]
    public void A_real_boil_has_one_too_and_the_report_tells_it(string name)
    {
        var path = Path.Combine(RepositoryFiles.Root, "demo-sessions", name);
        var record = Journal.Record.Of(JournalFile.Read(path));
        using var session = RecordedSession.New(Opening.SettingOf(path, record, null), _ => null);
        foreach (var exchange in record.Exchanges)
        {
            session.Hear(exchange.Line!, exchange.Raw);
        }

        Assert.InRange(session.Debriefed.Count, Rows.Length + 1, 22);
        Assert.All(session.Debriefed, line => Assert.InRange(line.Length, 1, 80));
        Assert.Equal(Words(session.Debriefed.Skip(1)), Words(Reported(Captured.Run("report", path).Out)));
    }

    [Fact]
    public void A_boil_that_has_no_end_yet_has_none_in_its_report()
    {
        using var scratch = new Scratch();
        var lines = File.ReadAllLines(Path.Combine(RepositoryFiles.Root, "demo-sessions", "first-shutdown.jsonl"));
        File.WriteAllLines(scratch["half.jsonl"], lines.Take(lines.Length / 2));
        var report = Captured.Run("report", scratch["half.jsonl"]);
        Assert.Equal(ExitStatus.Done, report.Status);
        Assert.DoesNotContain("Debrief", report.Out, StringComparison.Ordinal);
    }

    /// <summary>With the word of practice before each line, on a terminal of 80 by 24.</summary>
    private static void FitsAScreen(string output)
    {
        var lines = Told(output);
        Assert.InRange(lines.Count + 1, Rows.Length + 1, 22);
        Assert.All(lines, line => Assert.InRange(line.Length + "PRACTICE ".Length, 1, 80));
        Assert.Equal(Rows, lines.SelectMany(line => Rows.Where(row => line.StartsWith(row, StringComparison.Ordinal))));
    }

    /// <summary>The debrief's lines without its title and without the word of practice.</summary>
    private static IReadOnlyList<string> Told(string output) =>
    [
        .. output.Split('\n').Select(line => line.TrimEnd()).SkipWhile(line => line != "PRACTICE Debrief").Skip(1)
            .TakeWhile(line => !line.Contains("Record:", StringComparison.Ordinal)).Where(line => line.Length > 0).Select(line => line["PRACTICE ".Length..]),
    ];

    private static IEnumerable<string> Reported(string markdown) => markdown.Split('\n')
        .SkipWhile(line => line != "## Debrief").SkipWhile(line => !line.StartsWith("| --- ", StringComparison.Ordinal)).Skip(1)
        .TakeWhile(line => line.StartsWith("| ", StringComparison.Ordinal)).Select(line => line.Trim('|', ' ').Replace(" | ", " ", StringComparison.Ordinal));

    private static string Words(IEnumerable<string> lines) =>
        string.Join(' ', lines.SelectMany(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)));

    private static double Gallons(string output, string told) =>
        double.Parse(Regex.Match(output, told).Groups[1].Value, CultureInfo.InvariantCulture);
}
