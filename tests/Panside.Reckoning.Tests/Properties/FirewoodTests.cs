using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Properties;

public class FirewoodTests
{
    private static readonly Mass Kilogram = Mass.FromKilograms(1);

    [Fact]
    public void Every_cord_of_the_table_holds_the_heat_that_the_table_says_at_7000_Btu_a_pound() =>
        Within.Relative(0.002).HoldsOver(Figures.Compare("firewood", "million_btu", r => Cord(r, 0.2).Pounds * 7000 / 1e6));

    [Fact]
    public void Every_cord_weighs_what_the_table_says() =>
        Within.Relative(1e-12).HoldsOver(Figures.Compare("firewood", "dry_lb", r => Cord(r, 0.2).Pounds));

    [Fact]
    public void Green_wood_of_the_table_holds_the_moisture_that_the_documentation_says() =>
        Assert.All(Figures.Of("firewood"), r => Assert.InRange((r["green_lb"] / Cord(r, 0).Pounds) - 1, 0.38, 1.05));

    [Fact]
    public void Air_dry_wood_holds_15_megajoules_a_kilogram_net_which_is_7_percent_under_the_gross_of_the_tables()
    {
        double net = Heat(FirewoodSpecies.SugarMaple, 0.2);
        Within.Relative(0.002).Holds(15.18, net);
        Within.Relative(0.003).Holds(1.072, 7000 * 0.002326 / net);
    }

    [Fact]
    public void Twenty_percent_is_of_the_dry_mass()
    {
        double wholeBasis = (18.7 * (1 - (0.2 / 1.2))) - (2.443 * 0.2 / 1.2);
        Within.Relative(1e-12).Holds(wholeBasis, Heat(null, 0.2));
    }

    [Fact]
    public void Bone_dry_resinous_wood_gains_400_Btu_a_pound() =>
        Within.Relative(1e-9).Holds(400 * 0.002326, Heat(FirewoodSpecies.ShortleafPine, 0) - Heat(FirewoodSpecies.RedOak, 0));

    [Fact]
    public void Wetter_wood_gives_less_heat_a_kilogram_and_weighs_more_a_cord() =>
        Gen.Select(Gen.Double[0, 1.4], Gen.Double[1e-3, 0.1], Gen.Enum<FirewoodSpecies>()).Holds((m, more, species) =>
            Heat(species, m + more) < Heat(species, m)
            && Firewood.MassOfCord(species, m + more) > Firewood.MassOfCord(species, m));

    [Fact]
    public void The_heat_of_the_dry_part_of_a_cord_is_not_lost_by_weighing_it_wet() =>
        Gen.Select(Gen.Double[0, 1.5], Gen.Enum<FirewoodSpecies>()).Holds((m, species) =>
        {
            double wet = Firewood.HeatAsFired(species, Firewood.MassOfCord(species, m), m).Megajoules;
            Mass dry = Firewood.MassOfCord(species, 0);
            double lost = 2.443 * m * dry.Kilograms;
            return Math.Abs(wet + lost - Firewood.HeatAsFired(species, dry, 0).Megajoules) < 1e-6;
        });

    [Fact]
    public void Every_name_of_the_table_is_known_in_any_case()
    {
        Assert.All(Figures.Of("firewood"), r => Assert.NotNull(FirewoodNames.FromName(r.Text("species").ToUpperInvariant())));
        Assert.All(Enum.GetValues<FirewoodSpecies>(), s => Assert.Equal(s, FirewoodNames.FromName(FirewoodNames.NameOf(s))));
        Assert.All(FirewoodNames.Known, n => Assert.NotNull(FirewoodNames.FromName(n.Replace(' ', '-'))));
        Assert.Null(FirewoodNames.FromName("balsa"));
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.51)]
    [InlineData(20)]
    [InlineData(double.NaN)]
    public void Other_moistures_are_refused(double moisture)
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Heat(null, moisture));
        Assert.Throws<ArgumentOutOfRangeException>(() => Firewood.MassOfCord(FirewoodSpecies.Ash, moisture));
    }

    [Fact]
    public void No_wood_gives_no_heat() =>
        Assert.Equal(0, Firewood.HeatAsFired(null, Mass.FromKilograms(0), 0.2).Megajoules);

    [Fact]
    public void Less_than_no_wood_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Firewood.HeatAsFired(null, Mass.FromKilograms(-1), 0.2));

    private static Mass Cord(FigureRow row, double moisture) =>
        Firewood.MassOfCord(FirewoodNames.FromName(row.Text("species"))!.Value, moisture);

    private static double Heat(FirewoodSpecies? species, double moisture) =>
        Firewood.HeatAsFired(species, Kilogram, moisture).Megajoules;
}
