using Panside.Guide.Measures;
using Panside.Reckon;

namespace Panside.Tests.Reckon;

/// <summary>Digits, and values as people write them.</summary>
public class FigureTests
{
    [Theory]
    [InlineData(217.449, 1, "217.4")]
    [InlineData(-0.04, 1, "0.0")]
    [InlineData(-0.06, 1, "-0.1")]
    [InlineData(412_345, -3, "412000")]
    [InlineData(11, 0, "11")]
    public void A_figure_shows_its_honest_digits(double value, int digits, string shown) =>
        Assert.Equal(shown, Show.Number("it", value, digits).Text);

    [Theory]
    [InlineData("1 1/2 qt", 1.5)]
    [InlineData("1 pt", 0.5)]
    [InlineData("½ pint", 0.25)]
    [InlineData("2", 2)]
    public void A_container_is_named_as_it_is_sold(string text, double quarts)
    {
        var input = Calculations.All.Single(calculation => calculation.Name == "bottling").Inputs.Single(input => input.Name == "container");
        Assert.Equal(new Measure(quarts, Unit.Quart), InputReader.Read(input, text, UnitSystem.Us).Value!.Measure);
    }

    [Theory]
    [InlineData("Sugar-Maple", "sugar maple")]
    [InlineData("hard maple", "sugar maple")]
    public void A_wood_is_named_as_people_name_it(string text, string species) =>
        Assert.Equal(species, InputReader.Read(Inputs.Species, text, UnitSystem.Us).Value!.Word);

    [Theory]
    [InlineData("60F")]
    [InlineData("60 °F")]
    [InlineData("60f")]
    public void A_calibration_is_written_as_it_is_printed(string text) =>
        Assert.Equal("60F", InputReader.Read(Inputs.SyrupGlass, text, UnitSystem.Us).Value!.Word);
}
