using Panside.Guide.Measures;

namespace Panside.Guide.Tests.Hearing;

public class FeetAndInchesTests
{
    [Theory]
    [InlineData("4 ft 2 in", 50)]
    [InlineData("4 ft 2 1/2 in", 50.5)]
    [InlineData("4ft 2", 50)]
    [InlineData("4' 2\"", 50)]
    [InlineData("4'2½\"", 50.5)]
    [InlineData("3 feet 11 3/4 inches", 47.75)]
    [InlineData("0 ft 8 in", 8)]
    public void Feet_with_inches_behind_are_one_length(string written, double inches)
    {
        var (measure, _) = MeasureText.Read(written, Dimension.Length, null);
        Assert.Equal((inches, Unit.Inch), (double.Round(measure!.Value.Value, 9), measure.Value.Unit));
    }

    [Theory]
    [InlineData("4 ft 12 in")]
    [InlineData("4 ft -2 in")]
    [InlineData("4 ft 2 cm")]
    [InlineData("4 ft 2 in 3")]
    [InlineData("4 m 2 in")]
    [InlineData("-4 ft 2 in")]
    public void What_is_no_such_length_is_refused(string written) => Assert.Null(MeasureText.Read(written, Dimension.Length, null).Measure);

    [Fact]
    public void Other_dimensions_know_no_feet() => Assert.Null(MeasureText.Read("4 ft 2 in", Dimension.Volume, Unit.Gallon).Measure);
}
