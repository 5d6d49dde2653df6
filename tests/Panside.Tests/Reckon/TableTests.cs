using System.Text.RegularExpressions;
using Panside.Guide.Measures;
using Panside.Reckon;

namespace Panside.Tests.Reckon;

/// <summary>What holds for every row of the table of calculations.</summary>
public partial class TableTests
{
    public static TheoryData<string> Names => [.. Calculations.All.Select(calculation => calculation.Name)];

    [Fact]
    public void The_table_has_every_calculation_that_is_promised() => Assert.Equal(
        [
            "baume", "blend", "boil-off", "boiling-water", "bottling", "density", "density-law", "draw-point", "elevation", "firebrick",
            "grade", "hours", "hydrometer", "off-target", "pressure", "refractometer", "sap-hydrometer", "specific-heat", "thermometer",
            "thin", "wood", "yield",
        ],
        Calculations.All.Select(calculation => calculation.Name).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Names))]
    public void The_example_of_the_help_runs_in_every_unit_system(string name)
    {
        var calculation = Of(name);
        Assert.All(UnitSystem.All, system =>
        {
            var ran = Captured.Run(["reckon", name, .. Examples.Words(calculation.Example), "--units", system.Code]);
            Assert.Equal("", ran.Errors);
            Assert.Equal(0, ran.Status);
            Assert.DoesNotContain("NaN", ran.Out, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_input_reads_its_own_example_and_its_usual_value(string name) =>
        Assert.All(UnitSystem.All, system => Assert.All(Of(name).Inputs, input =>
        {
            Assert.Null(InputReader.Read(input, input.Example, system).Fault);
            Assert.True(input.Usual is null || InputReader.Usual(input, system).IsUsual);
            Assert.True(input.With is null || Of(name).Inputs.Any(other => other.Name == input.With));
        }));

    [Theory]
    [MemberData(nameof(Names))]
    public void Help_shows_an_example_before_the_inputs_and_fits_a_terminal(string name)
    {
        var help = Captured.Run("reckon", name, "--help").Out;
        Assert.InRange(help.IndexOf("Example:", StringComparison.Ordinal), 1, help.IndexOf("Inputs:", StringComparison.Ordinal));
        Assert.All(Of(name).Inputs, input => Assert.Contains($"{input.Option} ", help, StringComparison.Ordinal));
        Assert.All(help.Split('\n').Where(line => !line.Contains("panside reckon", StringComparison.Ordinal)), line => Assert.InRange(line.Length, 0, 80));
    }

    [Fact]
    public void The_list_shows_every_name_in_its_group_and_fits_a_terminal()
    {
        var list = Captured.Run("reckon");
        Assert.Equal(0, list.Status);
        Assert.All(Calculations.All, calculation => Assert.Contains($"\n  {calculation.Name} ", list.Out, StringComparison.Ordinal));
        Assert.All(list.Out.Split('\n'), line => Assert.InRange(line.Length, 0, 80));
        Assert.Equal(list, Captured.Run("reckon", "--help"));
    }

    [Fact]
    public void Every_source_is_listed_and_says_whether_it_is_from_memory()
    {
        var page = File.ReadAllText(Path.Combine(Examples.Root(), "docs", "sources.md"));
        var rows = Row().Matches(page).ToDictionary(match => match.Groups["key"].Value, match => match.Groups["sure"].Value);
        Assert.All(Calculations.All.SelectMany(calculation => calculation.Basis.Sources), key => Assert.Contains(key, SourceNames.Keys));
        Assert.All(SourceNames.Keys, key =>
        {
            var sure = Assert.Contains(key, rows);
            Assert.True(!sure.Contains("memory", StringComparison.Ordinal) || SourceNames.Spelled(key).Contains("from memory", StringComparison.Ordinal), key);
        });
        Assert.Empty(SourceNames.Keys.Except(Calculations.All.SelectMany(calculation => calculation.Basis.Sources)));
    }

    private static Calculation Of(string name) => Calculations.All.Single(calculation => calculation.Name == name);

    [GeneratedRegex(@"^\| \[(?<key>S\d+)\] \|[^|]*\| (?<sure>[^|]*) \|$", RegexOptions.Multiline)]
    private static partial Regex Row();
}
