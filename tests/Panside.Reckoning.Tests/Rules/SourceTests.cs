using System.Text.RegularExpressions;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Rules;

public partial class SourceTests
{
    private const string Code = "src/Panside.Reckoning";
    private const string Wording = "src/Panside.Guide/Wording";
    private const string Tests = "tests/Panside.Reckoning.Tests";

    [Fact]
    public void Every_source_that_is_cited_stands_in_the_list()
    {
        HashSet<string> listed = [.. Listed()];
        string[] unlisted = [.. Cited().Where(c => !listed.Contains(c.Key)).Select(c => $"{c.File}: {c.Key} is not in docs/sources.md")];
        Assert.Empty(unlisted);
    }

    [Fact]
    public void Every_source_of_the_list_is_cited_once_or_more_and_listed_once()
    {
        HashSet<string> cited = [.. Cited().Select(c => c.Key)];
        Assert.All(Listed(), key => Assert.Contains(key, cited));
        Assert.Distinct(Listed());
    }

    [Fact]
    public void Every_table_of_figures_names_its_source_in_its_first_line() =>
        Assert.All(Repository.Files(Tests, "*.csv"), f => Assert.Matches(Key(), File.ReadLines(f).First()));

    [Theory]
    [InlineData("Properties")]
    [InlineData("Instruments")]
    [InlineData("Batch")]
    public void Every_file_with_a_formula_names_its_source_range_and_accuracy(string folder)
    {
        string[] formulas = [.. Repository.Files($"{Code}/{folder}", "*.cs").Where(f =>
            Path.GetFileName(f) != "HydrometerCalibrations.cs" && Formula().IsMatch(File.ReadAllText(f)))];
        Assert.NotEmpty(formulas);
        Assert.All(formulas, f =>
        {
            string text = File.ReadAllText(f);
            Assert.Matches("Source[: ]", text);
            Assert.Contains("Range:", text, StringComparison.Ordinal);
            Assert.Matches("(Agreement|Accuracy)[: ]", text);
        });
    }

    private static string[] Listed() =>
        [.. Row().Matches(Repository.Text("docs/sources.md")).Select(m => m.Groups[1].Value)];

    private static IEnumerable<(string File, string Key)> Cited() =>
        Repository.Files(Code, "*.cs").Concat(Repository.Files(Wording, "*.cs")).Concat(Repository.Files(Tests, "*.csv"))
            .SelectMany(f => Key().Matches(File.ReadAllText(f)).Select(m => (Path.GetFileName(f), m.Value)));

    [GeneratedRegex(@"\[S\d+\]")]
    private static partial Regex Key();

    [GeneratedRegex(@"^\| (\[S\d+\]) \|", RegexOptions.Multiline)]
    private static partial Regex Row();

    [GeneratedRegex(@"^public (?s:.*?)^    public static (Temperature|TemperatureRise|Pressure|Density|SugarContent|Energy|Mass|Volume|VolumeRate|TimeSpan|Portion|double|ColorClass|LegalDensity|DrawPoint|ContainerFill) \w+\(", RegexOptions.Multiline)]
    private static partial Regex Formula();
}
