using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Tests.Rig;

public class SugarBalanceTests
{
    /// <summary>Mean Brix held in a pan at steady state with syrup at 66.9: derived from the mass balance of equal well-mixed cells.</summary>
    [Theory]
    [InlineData(1, 66.9, 66.9, 66.9)]
    [InlineData(2, 34.9, 35.4, 36.3)]
    [InlineData(3, 24.5, 25.2, 26.5)]
    [InlineData(4, 19.4, 20.2, 21.8)]
    [InlineData(5, 16.3, 17.3, 19.0)]
    [InlineData(6, 14.4, 15.4, 17.3)]
    [InlineData(8, 12.0, 13.1, 15.1)]
    [InlineData(12, 9.7, 10.9, 13.1)]
    [InlineData(24, 7.5, 8.9, 11.3)]
    public void The_mean_of_a_pan_at_its_gradient_is_the_table_s(int cells, double sap15, double sap2, double sap3)
    {
        foreach (var (sap, mean) in new[] { (1.5, sap15), (2.0, sap2), (3.0, sap3) })
        {
            Assert.Equal(mean, SugarBalance.MeanAtGradient(SugarContent.FromBrix(sap), SugarContent.FromBrix(66.9), cells).Brix, 0.11);
        }
    }

    [Fact]
    public void Outside_its_range_it_refuses()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SugarBalance.MeanAtGradient(SugarContent.FromBrix(0.2), SugarContent.FromBrix(66.9), 6));
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            SugarBalance.MeanAtGradient(SugarContent.FromBrix(2), SugarContent.FromBrix(66.9), 0));
    }
}
