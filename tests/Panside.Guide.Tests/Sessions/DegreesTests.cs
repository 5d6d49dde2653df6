using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Who reads a thermometer in one degree is told no limit in the other, whatever units the rig has.</summary>
public class DegreesTests
{
    [Fact]
    public void A_thermometer_in_degrees_Celsius_gets_its_limits_so_on_a_rig_of_US_units()
    {
        var boil = Boiling();
        Assert.EndsWith("°F", Figure(boil, "draw-point"), StringComparison.Ordinal);
        boil.Say("draw 100.2 C");
        Assert.All(new[] { "draw-point", "draw-point-low", "draw-elevation", "boiling-water", "draw-temperature" }, figure => Assert.EndsWith("°C", Figure(boil, figure), StringComparison.Ordinal));
        boil.Say("draw 211.4 F");
        Assert.EndsWith("°F", Figure(boil, "draw-point"), StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_asked_is_asked_in_the_degree_of_the_last_reading_and_a_bare_number_is_one_of_it()
    {
        var boil = Boiling();
        boil.Say("draw 100.2 C");
        boil.After(11);
        boil.Say("depth 1.5", "tank 28");
        for (var minutes = 0; minutes < 30 && boil.Open?.Ask != "draw-temperature"; minutes++)
        {
            boil.Say("wood", "foam low", "boil rolling", "depth 1.5", "gradient gone");
            boil.After(1);
        }

        Assert.Equal(Unit.DegreeCelsius, boil.Open?.Unit);
        Assert.InRange(boil.Open!.Low!.Value, 95, 105);
        boil.Say("100.4");
        Assert.Equal(new Measure(100.4, Unit.DegreeCelsius), Assert.IsType<Reading>(boil.Only<HeardLine>().As).Measure);
    }

    [Theory]
    [InlineData("draw 125 C", "°C", "°F")]
    [InlineData("draw 290 F", "°F", "°C")]
    public void What_is_refused_or_doubted_says_its_range_in_the_degree_that_was_typed(string said, string told, string not)
    {
        var boil = Boiling();
        boil.Say(said);
        var text = boil.Answers.OfType<RefusedLine>().Select(line => line.Why).Concat(boil.Answers.OfType<QuestionLine>().Select(line => line.Text)).First();
        Assert.Contains(told, text, StringComparison.Ordinal);
        Assert.DoesNotContain(not, text, StringComparison.Ordinal);
    }

    private static Conversation Boiling() => Conversation.AtSteadyBoil(Knowledge.Guidance.Practised, members: Conversation.Few);

    private static string Figure(Conversation boil, string name) => Figures.Of(new Situation(boil.Session.Setting, boil.State), name);
}
