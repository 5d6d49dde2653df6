using Panside.Guide.Flows;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Guide.Tests.Flows;

/// <summary>S6: what leaving can want is asked for until it is seen, on every rig; a flow that leaves one look out where somebody waits is refused, and says which.</summary>
public class GateCheckTests
{
    private static readonly string Shipped = RepositoryFiles.Read("flows", "divided-pan.yaml");

    public static IEnumerable<TheoryDataRow<string>> Rigs => Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "flows", "rigs"), "*.yaml")
        .Select(file => new TheoryDataRow<string>(Path.GetFileName(file)));

    [Theory]
    [MemberData(nameof(Rigs))]
    public void S6_on_each_shipped_rig_the_shipped_flow_asks_for_all_that_leaving_can_want(string rig) =>
        FlowCheck.Clears("f", FlowFile.Read("f", Shipped, Vocabularies.Flow), RigFile.Read(rig, RepositoryFiles.Read("flows", "rigs", rig)));

    /// <summary>Each is taken out of the list of the step where somebody waits at last.</summary>
    [Theory]
    [InlineData("smell-late", "the smell", "last told scorched")]
    [InlineData("boil-watch", "the boil", "last seen rolling; seen still too soon to count")]
    [InlineData("coals-watch", "the coals", "never looked at; last seen deep; last seen thin")]
    [InlineData("depth-late", "the pan's depth", "never read")]
    [InlineData("back-late", "the back pan's depth", "not read since the last heat")]
    [InlineData("gradient-watch", "the draw-off side", "nobody has looked at the channels")]
    [InlineData("gradient-late", "the draw-off side", "the channels were last seen apart")]
    [InlineData("foam-late", "the foam", "last seen up")]
    public void S6_a_look_that_is_left_out_where_somebody_waits_is_told(string watch, string look, string seen)
    {
        var at = Shipped.IndexOf("      - step: leave-check\n", StringComparison.Ordinal);
        var flow = Shipped[..at] + Without(Shipped[at..], watch);
        var fault = Assert.Single(Assert.Throws<FaultyFileException>(() => FlowFile.Read("f", flow, Vocabularies.Flow)).Faults);
        Assert.StartsWith($"from 'leave-check' on nothing asks for {look} any more ({seen}", fault.Wrong, StringComparison.Ordinal);
        Assert.Equal((FaultKind.Kept, Shipped[..at].Split('\n').Length), (fault.Kind, fault.Line));
    }

    /// <summary>What is asked only of some, or only at some times, is not asked for all.</summary>
    [Theory]
    [InlineData("coals-watch", "[not clear-to-leave]", "[not clear-to-leave, beginner]")]
    [InlineData("coals-watch", "[not clear-to-leave]", "[not clear-to-leave, forced-draft]")]
    [InlineData("coals-watch", "[not clear-to-leave]", "[not clear-to-leave, coals-deep]")]
    [InlineData("smell-late", "[smell-scorched]", "[smell-scorched, boil-up]")]
    [InlineData("gradient-watch", "[channels-unknown]", "[channels-unknown, has-refractometer]")]
    public void S6_a_look_that_is_asked_for_only_sometimes_is_told(string watch, string given, string narrower)
    {
        var at = Shipped.IndexOf($"  - watch: {watch}\n", StringComparison.Ordinal);
        var place = Shipped.IndexOf($"    given: {given}\n", at, StringComparison.Ordinal);
        Assert.InRange(place - at, 1, 120);
        var flow = Shipped[..place] + Shipped[place..].Replace(given, narrower, StringComparison.Ordinal)[..(narrower.Length + 11)] + Shipped[(place + given.Length + 11)..];
        Assert.Contains(Assert.Throws<FaultyFileException>(() => FlowFile.Read("f", flow, Vocabularies.Flow)).Faults, fault => fault.Kind == FaultKind.Kept);
    }

    /// <summary>A rig without coals, channels or a second pan is not kept for want of a look at them.</summary>
    [Fact]
    public void S6_what_a_rig_has_not_need_not_be_asked_for_on_it()
    {
        var flow = FlowFile.Read("small", RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "smallest.yaml"), Vocabularies.Flow);
        FlowCheck.Clears("small", flow, RigFile.Read("r", "rig: r\nunits: us\npan: { length: 2 ft, width: 2 ft, channels: 1 }\nfire: { kind: gas }\n"));
        var faults = Assert.Throws<FaultyFileException>(() => FlowCheck.Clears("small", flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "flue-and-syrup-pan.yaml")))).Faults;
        Assert.Equal(["the coals", "the back pan's depth", "the draw-off side"], faults.Select(fault => fault.Wrong.Split(" asks for ")[1].Split(" any more")[0]));
    }

    private static string Without(string text, string watch)
    {
        var list = text.IndexOf("watch: [", StringComparison.Ordinal);
        var end = text.IndexOf(']', list);
        var names = text[(list + 8)..end].Split(", ");
        Assert.Contains(watch, names);
        return text[..(list + 8)] + string.Join(", ", names.Where(name => name != watch)) + text[end..];
    }
}
