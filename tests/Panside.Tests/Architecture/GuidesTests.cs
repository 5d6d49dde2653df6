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

    [GeneratedRegex(@"`(?<path>(?:src|tests|flows|docs|demo-sessions|\.ci)/[\w./\-*]+)`")]
    private static partial Regex NamedPath();
}
