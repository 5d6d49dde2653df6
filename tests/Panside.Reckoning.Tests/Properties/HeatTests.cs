using CsCheck;
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
        Gen.Select(Gen.Double[90, 107], Gen.Double[0.01, 1]).Sample((t, more) => Latent(t + more) < Latent(t));

    [Theory]
    [InlineData(89.9)]
    [InlineData(108.1)]
    [InlineData(212)]
    public void Latent_heat_elsewhere_is_refused(double celsius) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Latent(celsius));

    [Fact]
    public void Every_row_of_firebrick_is_met() =>
        Within.Relative(1e-12).HoldsOver(Figures.Compare("firebrick", "cp", r => Brick(r["T_C"])));

    [Fact]
    public void Firebrick_rises_without_a_step_across_every_seam() =>
        Gen.Select(Gen.OneOf(Gen.Const(400.0), Gen.Const(600.0), Gen.Const(800.0), Gen.Const(1000.0)), Gen.Double[1e-9, 1]).Sample((seam, near) =>
            Brick(seam + near) >= Brick(seam - near) && Brick(seam + near) - Brick(seam - near) < 0.5);

    [Fact]
    public void A_hot_brick_of_the_other_handbook_agrees_within_half_a_percent() => Within.Relative(0.005).Holds(960, Brick(205));

    [Theory]
    [InlineData(-1)]
    [InlineData(1201)]
    public void Firebrick_elsewhere_is_refused(double celsius) => Assert.Throws<ArgumentOutOfRangeException>(() => Brick(celsius));

    private static double Latent(double celsius) => Steam.LatentHeatMegajoulesPerKilogram(Temperature.FromCelsius(celsius)) * 1000;

    private static double Brick(double celsius) => Firebrick.SpecificHeatJoulesPerKilogramKelvin(Temperature.FromCelsius(celsius));
}
