using Panside.Guide.Flows;
using Panside.Guide.Wording;

namespace Panside.Guide.Tests.Wording;

/// <summary>Each rule of O5, O6, O7 and O14 against a text that breaks it.</summary>
public sealed class FlowWordingTests
{
    private static readonly Flow Shipped = Conversation.Flow;

    [Theory]
    [InlineData("Read the head tank and look at the float.", "asks for 2 actions")]
    [InlineData("The head tank wants a look.", "begins with no verb")]
    [InlineData("Read the head tank, and while you are there mind that the gauge is a fine and clean one today.", "columns, expected 78")]
    public void O5_a_step_has_one_action_its_verb_first_and_one_line(string text, string wrong) =>
        Assert.Contains(wrong, Only(step => step with { Text = text }));

    [Fact]
    public void O6_a_caution_asks_for_nothing_and_there_are_two_at_the_most()
    {
        Assert.Contains("a caution that asks for something", Only(step => step with { Cautions = ["Steam scalds; keep your arms off the pan."] }));
        Assert.Contains("has 3 cautions", Only(step => step with { Cautions = ["Steam scalds.", "Sugar burns.", "Coals glow."] }));
    }

    [Fact]
    public void O7_a_reason_has_15_words_at_the_most() => Assert.Contains(
        "a reason of 16 words", Only(step => step with { Because = "One two three four five six seven eight nine ten eleven twelve {tank} more words." }));

    [Fact]
    public void O14_an_emergency_has_three_actions_and_27_words_at_the_most()
    {
        Assert.Contains("asks for 4 actions", Only(step => step with { Urgency = "danger", Text = "Add sap. Add no wood. Read the depth. Smell it." }));
        Assert.Contains("has 28 words", Only(step => step with
        {
            Urgency = "danger",
            Advise = "cool-pan",
            Text = "Pour in sap " + string.Join(' ', Enumerable.Repeat("a", 25)),
        }));
    }

    [Fact]
    public void What_is_said_to_a_no_has_a_sentence_for_each_action() =>
        Assert.Contains("answers a no with 2 actions in 1 sentences", Only(step => step with { IfNo = "Open the valve and pour sap in." }));

    [Fact]
    public void A_warning_names_the_place_of_what_it_is_about()
    {
        var step = Shipped.Steps["tank-read"];
        var fault = Assert.Single(FlowWording.Of("mine.yaml", With(step with { Text = "Read it and open it." })));
        Assert.Equal(("mine.yaml", step.Place.Line, step.Place.Column), (fault.File, fault.Line, fault.Column));
        Assert.All(Shipped.Watches.Select(watch => watch.Place).Concat(Shipped.Advices.Select(rule => rule.Place)), place => Assert.True(place.Line > 1));
    }

    private static string Only(Func<Step, Step> change) =>
        string.Join('\n', FlowWording.Of("mine.yaml", With(change(Shipped.Steps["tank-read"]))));

    private static Flow With(Step step) => Shipped with
    {
        Steps = System.Collections.Frozen.FrozenDictionary.ToFrozenDictionary([KeyValuePair.Create(step.Id, step)]),
        Watches = [],
        Advices = [],
    };
}
