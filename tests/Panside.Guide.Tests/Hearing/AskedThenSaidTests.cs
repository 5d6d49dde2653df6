using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Hearing;

/// <summary>A question with the danger told behind it, and lines whose numbers are of nothing here.</summary>
public class AskedThenSaidTests
{
    [Theory]
    [InlineData("how do I cool it, the stack's bright red at the bottom?", "chimney")]
    [InlineData("can I pour snow in, it's boiling dry?", "dry")]
    [InlineData("What knocks it down, it's foaming over?", "foam")]
    [InlineData("can I leave it like this, I've got to run?", "away")]
    [InlineData("what if the hole gets bigger, it's dribbling in the firebox and won't quit", "leak")]
    public void What_is_told_behind_a_question_is_so(string said, string danger) =>
        Assert.Equal(danger, Assert.IsType<MeansCry>(Understood(said)).Dangers[0]);

    [Theory]
    [InlineData("what if the pan runs dry, and it's foaming?")]
    [InlineData("what do I do if the float sticks, or the pan is dry?")]
    [InlineData("how long till the draw, I've got company coming?")]
    [InlineData("how deep should it be, the pan is at 2 in?")]
    public void What_goes_on_asking_opens_nothing(string said) => Assert.IsNotType<MeansCry>(Understood(said));

    [Theory]
    [InlineData("Assuming twenty-five gallons an hour, we'd finish around eleven.")]
    [InlineData("Supposing I draw at two nineteen and a half, would it be too thick?")]
    [InlineData("the rig down the road does thirty gallons an hour")]
    [InlineData("burn rate works out to one face cord per six hours")]
    [InlineData("Conductivity of the permeate's under ten.")]
    [InlineData("the float is sixty grams heavier than the old one")]
    [InlineData("Foam layer on the back pan about a quarter inch, normal for this sap.")]
    public void A_number_of_something_else_is_no_reading(string said) => Assert.DoesNotContain(Facts(Understood(said)), fact => fact is MeansLine(Reading or Did) or MeansTalk { Meaning.Root: "away" });

    [Theory]
    [InlineData("pan is at 1 an a haf inchs", 1.5)]
    [InlineData("foam is low and the pan is at 2 in", 2)]
    public void The_pan_s_own_number_still_is(string said, double inches) =>
        Assert.Equal(inches, Assert.Single(Facts(Understood(said)).OfType<MeansLine>().Select(fact => fact.Line).OfType<Reading>(), read => read.Name == ReadingName.PanDepth).Measure.Value, 6);

    [Theory]
    [InlineData("jus put 3 peices of wood in")]
    [InlineData("put 3 pieces of wood in")]
    public void Pieces_of_wood_are_no_pounds(string said) => Assert.Null(Assert.IsType<Did>(Assert.IsType<MeansLine>(Understood(said)).Line).Measure);

    [Theory]
    [InlineData("When did I last fire?")]
    [InlineData("when did i last put wood in")]
    [InlineData("how long since i last fired")]
    public void The_last_wood_is_asked_for(string said) => Assert.Equal("seen:did:add-wood", Assert.IsType<MeansTalk>(Understood(said)).Meaning.Kind);

    private static IEnumerable<Understood> Facts(Understood understood) => understood is MeansSeveral(var all) ? all : [understood];

    private static Understood Understood(string said)
    {
        var boil = Conversation.AtSteadyBoil(members: Conversation.Few);
        return new Listener(boil.Session.Setting).Understand(boil.Now, said, boil.Open);
    }
}
