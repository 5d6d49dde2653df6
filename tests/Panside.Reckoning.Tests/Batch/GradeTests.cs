using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Tests.Support;

namespace Panside.Reckoning.Tests.Batch;

public class GradeTests
{
    [Fact]
    public void Every_class_begins_and_ends_where_the_law_says() =>
        Assert.All(Figures.Of("color"), r =>
        {
            ColorClass expected = Enum.Parse<ColorClass>(r.Text("class"));
            Assert.Equal(expected, ColorClasses.FromTransmittance(r["least"]));
            Assert.Equal(expected, ColorClasses.FromTransmittance(r["most"]));
        });

    [Fact]
    public void Less_light_is_never_a_lighter_class() =>
        Gen.Select(Gen.Double[0, 100], Gen.Double[0, 100]).Holds((one, other) =>
            (one >= other) == (one == other) || ColorClasses.FromTransmittance(one) <= ColorClasses.FromTransmittance(other) == (one >= other)
            || ColorClasses.FromTransmittance(one) == ColorClasses.FromTransmittance(other));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(100.1)]
    [InlineData(double.NaN)]
    public void No_other_light_has_a_class(double percent) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => ColorClasses.FromTransmittance(percent));

    [Fact]
    public void Every_place_has_the_law_that_was_read()
    {
        IReadOnlyList<FigureRow> rows = Figures.Of("legal-density");
        Assert.Equal(Enum.GetValues<Jurisdiction>().Length, rows.Count);
        Assert.All(rows, r =>
        {
            LegalDensity law = LegalDensity.In(Enum.Parse<Jurisdiction>(r.Text("place")));
            Assert.Equal(r["least"], law.Least.Brix);
            Assert.Equal(r.Has("most") ? r["most"] : null, law.Most?.Brix);
        });
    }

    [Theory]
    [InlineData(Jurisdiction.UnitedStates, 66.0, true)]
    [InlineData(Jurisdiction.UnitedStates, 65.9, false)]
    [InlineData(Jurisdiction.Vermont, 66.0, false)]
    [InlineData(Jurisdiction.Vermont, 69.0, false)]
    [InlineData(Jurisdiction.NewHampshire, 69.0, true)]
    public void Syrup_within_the_limits_is_allowed(Jurisdiction place, double brix, bool allowed) =>
        Assert.Equal(allowed, LegalDensity.In(place).Allows(SugarContent.FromBrix(brix)));

    [Fact]
    public void A_place_whose_law_was_not_read_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LegalDensity.In((Jurisdiction)99));
}
