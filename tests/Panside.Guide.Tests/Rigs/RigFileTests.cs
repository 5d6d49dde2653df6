using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Tests.Rigs;

public class RigFileTests
{
    private const string Whole = """
        rig: north shed, two by four
        units: us
        altitude: 900 ft
        pan:
          length: 48 in
          width: 24 in
          channels: 2
          depth: { run: 1 5/8 in, least: 7/8 in, flood: 2 3/4 in, wall: 7 in }
        fire:
          draft: natural
          firebrick: 110 lb
          wood: { species: red oak, moisture: 25 % }
          charge: 6 lb
          interval: 10 min
        feed:
          tank: 40 gal
          float: false
        syrup:
          target: 66.5 Brix
        """;

    /// <summary>Every value is another than its default, so a key that is not read shows.</summary>
    [Fact]
    public void Every_key_of_a_rig_file_is_read()
    {
        var rig = RigFile.Read("rig.yaml", Whole);
        Assert.Equal("north shed, two by four", rig.Name);
        Assert.Same(UnitSystem.Us, rig.Units);
        Assert.Equal(900, rig.Altitude.Feet, 6);
        Assert.Equal(48, rig.PanLength.Inches, 6);
        Assert.Equal(24, rig.PanWidth.Inches, 6);
        Assert.Equal(2, rig.Channels);
        Assert.Equal(1.625, rig.RunDepth.Inches, 6);
        Assert.Equal(0.875, rig.LeastDepth.Inches, 6);
        Assert.Equal(2.75, rig.FloodDepth.Inches, 6);
        Assert.Equal(7, rig.WallDepth.Inches, 6);
        Assert.Equal(Draft.Natural, rig.Draft);
        Assert.Equal(110, rig.Firebrick.Pounds, 6);
        Assert.Equal("red oak", rig.WoodSpecies);
        Assert.Equal(0.25, rig.WoodMoisture, 9);
        Assert.Equal(6, rig.Charge.Pounds, 6);
        Assert.Equal(TimeSpan.FromMinutes(10), rig.Interval);
        Assert.Equal(40, rig.Tank.UsGallons, 6);
        Assert.True(rig.TankIsStated);
        Assert.False(rig.HasFloat);
        Assert.Equal(66.5, rig.Target.Brix, 6);
        Assert.Equal(Whole, rig.Text);
    }

    /// <summary>Common practice for a pan of 8 square feet, no source, but for the lining: 15 lb a square foot.</summary>
    [Theory]
    [InlineData("forced", 7, 8)]
    [InlineData("natural", 5, 9)]
    public void What_a_two_by_four_leaves_open_has_the_stated_defaults(string draft, double charge, double interval)
    {
        var rig = Least("48 in", "24 in", draft);
        Assert.Equal(0, rig.Altitude.Feet);
        Assert.Equal(3, rig.Channels);
        Assert.Equal(1.5, rig.RunDepth.Inches, 6);
        Assert.Equal(0.75, rig.LeastDepth.Inches, 6);
        Assert.Equal(2.5, rig.FloodDepth.Inches, 6);
        Assert.Equal(8, rig.WallDepth.Inches, 6);
        Assert.Equal(120, rig.Firebrick.Pounds, 6);
        Assert.Equal("sugar maple", rig.WoodSpecies);
        Assert.Equal(0.2, rig.WoodMoisture, 9);
        Assert.Equal(charge, rig.Charge.Pounds, 6);
        Assert.Equal(TimeSpan.FromMinutes(interval), rig.Interval);
        Assert.Equal(35.2, rig.Tank.UsGallons, 6);
        Assert.False(rig.TankIsStated);
        Assert.True(rig.HasFloat);
        Assert.Equal(66.9, rig.Target.Brix, 6);
    }

    [Fact]
    public void Defaults_of_brick_charge_and_tank_grow_with_the_pan()
    {
        var rig = Least("72 in", "32 in", "forced");
        Assert.Equal(240, rig.Firebrick.Pounds, 6);
        Assert.Equal(14, rig.Charge.Pounds, 6);
        Assert.Equal(70.4, rig.Tank.UsGallons, 6);
    }

    [Theory]
    [InlineData("23.9 in", 1)]
    [InlineData("24 in", 3)]
    public void A_pan_under_two_feet_is_taken_as_undivided(string length, int channels) =>
        Assert.Equal(channels, Least(length, "20 in", "natural").Channels);

