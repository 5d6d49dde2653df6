using System.Text.RegularExpressions;
using Panside.Arguments;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Yaml;

namespace Panside.Tests.Door;

/// <summary>S2, S6: what is built in is walked here, so that no start has to wait for it.</summary>
public sealed partial class BuiltInFlowTests
{
    private static readonly string Text = Library.BuiltIn("flows/" + Library.BuiltInFlow);

    [Fact]
    public void S6_the_ways_of_the_built_in_flow_are_walked_as_those_of_any_other_and_all_lead_where_they_should()
    {
        var walked = FlowFile.Read(Library.BuiltInFlow, Text, Vocabularies.Flow);
        Assert.Equal(walked.Hash, Library.Flow(null).Hash);
        Assert.Equal(RepositoryFiles.Read("flows", Library.BuiltInFlow), Text);
    }

    [Fact]
    public void S6_the_same_text_without_the_gate_is_refused_where_it_comes_as_a_file()
    {
        var gateless = Gate().Replace(Text, "");
        Assert.NotEqual(Text, gateless);
        Assert.Throws<FaultyFileException>(() => FlowFile.Read("f", gateless, Vocabularies.Flow));
        using var scratch = new Scratch();
        File.WriteAllText(scratch["flow.yaml"], gateless);
        Assert.Throws<FaultyFileException>(() => Library.Flow(scratch["flow.yaml"]));
    }

    [GeneratedRegex(@", given: \[clear-to-leave\]")]
    private static partial Regex Gate();
}
