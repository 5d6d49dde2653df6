using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

/// <summary>What is told when a session is over.</summary>
[Collection(ConsoleAlone.Name)]
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

        var lines = run.Out.Split('\n').Select(line => line.TrimEnd()).SkipWhile(line => line != "PRACTICE Debrief").TakeWhile(line => !line.Contains("Record:", StringComparison.Ordinal)).ToList();
        Assert.InRange(lines.Count, Rows.Length + 1, 21);
        Assert.All(lines, line => Assert.InRange(line.Length, 1, 79 + "PRACTICE ".Length));
        Assert.Equal(Rows, lines.Select(line => line["PRACTICE ".Length..]).SelectMany(line => Rows.Where(row => line.StartsWith(row, StringComparison.Ordinal))));

        Assert.Equal(Gallons(run.Out, @"([0-9.]+) gal boiled away after the last charge"), Gallons(run.Out, @"([0-9.]+) gal gone by the end"), 1.0);
    }

    private static double Gallons(string output, string told) =>
        double.Parse(Regex.Match(output, told).Groups[1].Value, CultureInfo.InvariantCulture);
}
