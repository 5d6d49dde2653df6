using Panside.Guide.Wording;

namespace Panside.Guide.Tests.Wording;

/// <summary>Words of the flow with their syllables as the Carnegie Mellon University Pronouncing Dictionary speaks them.</summary>
public sealed class SyllablesTests
{
    private const string Spoken =
        """
        about:2 above:2 across:2 advice:2 after:2 alone:2 already:3 anyway:3 away:2 beginner:3 boiling:2 bubbles:2 building:2 call:1
        candy:2 cannot:2 carbon:2 carries:2 channels:2 charges:2 children:2 cleaned:1 closed:1 cloudy:2 cold:1 coming:2 common:2
        confirm:2 counted:2 covered:2 critical:3 danger:2 days:1 decide:2 decides:2 deep:1 deepen:2 deeper:2 density:3 differ:2 done:1
        doors:1 draws:1 drier:2 drop:1 drying:2 elevation:4 empties:2 evaporation:5 expect:2 extinguisher:4 fallen:2 faster:2 feeds:1
        fill:1 finish:2 first:1 float:1 floats:1 flood:1 flooded:2 forecast:2 forgotten:3 full:1 galvanized:3 gone:1 gradient:3 hand:1
        hands:1 harm:1 heavy:2 hydrometer:4 indoors:2 inspected:3 keeps:1 leftover:3 level:2 lies:1 lining:2 liquid:2 little:2 loses:2
        lost:1 lower:2 matter:2 minute:2 moments:2 much:1 must:1 near:1 needed:2 never:2 nobody:3 nothing:2 observed:2 open:2 past:1
        pets:1 planned:1 poisons:2 pour:1 pouring:2 press:1 quarter:2 rake:1 reaches:2 refill:2 reserve:2 residual:4 return:2 runs:1
        said:1 same:1 sample:2 scalds:1 scorching:2 season:2 seasoned:2 seconds:2 simmering:3 since:1 single:2 slowly:2 smell:1 smoke:1
        somebody:3 someone:2 sooner:2 soonest:2 spoonful:2 stalls:1 stand:1 starved:1 steady:2 steam:1 stir:1 stops:1 summer:2 syrup:2
        tells:1 then:1 thermometer:4 thickens:2 thinner:2 this:1 throw:1 today:2 trip:1 trust:1 turn:1 unseen:2 until:2 urgency:3
        usual:3 vents:1 wall:1 wanted:2 warming:2 washing:2 watch:1 water:2 weather:2 well:1 whatever:3 where:1 whoever:3 with:1
        without:2 wood:1
        """;

    [Fact]
    public void They_are_those_of_a_pronouncing_dictionary()
    {
        var words = Spoken.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries);
        Assert.True(words.Length > 150);
        Assert.Equal(words, words.Select(word => word[..word.IndexOf(':', StringComparison.Ordinal)]).Select(word => $"{word}:{Syllables.In(word)}"));
    }

    [Theory]
    [InlineData("pan's", 1)]
    [InlineData("Filter", 2)]
    [InlineData("x", 1)]
    public void A_word_may_own_stand_first_or_be_a_sign(string word, int syllables) => Assert.Equal(syllables, Syllables.In(word));
}
