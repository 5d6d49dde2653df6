using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class HeatTests
{
    [Fact]
    public void Every_row_of_latent_heat_agrees_within_a_hundredth_of_a_percent() =>
        Within.Relative(0.0001).HoldsOver(Figures.Compare("latent-heat", "latent", r => Latent(r["T_C"])));

    [Fact]
    public void An_independent_library_agrees_on_latent_heat_over_the_whole_range()
    {
        Within.Absolute(0.2).HoldsOver(Figures.Compare("latent", "latent_kJ_per_kg", r => Latent(r["T_C"])));
        Within.Absolute(0.2).HoldsOver(Figures.Compare("water", "latent_kJ_per_kg", r => Latent(r["T_C"])));
    }

    [Fact]
    public void Hotter_water_takes_less() =>
        Gen.Select(Gen.Double[90, 107], Gen.Double[0.01, 1]).Holds((t, more) => Latent(t + more) < Latent(t));

    [Theory]
    [InlineData(89.9)]
    [InlineData(108.1)]
    [InlineData(212)]
    public void Latent_heat_elsewhere_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Latent(celsius));

    [Fact]
    public void Every_row_of_firebrick_is_met() =>
        Within.Relative(1e-12).HoldsOver(Figures.Compare("firebrick", "cp", r => Brick(r["T_C"])));

    [Theory]
    [InlineData(410, 958.05)]
    [InlineData(590, 994.95)]
    [InlineData(610, 998.2)]
    [InlineData(790, 1019.8)]
    [InlineData(810, 1021.8)]
    [InlineData(990, 1036.2)]
    [InlineData(1010, 1037.85)]
    [InlineData(1190, 1053.15)]
    public void Firebrick_runs_straight_between_its_rows(double celsius, double expected) =>
        Within.Relative(1e-9).Holds(expected, Brick(celsius));

    [Fact]
    public void Firebrick_rises_without_a_step_across_every_seam() =>
        Gen.Select(Gen.OneOf(Gen.Const(400.0), Gen.Const(600.0), Gen.Const(800.0), Gen.Const(1000.0)), Gen.Double[1e-9, 1]).Holds((seam, near) =>
            Brick(seam + near) >= Brick(seam - near) && Brick(seam + near) - Brick(seam - near) < 0.5);

    [Fact]
    public void A_hot_brick_of_the_other_handbook_agrees_within_half_a_percent() => Within.Relative(0.005).Holds(960, Brick(205));

    [Fact]
    public void A_hundred_kilograms_that_cool_by_400_degrees_give_up_the_latent_heat_of_17_kilograms_of_water()
    {
        double megajoules = Released(100, 800, 400);
        Within.Relative(0.02).Holds(39, megajoules);
        Within.Relative(0.04).Holds(17, megajoules / 2.2565);
    }

    [Fact]
    public void Heat_given_up_in_two_steps_is_that_of_one_and_its_slope_is_the_specific_heat() =>
        Gen.Select(Gen.Double[0, 1199], Gen.Double[0, 1199], Gen.Double[0, 1199]).Holds((a, b, c) =>
            Math.Abs(Released(10, a, b) + Released(10, b, c) - Released(10, a, c)) < 1e-9
            && Math.Abs((Released(1, a + 1, a) * 1e6) - Brick(a + 0.5)) < 0.06);

    [Fact]
    public void Brick_from_the_cold_gives_what_its_first_row_says() =>
        Within.Relative(1e-12).Holds(0.956 * 3, Released(10, 300, 0));

    [Theory]
    [InlineData(-1, 20, 20)]
    [InlineData(1, -1, 20)]
    [InlineData(1, 20, 1400)]
    public void Heat_of_no_brick_is_refused(double kilograms, double from, double to) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Released(kilograms, from, to));

    [Theory]
    [InlineData(-1)]
    [InlineData(1201)]
    public void Firebrick_elsewhere_is_refused(double celsius) => Assert.Throws<ArgumentOutOfRangeException>(() => Brick(celsius));

    private static double Released(double kilograms, double from, double to) => Firebrick.HeatOnCooling(
        Mass.FromKilograms(kilograms), Temperature.FromCelsius(from), Temperature.FromCelsius(to)).Megajoules;

    private static double Latent(double celsius) => Steam.LatentHeatMegajoulesPerKilogram(Temperature.FromCelsius(celsius)) * 1000;

    private static double Brick(double celsius) => Firebrick.SpecificHeatJoulesPerKilogramKelvin(Temperature.FromCelsius(celsius));
}
