using Panside.Commands;
using Panside.Guide.Measures;
using Panside.Reckon;

namespace Panside.Tests.Reckon;

/// <summary>What a person at a terminal is asked.</summary>
public class QuestionsTests
{
    [Fact]
    public void A_missing_input_is_asked_for_with_its_unit_and_an_example()
    {
        var (values, asked) = Ask("hydrometer", ["211"], ("reading", "59"));
        Assert.Equal("The temperature of the sample, in °F (like 211F): ", Assert.Single(asked));
        Assert.Equal("211 °F", values["temperature"].ToString());
    }

    [Fact]
    public void The_unit_that_is_asked_for_is_the_one_of_the_unit_system()
    {
        var (values, asked) = Ask(UnitSystem.Metric, "hydrometer", ["99.4"], ("reading", "59"));
        Assert.Contains("in °C", asked[0], StringComparison.Ordinal);
        Assert.Equal("99.4 °C", values["temperature"].ToString());
    }

    [Fact]
    public void An_answer_that_is_not_believed_is_asked_for_again_with_the_reason()
    {
        var (values, asked) = Ask("hydrometer", ["211C", "211F"], ("reading", "59"));
        Assert.Equal(2, asked.Count);
        Assert.Contains("211 °C is outside", asked[1], StringComparison.Ordinal);
        Assert.Equal("211 °F", values["temperature"].ToString());
    }

    [Fact]
    public void Of_several_ways_each_is_offered_until_one_is_known()
    {
        var (values, asked) = Ask("draw-point", ["", "", "900"]);
        Assert.Equal(3, asked.Count);
        Assert.All(asked, question => Assert.Contains("Enter if you do not know it", question, StringComparison.Ordinal));
        Assert.Equal("900 ft", values["altitude"].ToString());
    }

    [Fact]
    public void What_an_answer_needs_is_asked_for_next()
    {
        var (values, asked) = Ask("off-target", ["59", "211"]);
        Assert.Equal(2, asked.Count);
        Assert.Equal("211 °F", values["temperature"].ToString());
    }

    [Fact]
    public void What_has_a_usual_value_is_not_asked_for()
    {
        var (values, asked) = Ask("yield", [], ("volume", "100 gal"), ("brix", "2"));
        Assert.Empty(asked);
        Assert.True(values["target"].IsUsual);
    }

    [Fact]
    public void No_answer_is_a_refusal()
    {
        Assert.Contains("--temperature is missing", Assert.Throws<UnusableException>(() => Ask("hydrometer", [])).Message, StringComparison.Ordinal);
        Assert.Contains("One of these", Assert.Throws<UnusableException>(() => Ask("draw-point", ["", "", ""])).Message, StringComparison.Ordinal);
    }

    private static (IReadOnlyDictionary<string, Value> Values, List<string> Asked) Ask(
        string name, string[] answers, params (string, string)[] typed) => Ask(UnitSystem.Us, name, answers, typed);

    private static (IReadOnlyDictionary<string, Value> Values, List<string> Asked) Ask(
        UnitSystem units, string name, string[] answers, params (string Name, string Text)[] typed)
    {
        var asked = new List<string>();
        var left = new Queue<string>(answers);
        var questions = new Questions(Calculations.All.Single(calculation => calculation.Name == name), units, question =>
        {
            asked.Add(question);
            return left.TryDequeue(out var answer) ? answer : null;
        });
        return (questions.Gather(typed.ToDictionary(one => one.Name, one => one.Text)), asked);
    }
}
