using System.Text.RegularExpressions;

namespace Panside.Tests.Architecture;

/// <summary>Guides rot: every path that README and DEVELOPERS name must exist, and every safety rule must be held by a test.</summary>
public partial class GuidesTests
{
    public static TheoryData<string> Guides { get; } =
        [.. Directory.EnumerateFiles(RepositoryFiles.Root, "*.md")
            .Concat(Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "docs"), "*.md", SearchOption.AllDirectories))
            .Select(path => Path.GetRelativePath(RepositoryFiles.Root, path))];

    [Theory]
    [MemberData(nameof(Guides))]
    public void Every_path_that_a_guide_names_exists(string guide)
    {
        var text = RepositoryFiles.Read(guide);
        var missing = NamedPath().Matches(text).Select(match => match.Groups["path"].Value.TrimEnd('/'))
            .Where(path => !path.Contains('*', StringComparison.Ordinal) && !Path.Exists(Path.Combine(RepositoryFiles.Root, path)))
            .Distinct();
        Assert.Empty(missing);
    }

    [Theory]
    [InlineData("S1")]
    [InlineData("S2")]
    [InlineData("S3")]
    [InlineData("S4")]
    [InlineData("S5")]
    [InlineData("S6")]
    [InlineData("S7")]
    [InlineData("S8")]
    public void Every_safety_rule_is_named_by_a_test(string rule)
    {
        var named = Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "tests"), "*.cs", SearchOption.AllDirectories)
            .Any(path => Regex.IsMatch(File.ReadAllText(path), $@"public void {rule}_\w+"));
        Assert.True(named, $"No test's name begins with {rule}_.");
    }

    [Theory]
    [InlineData("R1")]
    [InlineData("R2")]
    [InlineData("R3")]
    [InlineData("R4")]
    [InlineData("R5")]
    [InlineData("R6")]
    [InlineData("R7")]
    [InlineData("R8")]
    [InlineData("R9")]
    [InlineData("R10")]
    public void Every_rule_of_the_record_is_named_by_a_test(string rule) => Every_safety_rule_is_named_by_a_test(rule);

    /// <summary>T1 to T15 and O1 to O18: each has a row, and every test that a row names is there.</summary>
    [Fact]
    public void Every_rule_of_the_screen_has_a_row_in_its_table_and_the_tests_named_there_exist()
    {
        var table = RepositoryFiles.Read("docs", "screen-texts.md").Split("## Rules and their tests")[1].Split("\n## ")[0];
        var rows = RuleRow().Matches(table).ToDictionary(row => row.Groups["rule"].Value, row => row.Value);
        Assert.Equal(
            Enumerable.Range(1, 15).Select(number => $"T{number}").Concat(Enumerable.Range(1, 18).Select(number => $"O{number}")).Order(), rows.Keys.Order());
        var sources = Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "tests"), "*Tests.cs", SearchOption.AllDirectories)
            .ToLookup(path => Path.GetFileNameWithoutExtension(path)!, File.ReadAllText);
        foreach (var (rule, row) in rows)
        {
            var named = NamedTest().Matches(row);
            Assert.True(named.Count > 0 || row.Contains("| measured |", StringComparison.Ordinal), row);
            Assert.All(named, test => Assert.True(
                sources[test.Groups["class"].Value].Any(source => source.Contains($"public void {test.Groups["start"].Value}", StringComparison.Ordinal)), $"{rule}: {test.Value}"));
        }
    }

    /// <summary>A page that nobody reads to its end is split.</summary>
    [Theory]
    [MemberData(nameof(Guides))]
    public void A_page_is_no_longer_than_300_lines(string guide) =>
        Assert.InRange(RepositoryFiles.Read(guide).Count(letter => letter == '\n'), 1, 300);

    [GeneratedRegex(@"^\| (?<rule>[TO]\d+) .*$", RegexOptions.Multiline)]
    private static partial Regex RuleRow();

    [GeneratedRegex(@"`(?<class>\w+Tests)(\.(?<start>\w+?_)…)?`")]
    private static partial Regex NamedTest();

    [GeneratedRegex(@"`(?<path>(?:src|tests|flows|docs|demo-sessions|\.ci)/[\w./\-*]+)`")]
    private static partial Regex NamedPath();
}
