using Xunit.Sdk;

namespace Panside.Reckoning.Tests.Support;

public class WithinTests
{
    [Fact]
    public void A_relative_tolerance_scales_and_an_absolute_one_does_not()
    {
        Within.Relative(0.01).Holds(200, 201.9);
        Assert.ThrowsAny<XunitException>(() => Within.Absolute(0.01).Holds(200, 201.9));
    }

    [Fact]
    public void A_row_that_zero_would_pass_is_refused_even_when_it_agrees() =>
        Assert.ThrowsAny<XunitException>(() => Within.Absolute(0.05).Holds(0.04, 0.04));

    [Fact]
    public void A_column_that_one_constant_would_pass_is_refused() =>
        Assert.ThrowsAny<XunitException>(() => Within.Absolute(1).HoldsOver([new("a", 10, 10), new("b", 11, 11)]));

    [Fact]
    public void A_true_zero_is_held_by_an_absolute_tolerance_only()
    {
        Within.Absolute(0.01).Holds(0, 0.005);
        Assert.ThrowsAny<XunitException>(() => Within.Relative(0.01).Holds(0, 0));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(double.NaN)]
    public void A_relative_tolerance_lies_between_nothing_and_all(double fraction) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Within.Relative(fraction));

    [Fact]
    public void No_number_is_never_within() => Assert.ThrowsAny<XunitException>(() => Within.Absolute(1).Holds(5, double.NaN));
}
