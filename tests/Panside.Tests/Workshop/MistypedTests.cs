using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Workshop.Judging;

namespace Panside.Tests.Workshop;

public class MistypedTests
{
    [Theory]
    [InlineData("two digits swapped", "draw temperature 127.4", "draw temperature 271.4", "draw temperature 214.7")]
    [InlineData("a digit dropped", "draw temperature 17.4", "draw temperature 27.4", "draw temperature 21.4", "draw temperature 217.")]
    [InlineData("ten times as much", "draw temperature 2174")]
    [InlineData("a tenth of it", "draw temperature 21.74")]
    [InlineData("the wrong unit", "draw temperature 217.4 °C", "draw temperature 103")]
    [InlineData("the wrong field", "tank volume 217.4", "draw temperature 22")]
    public void A_slip_leads_to_these_texts(string slip, params string[] texts) => Assert.Equal(texts, TextsOf(slip));

    [Fact]
    public void A_digit_s_neighbors_are_those_on_the_keyboard() => Assert.Equal(
        ["117.4", "317.4", "227.4", "216.4", "218.4", "217.3", "217.5"],
        TextsOf("the digit's neighbor on the keyboard").Select(text => text.Split(' ')[^1]));

    /// <summary>
    /// F6, on few boils: what lies beyond six deviations is questioned or refused with a reason, good readings are not. Fewer slips
    /// of the same seed are the first of the same boils.
    /// </summary>
    [Fact]
    public void F6_slips_are_questioned_and_good_readings_are_not()
    {
        var slips = Thorough.IsAsked ? 24 : 10;
        var typed = MistypedTable.Typed(Setting, slips, seed: 501);
        var beyond = typed.Where(one => one.Kind is not null && one.IsBeyond).ToList();
        Assert.InRange(beyond.Count, 8 * slips / 2, 8 * slips);
        Assert.DoesNotContain(beyond, one => one.Treatment == Treatment.Taken);
        var good = typed.Where(one => one.Kind is null).ToList();
        Assert.InRange(good.Count, 5 * slips, 1000);
        Assert.All(good, one => Assert.Equal(Treatment.Taken, one.Treatment));

        var fewer = MistypedTable.Typed(Setting, 1, seed: 501);
        Assert.Equal(Slip.All.Count, fewer.Count(one => one.Kind is not null));
        Assert.Equal(fewer.Where(one => one.Kind is null), good.Take(fewer.Count(one => one.Kind is null)));
    }

    private static Guide.Knowledge.Setting Setting(int boil) => new ManySettings("panside test").Of(boil);

    private static IEnumerable<string> TextsOf(string slip)
    {
        var reading = new Measure(217.4, Unit.DegreeFahrenheit);
        var read = ImmutableDictionary<ReadingName, Measure>.Empty
            .Add(ReadingName.DrawTemperature, reading).Add(ReadingName.TankVolume, new(22, Unit.Gallon));
        return Slip.All.Single(one => one.Name == slip).Of(
            TypedReading.Of(ReadingName.DrawTemperature, reading, null, UnitSystem.Us), read, UnitSystem.Us);
    }
}
