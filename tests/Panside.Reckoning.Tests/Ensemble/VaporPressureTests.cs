using System.Numerics;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Properties;

namespace Panside.Reckoning.Tests.Ensemble;

public class VaporPressureTests
{
    [Fact]
    public void The_polynomial_is_little_over_a_thousandth_of_a_kilopascal_from_the_formula()
    {
        for (var celsius = 0.0; celsius <= 108; celsius += 0.5)
        {
            Assert.Equal(VaporPressure.At(celsius), VaporPressure.Over(Vector<double>.Zero, new Vector<double>(celsius))[0], 0.0012);
        }
    }

    [Theory]
    [InlineData(60, 0.004)]
    [InlineData(80, 0.014)]
    [InlineData(100, 0.027)]
    public void The_formula_is_as_far_from_the_saturation_line_as_is_said(double celsius, double part)
    {
        var exact = 1000 * If97Saturation.Megapascals(celsius + 273.15);
        Assert.Equal(exact, VaporPressure.At(celsius), part * exact);
    }
}
