using Panside.Guide.Flows;

namespace Panside.Guide.Tests.Flows;

/// <summary>Each file in <c>rejected</c> is named for the rule that it breaks, and marks where.</summary>
public class RejectedFlowTests
{
    public static IEnumerable<TheoryDataRow<string>> Rules => MarkedFault.In("Flows");

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_flow_that_breaks_a_rule_is_refused_at_the_place_where_it_does(string rule) =>
        MarkedFault.MustBeFound("Flows", rule, (file, text) => FlowFile.Read(file, text, Vocabularies.Flow));

    /// <summary>The rejected flows are this one with one change each, so each is refused for its own reason.</summary>
    [Fact]
    public void The_flow_that_the_rejected_ones_are_made_from_is_read()
    {
        var flow = FlowFile.Read("smallest.yaml", RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "smallest.yaml"), Vocabularies.Flow);
        Assert.Equal(["boil", "dry", "foam", "help", "pan", "scorch"], flow.Steps.Keys.Order());
    }

    [Fact]
    public void S2_and_S6_have_rejected_flows_of_their_own()
    {
        var rules = Rules.Select(row => row.Data).ToList();
        Assert.Equal(4, rules.Count(rule => rule.StartsWith("Emergency-", StringComparison.Ordinal)));
        Assert.InRange(rules.Count(rule => rule.StartsWith("Dangers-", StringComparison.Ordinal)), 15, 99);
        Assert.Equal(3, rules.Count(rule => rule.StartsWith("End-", StringComparison.Ordinal)));
        Assert.Equal(6, rules.Count(rule => rule.StartsWith("Looks-", StringComparison.Ordinal)));
        Assert.Contains("Steps-MustReachTheEnd", rules);
    }

    [Fact]
    public void Every_fault_of_a_flow_is_told_at_once()
    {
        var text = RepositoryFiles.Read("flows", "divided-pan.yaml")
            .Replace("ask: tank-volume", "ask: tank-color", StringComparison.Ordinal)
            .Replace("advise: cool-pan", "advise: pray", StringComparison.Ordinal);
        var faults = Assert.Throws<Yaml.FaultyFileException>(() => FlowFile.Read("f", text, Vocabularies.Flow)).Faults;
        Assert.Equal(text.Split("tank-color").Length - 1, faults.Count(fault => fault.Wrong.Contains("tank-color", StringComparison.Ordinal)));
        Assert.Equal(text.Split("advise: pray").Length - 1, faults.Count(fault => fault.Wrong.Contains("pray", StringComparison.Ordinal)));
        Assert.Equal(faults.OrderBy(fault => fault.Line), faults);
    }
}
