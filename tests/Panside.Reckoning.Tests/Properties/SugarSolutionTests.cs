using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class SugarSolutionTests
{
    private static readonly Gen<double> Brix = Gen.Double[0, 85];
    private static readonly Gen<double> Celsius = Gen.Double[0, 110];

    [Theory]
    [InlineData("t4", 4)]
    [InlineData("t15.5556", 15.5556)]
    [InlineData("t20", 20)]
    [InlineData("t40", 40)]
    [InlineData("t60", 60)]
    [InlineData("t80", 80)]
    [InlineData("t100", 100)]
    [InlineData("t104", 104)]
    public void Every_row_of_the_polynomial_agrees_to_its_last_digit(string column, double celsius) =>
        Within.Absolute(0.0051).HoldsOver(Figures.Compare("density", column, r => Density(r["brix"], celsius)));

    [Fact]
    public void Every_row_of_the_handbook_agrees_at_20_degrees()
    {
        Within.Row[] rows = Figures.Compare("density-20C", "handbook", r => Density(r["brix"], 20));
        Within.Absolute(0.4).HoldsOver([.. rows.Where((_, i) => Figures.Of("density-20C")[i]["brix"] <= 75)]);
        Within.Absolute(0.83).HoldsOver(rows);
    }

    [Fact]
    public void The_older_circular_agrees_within_seven_hundredths_of_a_Brix() =>
        Within.Absolute(0.07).HoldsOver(Figures.Compare(
            "density-20C-circular",
            "brix",
            r => SugarSolution.SugarContentOf(KilogramsPerCubicMeter(r["density"]), Temperature.FromCelsius(20)).Brix));

    [Fact]
    public void Plain_water_agrees_with_an_independent_library_up_to_a_boil() =>
        Within.Absolute(0.03).HoldsOver(Figures.Compare("latent-heat", "density_liquid", r => Density(0, r["T_C"])));

    [Fact]
    public void Every_row_of_specific_heat_agrees_and_so_does_the_other_form()
    {
        Within.Absolute(0.0006).HoldsOver(Figures.Compare("specific-heat", "pure", SpecificHeat));
        Within.Relative(0.002).HoldsOver(Figures.Compare("specific-heat", "pure_other", SpecificHeat));
    }

    [Fact]
    public void The_form_for_factory_juice_lies_1_to_9_percent_lower_in_syrup() =>
        Assert.All(
            Figures.Of("specific-heat").Where(r => r["brix"] >= 60),
            r => Assert.InRange(r["factory_juice"] / SpecificHeat(r), 0.90, 0.95));

    [Fact]
    public void Sugar_to_density_and_back_returns() =>
        Gen.Select(Brix, Celsius).Holds((brix, t) =>
            Math.Abs(SugarSolution.SugarContentOf(KilogramsPerCubicMeter(Density(brix, t)), Temperature.FromCelsius(t)).Brix - brix) < 1e-8);

    [Fact]
    public void More_sugar_is_denser_at_any_temperature() =>
        Gen.Select(Gen.Double[0, 84.9], Gen.Double[1e-3, 0.1], Celsius).Holds((brix, more, t) =>
            Density(brix + more, t) > Density(brix, t));

    [Fact]
    public void Warmer_is_thinner_above_ten_degrees() =>
        Gen.Select(Brix, Gen.Double[10, 109], Gen.Double[0.01, 1]).Holds((brix, t, more) =>
            Density(brix, t + more) < Density(brix, t));

    [Theory]
    [InlineData(85.1, 20)]
    [InlineData(66, -0.1)]
    [InlineData(66, 110.1)]
    public void Beyond_the_limits_is_refused(double brix, double celsius)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Density(brix, celsius));
        Assert.Throws<ArgumentOutOfRangeException>(() => SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(
            SugarContent.FromBrix(brix), Temperature.FromCelsius(celsius)));
    }

    [Theory]
    [InlineData(998.1)]
    [InlineData(1447)]
    public void A_density_of_no_solution_is_refused(double density) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SugarSolution.SugarContentOf(KilogramsPerCubicMeter(density), Temperature.FromCelsius(20)));

    [Fact]
    public void The_ends_of_the_range_are_inside() =>
        Celsius.Holds(t =>
        {
            Temperature at = Temperature.FromCelsius(t);
            return SugarSolution.SugarContentOf(KilogramsPerCubicMeter(Density(0, t)), at).Brix < 1e-8
                && SugarSolution.SugarContentOf(KilogramsPerCubicMeter(Density(85, t)), at).Brix > 85 - 1e-8;
        });

    private static double SpecificHeat(FigureRow row) => SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(
        SugarContent.FromBrix(row["brix"]), Temperature.FromCelsius(row["t_C"]));

    private static double Density(double brix, double celsius) =>
        SugarSolution.DensityOf(SugarContent.FromBrix(brix), Temperature.FromCelsius(celsius)).KilogramsPerCubicMeter;

    private static Density KilogramsPerCubicMeter(double x) => Quantities.Density.FromKilogramsPerCubicMeter(x);
}
