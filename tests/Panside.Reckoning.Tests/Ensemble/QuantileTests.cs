using Panside.Reckoning.Chance;
using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>The normal distribution and quantiles against figures in print.</summary>
public class QuantileTests
{
    /// <summary>M. Abramowitz, I. Stegun, Handbook of Mathematical Functions (1964), table 26.1; figures from memory.</summary>
    [Theory]
    [InlineData(0, 0.5)]
    [InlineData(0.5, 0.691462461274)]
    [InlineData(1, 0.841344746069)]
    [InlineData(1.5, 0.933192798731)]
    [InlineData(2, 0.977249868052)]
    [InlineData(2.5, 0.993790334674)]
    [InlineData(3, 0.998650101968)]
    [InlineData(4, 0.999968328758)]
    public void The_chance_of_a_lower_value_is_the_table_s(double deviate, double below)
    {
        Assert.Equal(below, Normal.Below(deviate), 1e-7);
        Assert.Equal(1 - below, Normal.Below(-deviate), 1e-7);
    }

    /// <summary>The same book, table 26.6 (percentage points): 5 %, 2.5 %, 1 % and 0.1 %; figures from memory.</summary>
    [Theory]
    [InlineData(1.644854, 0.95)]
    [InlineData(1.959964, 0.975)]
    [InlineData(2.326348, 0.99)]
    [InlineData(3.090232, 0.999)]
    public void The_bounds_of_bands_are_the_table_s(double deviate, double below) =>
        Assert.Equal(below, Normal.Below(deviate), 2e-7);

    /// <summary>Hyndman and Fan's definition 7 at p = k/(n − 1) is the order statistic itself, and linear between: worked by hand.</summary>
    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.25, 2)]
    [InlineData(0.5, 4)]
    [InlineData(0.75, 7)]
    [InlineData(1, 11)]
    [InlineData(0.125, 1.5)]
    [InlineData(0.9, 9.4)]
    public void A_quantile_lies_between_its_two_neighbors(double quantile, double value) =>
        Assert.Equal(value, Sorted.At(Sorted.Of([7, 1, 11, 4, 2]), quantile), 1e-12);

    /// <summary>An infinite neighbor is taken as it is: some members never come to a draw.</summary>
    [Fact]
    public void Infinite_values_stay_so_and_touch_no_finite_one()
    {
        var sorted = Sorted.Of([double.PositiveInfinity, 1, 2, double.PositiveInfinity, 3]);
        Assert.Equal(3, Sorted.At(sorted, 0.5));
        Assert.Equal(double.PositiveInfinity, Sorted.At(sorted, 0.6));
        Assert.Equal(double.PositiveInfinity, Sorted.At(sorted, 0.9));
    }

    /// <summary>SplitMix64 from seed 0 as its authors' own code gives it, the first number skipped; figure from memory.</summary>
    [Fact]
    public void Random_numbers_are_those_of_the_published_generator()
    {
        var random = RandomNumbers.For(0, 0);
        Assert.Equal((0x6E789E6AA1B965F4UL >> 11) * (1.0 / (1UL << 53)), random.Unit());
    }

    [Fact]
    public void Random_numbers_are_normal_enough()
    {
        var (mean, variance) = Assimilation.Moments(Beginning.Noise(100_000, 7));
        Assert.Equal(0, mean, 0.01);
        Assert.Equal(1, variance, 0.03);
    }
}
