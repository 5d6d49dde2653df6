using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Yaml;
using Panside.Workshop.Linting;

namespace Panside.Tests.Workshop;

/// <summary>How the texts of a flow read, as a table.</summary>
public class LintingTests
{
    private static readonly string Shipped = RepositoryFiles.Read("flows", Library.BuiltInFlow);

    [Fact]
    public void The_shipped_flow_reads_well_and_each_place_has_a_row()
    {
        var linted = Lint(Shipped);
        Assert.True(linted.ReadsWell, string.Join('\n', linted.Rows));
        var rows = linted.Rows.ToList();
        Assert.All((string[])["start-up", "steady-boil", "watch", "advice", "alarms and emergencies"], where => Assert.Contains(rows, row => row.StartsWith($"| {where} | ", StringComparison.Ordinal)));
        Assert.Equal("No text reads badly.", rows[^1]);
        Assert.Equal(6, linted.Groups.Single(group => group.Where == "alarms and emergencies").Most);
    }

    [Fact]
    public void A_hard_text_is_told_with_its_place_and_grade()
    {
        const string Hard = "text: Read immediately immediately whatever precipitation accumulates. Contemplate alternative configurations. Notwithstanding, communicate deterioration.";
        const string Simple = "text: Read the head tank.";
        var line = Array.FindIndex(Shipped.Split('\n'), row => row.Contains(Simple, StringComparison.Ordinal));
        Assert.True(line > 0);
        var linted = Lint(Shipped.Replace(Simple, Hard, StringComparison.Ordinal));
        Assert.False(linted.ReadsWell);
        Assert.Contains(linted.Faults, fault => fault.Wrong.Contains("is of grade ", StringComparison.Ordinal) && fault.Expected == "8 at the most" && int.Abs(fault.Line - 1 - line) < 12);
        Assert.DoesNotContain("No text reads badly.", linted.Rows);
    }

    private static LintedFlow Lint(string text) => LintedFlow.Of("mine.yaml", FlowFile.Read("mine.yaml", text, Vocabularies.Flow));
}
