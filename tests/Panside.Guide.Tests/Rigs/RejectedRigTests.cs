using Panside.Guide.Rigs;
using Panside.Guide.Tests.Flows;

namespace Panside.Guide.Tests.Rigs;

/// <summary>Each file in <c>rejected</c> is named for the rule that it breaks, and marks where.</summary>
public class RejectedRigTests
{
    public static IEnumerable<TheoryDataRow<string>> Rules => MarkedFault.In("Rigs");

    [Theory]
    [MemberData(nameof(Rules))]
    public void A_rig_that_breaks_a_rule_is_refused_at_the_place_where_it_does(string rule) =>
        MarkedFault.MustBeFound("Rigs", rule, (file, text) => RigFile.Read(file, text));

    [Fact]
    public void Every_fault_of_a_rig_is_told_at_once_and_in_order()
    {
        var faults = Assert.Throws<Yaml.FaultyFileException>(() => RigFile.Read("r", "units: us\npan: { length: 4 in }\nfire: { draft: up, air: 1 }\n")).Faults;
        Assert.Equal(
            ["r:1:1", "r:2:6", "r:2:16", "r:3:16", "r:3:20"],
            faults.Select(fault => $"{fault.File}:{fault.Line}:{fault.Column}"));
    }
}
