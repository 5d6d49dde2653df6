using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class WoodAndTimeTests
{
    private static readonly SugarContent Target = SugarContent.FromBrix(66);
    private static readonly Temperature Boiling = Temperature.FromCelsius(99.974);

    [Fact]
    public void A_gallon_of_syrup_from_2_Brix_takes_what_9500_Btu_a_gallon_of_water_give() =>
        Within.Relative(0.012).Holds(42.2 * 9500, OfSyrup(1).Btu);

    [Theory]
    [InlineData(25, 0.42)]
    [InlineData(15, 0.25)]
    [InlineData(10, 0.17)]
    public void The_published_gallons_a_cord_come_out_at_their_efficiency(double gallons, double onGrossHeat)
    {
        // Published on 24 million Btu gross a cord; ours is on the lower heating value as fired.
        double cordBtu = Firewood.HeatAsFired(
            FirewoodSpecies.SugarMaple, Firewood.MassOfCord(FirewoodSpecies.SugarMaple, 0.2), 0.2).Btu;
        Mass wood = WoodForSyrup.MassFor(OfSyrup(gallons), FirewoodSpecies.SugarMaple, 0.2, onGrossHeat * 24e6 / cordBtu);
        Within.Relative(0.03).Holds(1, WoodForSyrup.CordsOf(wood, FirewoodSpecies.SugarMaple, 0.2));
    }

    [Fact]
    public void The_wood_gives_the_heat_that_was_asked_at_its_efficiency() =>
        Gen.Select(Gen.Double[0, 1.5], Gen.Double[0.05, 0.85], Gen.Enum<FirewoodSpecies>()).Holds((moisture, efficiency, species) =>
        {
            Energy asked = OfSyrup(1);
            Mass wood = WoodForSyrup.MassFor(asked, species, moisture, efficiency);
            Energy given = Firewood.HeatAsFired(species, wood, moisture) * efficiency;
            return Math.Abs((given / asked) - 1) < 1e-12;
        });

    [Fact]
    public void Liquid_on_target_takes_its_warming_alone()
    {
        Portion cold = Portion.OfMass(Mass.FromKilograms(10), Target, Temperature.FromCelsius(20));
        double specific = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(Target, Boiling);
        Within.Relative(1e-9).Holds(
            10 * specific * (Boiling.Celsius - 20) / 1000, WoodForSyrup.UsefulHeat(cold, Target, Boiling).Megajoules);
    }

    [Fact]
    public void Wetter_wood_and_a_worse_fire_take_more() =>
        Gen.Select(Gen.Double[0, 1.4], Gen.Double[0.06, 0.8], Gen.Double[0.001, 0.01]).Holds((moisture, efficiency, more) =>
            Wood(moisture + more, efficiency) > Wood(moisture, efficiency) && Wood(moisture, efficiency - more) > Wood(moisture, efficiency));

    [Theory]
    [InlineData(0.04)]
    [InlineData(0.86)]
    [InlineData(25)]
    public void An_efficiency_that_no_fire_has_is_refused(double efficiency) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Wood(0.2, efficiency));

    [Fact]
    public void Thirty_five_gallons_at_eight_an_hour_take_four_hours_and_a_quarter() =>
        Within.Absolute(0.01).Holds(4.275, Hours(35, 8));

    [Fact]
    public void Half_the_rate_takes_twice_the_time_and_more_sap_longer() =>
        Gen.Select(Gen.Double[1, 500], Gen.Double[1, 100], Gen.Double[0.1, 10]).Holds((gallons, rate, more) =>
            Math.Abs((2 * Hours(gallons, rate)) - Hours(gallons, rate / 2)) < 1e-6 * Hours(gallons, rate / 2)
            && Hours(gallons + more, rate) > Hours(gallons, rate));

    [Fact]
    public void A_pan_of_two_by_four_feet_evaporates_8_gallons_an_hour_and_12_with_a_blower()
    {
        Within.Relative(1e-9).Holds(8, BoilingTime.TypicalEvaporation(Area.FromSquareFeet(8), false).UsGallonsPerHour);
        Within.Relative(1e-9).Holds(12, BoilingTime.TypicalEvaporation(Area.FromSquareFeet(8), true).UsGallonsPerHour);
    }

    [Fact]
    public void No_rate_and_no_pan_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Hours(35, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingTime.TypicalEvaporation(Area.FromSquareFeet(0.1), true));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingTime.TypicalEvaporation(Area.FromSquareMeters(21), true));
    }

    [Fact]
    public void The_limits_of_rate_and_area_are_inside()
    {
        Assert.True(Hours(1, 0.1001 / 3.7854) > 30);
        Assert.True(Hours(1, 100_000 / 3.786) < 0.001);
        Assert.Throws<ArgumentOutOfRangeException>(() => Hours(1, 0.0999 / 3.7854));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hours(1, 100_001 / 3.7854));
        Assert.True(BoilingTime.TypicalEvaporation(Area.FromSquareMeters(0.05), false).UsGallonsPerHour > 0.5);
        Assert.True(BoilingTime.TypicalEvaporation(Area.FromSquareMeters(20), false).UsGallonsPerHour > 200);
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingTime.TypicalEvaporation(Area.FromSquareMeters(0.0499), false));
        Assert.Throws<ArgumentOutOfRangeException>(() => BoilingTime.TypicalEvaporation(Area.FromSquareMeters(20.01), false));
    }

    private static double Hours(double gallons, double rate) =>
        BoilingTime.For(Sap(gallons), Target, VolumeRate.FromUsGallonsPerHour(rate)).TotalHours;

    private static Energy OfSyrup(double gallons) => WoodForSyrup.UsefulHeat(Sap(gallons * 43.3), Target, Boiling);

    private static double Wood(double moisture, double efficiency) =>
        WoodForSyrup.MassFor(OfSyrup(1), null, moisture, efficiency).Kilograms;

    private static Portion Sap(double gallons) =>
        Portion.OfVolume(Volume.FromUsGallons(gallons), SugarContent.FromBrix(2), Temperature.FromFahrenheit(40));
}
