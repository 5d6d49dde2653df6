using Panside.Reckoning.Batch;

namespace Panside.Reckoning.Tests.Batch;

public class JurisdictionNamesTests
{
    [Fact]
    public void Every_place_is_found_by_its_own_name() =>
        Assert.All(Enum.GetValues<Jurisdiction>(), place => Assert.Equal(place, JurisdictionNames.FromName(JurisdictionNames.NameOf(place))));

    [Theory]
    [InlineData("VT", Jurisdiction.Vermont)]
    [InlineData("new-york", Jurisdiction.NewYork)]
    [InlineData("  New   Hampshire ", Jurisdiction.NewHampshire)]
    [InlineData("usa", Jurisdiction.UnitedStates)]
    public void A_place_is_found_as_people_write_it(string name, Jurisdiction place) =>
        Assert.Equal(place, JurisdictionNames.FromName(name));

    [Theory]
    [InlineData("")]
    [InlineData("Ohio")]
    public void A_place_whose_law_was_not_read_has_no_name_here(string name) => Assert.Null(JurisdictionNames.FromName(name));

    [Fact]
    public void No_other_place_is_named() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => JurisdictionNames.NameOf((Jurisdiction)99));
}
