using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Sessions;

/// <summary>A draw goes by the course of its thermometer and by what its pails held, not by one reading.</summary>
public class DrawCourseTests
{
    /// <summary>Worked by hand: three points, mean -2 and 7/3, sums of squares 8 and of products 6.</summary>
    [Fact]
    public void With_nothing_expected_of_the_slope_the_line_is_that_of_least_squares()
    {
        var line = RisingLine.Through([(-4, 1), (-2, 2), (0, 4)], 0.1, (0, 1e6), bends: 0);
        Assert.Equal(0.75, line.Slope, 6);
        Assert.Equal((7.0 / 3) + 1.5, line.Level, 6);
        Assert.Equal((7.0 / 3) + 3, line.After(2), 6);
    }

    [Fact]
    public void One_reading_alone_keeps_the_slope_that_was_expected()
    {
        var line = RisingLine.Through([(0, 103)], 0.1, (0.2, 0.1), bends: 0.03);
        Assert.Equal(103, line.Level, 9);
        Assert.Equal(0.2, line.Slope, 9);
    }

    [Fact]
    public void A_first_reading_a_hair_over_the_point_after_a_flat_course_is_read_again_and_a_second_one_opens()
    {
        var boil = Conversation.AtSteadyBoil();
        var point = Course(boil, minutes: 2, 0.7, 0.7, 0.7);
        boil.After(2);
        Draw(boil, point + 0.04);
        Assert.Equal("boiling", boil.State.Step);
        boil.After(0.6);
        Draw(boil, point + 0.04);
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void A_first_reading_over_the_point_is_held_for_two_minutes_at_the_most()
    {
        var boil = Conversation.AtSteadyBoil();
        var point = Course(boil, minutes: 2, 0.7, 0.7, 0.7);
        boil.After(2);
        Draw(boil, point + 0.04);
        boil.After(2.6);
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void A_course_that_rises_fast_opens_before_a_reading_is_over_the_point()
    {
        var boil = Conversation.AtSteadyBoil();
        Course(boil, minutes: 2, 3.0, 1.8, 0.6);
        boil.After(1.1);
        Assert.Equal("draw-open", boil.State.Step);
        Assert.Contains("rising fast", boil.All.OfType<AdviceLine>().Last(line => line.Advice.Action == "open-draw").Advice.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_course_that_nobody_looked_at_for_minutes_asks_for_the_thermometer_and_opens_nothing()
    {
        var boil = Conversation.AtSteadyBoil();
        Course(boil, minutes: 2, 3.4, 2.5, 1.6);
        boil.After(4);
        Assert.Equal("boiling", boil.State.Step);
        Assert.Equal("draw-temperature", boil.Open!.Ask);
    }

    [Fact]
    public void A_thin_pail_raises_the_point_of_the_next_draw_and_the_advice_says_so()
    {
        var boil = Conversation.AtSteadyBoil();
        var before = PointFahrenheit(boil);
        DrawOnce(boil, before + 0.4, glass: 56.5);
        var shift = Now(boil).DrawShift;
        Assert.InRange(shift, 0.3, 1.5);
        Assert.True(PointFahrenheit(boil) > before + 0.1, "the point stands where it stood");
        boil.After(17);
        Draw(boil, before + 1.2);
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        Assert.Contains("(batch: +", boil.All.OfType<AdviceLine>().Last(line => line.Advice.Action == "open-draw").Advice.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void The_shift_is_bounded_whatever_the_glass_shows()
    {
        var boil = Conversation.AtSteadyBoil();
        DrawOnce(boil, PointFahrenheit(boil) + 0.4, glass: 48);
        Assert.InRange(Now(boil).DrawShift, -1.5, 1.5);
    }

    [Fact]
    public void Opened_late_the_draw_off_is_shut_later_so_that_the_pail_ends_on_target()
    {
        var (early, late) = (Conversation.AtSteadyBoil(), Conversation.AtSteadyBoil());
        Draw(early, PointFahrenheit(early) + 0.2);
        Draw(late, PointFahrenheit(late) + 1.4);
        early.Say("open");
        late.Say("open");
        Assert.True(Now(late).ShutUnder < Now(early).ShutUnder, "opened late it is not drawn on");
    }

    [Fact]
    public void A_draw_off_opened_far_too_early_is_told_shut_and_breaks_nothing()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 213", "open", "draw 212.5");
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "close-draw");
    }

    [Fact]
    public void Opened_shut_and_opened_again_within_minutes_is_one_draw()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 218.6", "open", "drew 1 qt");
        boil.After(1);
        boil.Say("open", "drew 1 qt");
        Assert.Equal(1.892706, Assert.Single(boil.State.Syrup).Liters, 5);
    }

    [Fact]
    public void The_hand_at_the_valve_is_learned_from_advice_and_deed()
    {
        var boil = Conversation.AtSteadyBoil();
        Assert.Equal(40, Now(boil).SecondsToOpen);
        boil.Say("draw 218.6");
        boil.After(2);
        boil.Say("open");
        Assert.InRange(Now(boil).SecondsToOpen, 70, 90);
    }

    [Fact]
    public void Foam_that_climbs_comes_before_a_draw()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("foam rising", "draw 218.4");
        Assert.Equal("boiling", boil.State.Step);
        boil.Say("defoamer");
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void S4_no_foam_holds_back_a_draw_that_stands_well_over_its_point()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("foam rising", "draw 220");
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void A_draw_off_that_rises_while_it_is_open_is_told_as_a_valve_that_does_not_keep_up()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 219", "open");
        boil.After(1.5);
        boil.Say("draw 219.8");
        Assert.Contains(boil.Answers.OfType<AdviceLine>(), line => line.Advice.Text.StartsWith("Pour a little sap", StringComparison.Ordinal));
    }

    [Fact]
    public void A_valve_stays_open_for_no_old_reading_and_no_falling_one()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 219", "open");
        boil.After(1.5);
        boil.Say("draw 219.8");
        Assert.True(Now(boil).IsDrawOutrun);
        boil.After(2);
        Assert.False(Now(boil).IsDrawOutrun);
        Assert.Contains(boil.All.OfType<AdviceLine>(), line => line.Advice.Action == "close-draw" && line.Advice.Urgency == "now");
        boil.Say("draw 219.6");
        Assert.False(Now(boil).IsDrawOutrun);
    }

    [Theory]
    [InlineData("depth 1.1")]
    [InlineData("simmering")]
    public void Two_readings_over_the_point_open_from_whatever_step(string elsewhere)
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 217", elsewhere);
        Assert.NotEqual("boiling", boil.State.Step);
        var point = Now(boil).DrawPointToday.Fahrenheit;
        boil.After(1);
        boil.Say(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"draw {point + 0.2:F1}"));
        boil.After(1);
        boil.Say(string.Create(System.Globalization.CultureInfo.InvariantCulture, $"draw {point + 0.3:F1}"));
        Assert.Equal("draw-open", boil.State.Step);
    }

    [Fact]
    public void A_look_at_boiling_water_far_from_the_one_before_within_the_hour_is_asked_about()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("water 211.5");
        boil.After(16);
        boil.Say("water 213.2");
        Assert.Contains("within the hour", boil.Only<QuestionLine>().Text, StringComparison.Ordinal);
        var before = Now(boil).DrawPointToday;
        boil.Say("yes");
        Assert.True(Now(boil).DrawPointToday > before, "what is insisted on counts");
    }

    /// <summary>
    /// By hand, for a quart at 68.9 Brix and a target of 66.9 with sap of 2: 2.0 / 64.9 of its mass, 3.1 %; syrup at 95 °C weighs 1.30 kg/L, sap 0.97,
    /// so 4.1 % of its volume, 0.165 cups, 2.6 tablespoons.
    /// </summary>
    [Fact]
    public void A_heavy_batch_is_told_in_spoons_a_quart_and_to_be_tested_again()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 218.6", "open", "drew 1 qt");
        var heavy = boil.State with { Syrup = [boil.State.Syrup[0] with { Brix = 68.9, By = DensityBy.Hydrometer }] };
        var told = KitchenMeasures.Told(new(boil.Session.Setting, heavy))!;
        Assert.Contains("2 1/2 tablespoons a quart of hot sap, then test again", told, StringComparison.Ordinal);
        Assert.Contains("2.0 Brix over", told, StringComparison.Ordinal);
    }

    /// <summary>
    /// By hand, for a draw at 71.4 Brix as above: 4.5 / 64.9 of its mass, 6.9 %; syrup at 95 °C weighs 1.32 kg/L, sap 0.97, so 9.4 % of its volume,
    /// 0.38 cups a quart.
    /// </summary>
    [Fact]
    public void A_heavy_draw_of_a_thin_batch_is_told_to_be_thinned_and_not_to_be_boiled_off()
    {
        var boil = Conversation.AtSteadyBoil();
        DrawOnce(boil, PointFahrenheit(boil) + 0.4, glass: 52);
        boil.After(17);
        Draw(boil, PointFahrenheit(boil) + 0.8);
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        var glass = SyrupHydrometer.ReadingOnTarget(SugarContent.FromBrix(71.4), Temperature.FromFahrenheit(205)).Brix;
        boil.Say("open");
        boil.After(1);
        boil.Say("drew 1 qt", "depth 1.5", "sample 205", $"hydrometer {glass.ToString("0.0", CultureInfo.InvariantCulture)}");
        if (boil.State.Doubted is not null)
        {
            boil.Say("yes");
        }

        Assert.StartsWith("Boil off", Figures.Of(Now(boil), "batch-remedy"), StringComparison.Ordinal);
        Assert.Equal("too-heavy", boil.State.Step);
        Assert.StartsWith("Stir in 3/8 cup a quart of hot sap;", boil.Open!.Text, StringComparison.Ordinal);
        Assert.EndsWith("test it again then.", boil.Open.Because, StringComparison.Ordinal);
    }

    [Fact]
    public void A_cup_whose_temperature_is_that_of_another_sample_tells_no_density()
    {
        var boil = Conversation.AtSteadyBoil();
        boil.Say("draw 218.6", "open", "drew 1 qt", "sample 205");
        boil.After(15);
        boil.Say("hydrometer 59");
        Assert.Null(boil.State.Syrup[0].Brix);
        boil.Say("sample 70");
        Assert.NotNull(boil.State.Syrup[0].Brix);
    }

    private static void DrawOnce(Conversation boil, double fahrenheit, double glass)
    {
        Draw(boil, fahrenheit);
        boil.Say("open");
        boil.After(1);
        boil.Say("drew 1 qt", "sample 205", $"hydrometer {glass.ToString(CultureInfo.InvariantCulture)}");
        if (boil.Session.State.Doubted is not null)
        {
            boil.Say("yes");
        }
    }

    /// <summary>The draw-off read every so many minutes, so far under its point, in °F. Gives the point.</summary>
    private static double Course(Conversation boil, double minutes, params double[] under)
    {
        var point = PointFahrenheit(boil);
        foreach (var one in under)
        {
            boil.After(minutes);
            Draw(boil, point - one);
        }

        return point;
    }

    private static Situation Now(Conversation boil) => new(boil.Session.Setting, boil.State);

    private static double PointFahrenheit(Conversation boil) => Now(boil).DrawPointToday.Fahrenheit;

    private static void Draw(Conversation boil, double fahrenheit) => boil.Say($"draw {fahrenheit.ToString("0.00", CultureInfo.InvariantCulture)}");
}