    [Theory]
    [InlineData("us", "gal", "in", "degF", "inHg", "lb", 3.785411784)]
    [InlineData("metric", "L", "cm", "degC", "hPa", "kg", 3.785411784)]
    [InlineData("imperial", "gal", "in", "degF", "inHg", "lb", 4.54609)]
    public void The_unit_system_decides_what_is_shown_and_which_gallon_is_meant(
        string code, string volume, string length, string temperature, string pressure, string mass, double litersOfAGallon)
    {
        var rig = RigFile.Read("r", $"rig: r\nunits: {code}\npan: {{ length: 48 in, width: 24 in }}\nfire: {{ draft: forced }}\nfeed: {{ tank: 10 gal }}\n");
        Assert.Equal(
            [volume, length, temperature, pressure, mass],
            new[] { Dimension.Volume, Dimension.Length, Dimension.Temperature, Dimension.Pressure, Dimension.Mass }
                .Select(dimension => rig.Units.Preferred(dimension).Code()));
        Assert.Equal(10 * litersOfAGallon, rig.Tank.Liters, 6);
    }

    [Theory]
    [InlineData("120 cm", 120)]
    [InlineData("1200 mm", 120)]
    [InlineData("1.2 m", 120)]
    [InlineData("4 ft", 121.92)]
    [InlineData("47 1/2\"", 120.65)]
    [InlineData("47½ in", 120.65)]
    public void A_length_is_written_as_a_person_would(string written, double centimeters) =>
        Assert.Equal(centimeters, Least($"'{written}'", "24 in", "forced").PanLength.Centimeters, 6);

    [Theory]
    [InlineData("two-by-four-forced.yaml")]
    [InlineData("two-by-four-natural.yaml")]
    public void The_built_in_rigs_are_read(string file) =>
        Assert.Equal(8, RigFile.Read(file, RepositoryFiles.Read("flows", "rigs", file)).PanArea.SquareFeet, 6);

    /// <summary>Six flues of 6 in by 4 ft have 12 walls of 2 square feet: 24 beside a floor of 8. Half of 8 square feet by 6 in is 2 cubic feet.</summary>
    [Fact]
    public void Of_two_pans_the_last_is_the_one_with_the_draw_off_and_the_first_feeds_it()
    {
        var rig = RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "flue-and-syrup-pan.yaml"));
        var back = rig.Back!;
        Assert.Equal((3, 1), (rig.Channels, back.Channels));
        (double Is, double Says)[] sizes =
        [
            (rig.PanArea.SquareFeet, 4), (rig.WholeArea.SquareFeet, 12), (rig.RunDepth.Inches, 1.5), (rig.FloodDepth.Inches, 2.5),
            (back.Area.SquareFeet, 8), (back.RunDepth.Inches, 2), (back.LeastDepth.Inches, 1), (back.FloodDepth.Inches, 3),
        ];
        Assert.All(sizes, size => Assert.Equal(size.Says, size.Is, 9));
        Assert.Equal(4, back.HeatedTimes, 9);
        Assert.Equal(2 * 1728 / 231.0, back.InFlues.UsGallons, 6);
    }

    [Fact]
    public void One_pan_in_a_list_is_the_pan()
    {
        const string Rest = "fire: { draft: forced }\n";
        var listed = RigFile.Read("r", "rig: r\nunits: us\npans:\n  - { length: 48 in, width: 24 in, channels: 2, depth: { run: 2 in } }\n" + Rest);
        var plain = RigFile.Read("r", "rig: r\nunits: us\npan: { length: 48 in, width: 24 in, channels: 2, depth: { run: 2 in } }\n" + Rest);
        Assert.Equal(plain with { Text = "", Instruments = [] }, listed with { Text = "", Instruments = [] });
    }

    [Fact]
    public void What_goes_by_size_goes_by_the_area_of_both_pans()
    {
        const string Rest = "fire: { draft: natural }\n";
        var two = RigFile.Read("r", "rig: r\nunits: us\npans:\n  - { length: 4 ft, width: 24 in, flues: { area factor: 3.5 } }\n  - { length: 2 ft, width: 24 in }\n" + Rest);
        var one = RigFile.Read("r", "rig: r\nunits: us\npan: { length: 6 ft, width: 24 in }\n" + Rest);
        Assert.Equal((one.Charge.Pounds, one.Firebrick.Pounds, one.Tank.UsGallons), (two.Charge.Pounds, two.Firebrick.Pounds, two.Tank.UsGallons));
        Assert.Equal((3.5, 0), (two.Back!.HeatedTimes, two.Back.InFlues.Liters));
    }

    [Fact]
    public void The_pan_holds_its_area_times_its_depth() =>
        Assert.Equal(48 * 24 * 1.5 / 231, Least("48 in", "24 in", "forced").PanVolume(Length.FromInches(1.5)).UsGallons, 6);

    private static Rig Least(string length, string width, string draft) =>
        RigFile.Read("r", $"rig: r\nunits: us\npan: {{ length: {length}, width: {width} }}\nfire: {{ draft: {draft} }}\n");
}
