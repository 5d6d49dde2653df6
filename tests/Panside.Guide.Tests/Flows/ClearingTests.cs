using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Flows;

/// <summary>What is to be done where waiting does not clear it, and what a phase with a code of its own is to the program: both stand in the flow.</summary>
public class ClearingTests
{
    private static Conversation Boil => Conversation.AtSteadyBoil(members: Conversation.Few);

    [Fact]
    public void The_first_deed_whose_facts_hold_is_told()
    {
        Assert.Equal("put in no more wood; say 'shutdown'", Deed(Boil));

        var open = Boil;
        open.Say("open draw");
        Assert.Equal("shut the draw-off; say 'drew' with the volume", Deed(open));

        var shallow = Boil;
        shallow.Say("shutdown", "yes", "depth 0.8");
        Assert.Equal("fill the pan to 2.5 in; say its depth", Deed(shallow));
    }

    [Fact]
    public void A_flow_of_ones_own_says_it_in_its_own_words()
    {
        var own = Own(flow => flow.Replace("put in no more wood; say 'shutdown'", "let the fire die, {clock}", StringComparison.Ordinal));
        var session = new Session(Set(own), Boil.State);
        Assert.StartsWith("let the fire die, ", Figures.Of(new(session.Setting, session.State), "clearing-deed"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_flow_without_the_list_asks_to_look_once_more()
    {
        var none = Own(flow =>
        {
            var from = flow.IndexOf("clearing:\n", StringComparison.Ordinal);
            return flow.Remove(from, flow.IndexOf("watches:\n", StringComparison.Ordinal) - from);
        });
        Assert.Equal("look once more at all that is asked", Figures.Of(new(Set(none), Boil.State), "clearing-deed"));
    }

    [Fact]
    public void A_phase_with_a_code_of_its_own_is_of_the_kind_that_it_says()
    {
        var own = Own(flow => flow.Replace("  - phase: after\n", "  - phase: watching-it-die\n    kind: after\n", StringComparison.Ordinal)
            .Replace("shutdown, after, emergency]", "shutdown, watching-it-die, emergency]", StringComparison.Ordinal).Replace("shutdown, after]", "shutdown, watching-it-die]", StringComparison.Ordinal).Replace("[after]", "[watching-it-die]", StringComparison.Ordinal));
        var phase = own.Phases.First(phase => phase.Code == "watching-it-die");
        Assert.True(phase.IsEnding);
        Assert.True(new Situation(Set(own), Boil.State with { Step = own.Steps.Values.First(step => step.Phase.Code == phase.Code).Id }).IsEnding);
        Assert.Equal(Conversation.Flow.Phases.Count(one => one.IsEnding), own.Phases.Count(one => one.IsEnding));
    }

    private static string Deed(Conversation boil) => Figures.Of(new(boil.Session.Setting, boil.State), "clearing-deed");

    private static Flow Own(Func<string, string> changed) =>
        FlowFile.Read("own.yaml", changed(RepositoryFiles.Read("flows", "divided-pan.yaml").ReplaceLineEndings("\n")), Vocabularies.Flow);

    private static Setting Set(Flow flow) => new(
        flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")), Guidance.Beginner, "test")
    { Members = Conversation.Few };
}
