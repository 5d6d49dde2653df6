using Panside.Guide.Hearing.Cries;

namespace Panside.Guide.Tests.Hearing;

public class CryEarTests(ITestOutputHelper output)
{
    private static readonly CryEar Ear = CryCorpus.Ear("en");

    [Theory]
    [InlineData(CryCorpus.Fitted, "en", 0.99, 0.99, 10)]
    [InlineData("cries-own.tsv", "en", 0.99, 0.99, 2)]
    [InlineData("cries-french.tsv", "fr", 0.97, 0.95, 0)]
    [InlineData("cries-unseen.tsv", "en", 0.97, 0.94, 12)]
    [InlineData("cries-second.tsv", "en", 0.985, 0.97, 10)]
    [InlineData("cries-third.tsv", "en", 0.96, 0.945, 46)]
    [InlineData("cries-fourth.tsv", "en", 0.915, 0.855, 23)]
    public void Cries_of_every_habit_are_heard_and_ordinary_talk_is_not(string file, string language, double opened, double right, int mistaken)
    {
        Assert.SkipUnless(CryCorpus.IsThere(file), $"{file} is not here.");
        var heard = CryCorpus.Hear(file, CryCorpus.Ear(language));
        output.WriteLine(heard.Table());
        Assert.True(heard.Opened >= opened, $"{heard.Opened:P1} of the cries open the emergency.");
        Assert.True(heard.Right >= right, $"{heard.Right:P1} of the cries are heard as the danger that they mean.");
        Assert.True(heard.False.Count <= mistaken, heard.FalseTold);
    }

    [Theory]
    [InlineData("the roof is on fire", "fire")]
    [InlineData("smoke is filling the room", "smoke")]
    [InlineData("I feel dizzy", "smoke")]
    [InlineData("he passed out", "faint")]
    [InlineData("I scalded my arm", "hurt")]
    [InlineData("it's boiling dry", "dry")]
    [InlineData("the syrup is scorching", "scorch")]
    [InlineData("foam is going over the side", "foam")]
    [InlineData("chimney on fire", "chimney")]
    [InlineData("the stack fell over", "stack")]
    [InlineData("no sap is coming in", "float")]
    [InlineData("the pan is leaking", "leak")]
    [InlineData("I have to go right now", "away")]
    public void S9_a_cry_is_heard_as_what_it_means(string said, string hazard) =>
        Assert.Equal(hazard, Ear.Hear(said)!.Hazards[0]);

    [Theory]
    [InlineData("fire", "fire")]
    [InlineData("smoke", "smoke")]
    [InlineData("dry", "dry")]
    [InlineData("foam", "foam")]
    [InlineData("leak", "leak")]
    [InlineData("hurt", "hurt")]
    [InlineData("burnt", "scorch")]
    public void S9_a_single_word_is_a_cry(string said, string hazard) =>
        Assert.Contains(hazard, Ear.Hear(said)!.Hazards);

    [Theory]
    [InlineData("help")]
    [InlineData("heeelp!!")]
    [InlineData("oh no")]
    [InlineData("something is wrong")]
    [InlineData("emergency")]
    public void S9_a_cry_that_names_nothing_is_heard_as_unsure(string said)
    {
        var cry = Ear.Hear(said);
        Assert.NotNull(cry);
        Assert.False(cry.IsSure);
    }

    [Theory]
    [InlineData("no smoke")]
    [InlineData("nothing smells burnt")]
    [InlineData("it isn't leaking any more")]
    [InlineData("the fire is out now")]
    [InlineData("the pan is not dry")]
    [InlineData("nobody is hurt")]
    public void What_is_denied_or_has_ended_is_no_cry(string said) => Assert.Null(Ear.Hear(said));

    [Theory]
    [InlineData("the valve won't shut")]
    [InlineData("the sap is not coming in")]
    [InlineData("I can't breathe")]
    [InlineData("he doesn't answer")]
    [InlineData("no sap coming")]
    [InlineData("the foam won't go down")]
    public void A_denial_that_is_itself_the_danger_is_a_cry(string said) => Assert.NotNull(Ear.Hear(said));

    [Theory]
    [InlineData("what do I do if the pan boils dry")]
    [InlineData("how do I know if it is scorching")]
    [InlineData("would the pan warp if it ran dry")]
    [InlineData("last year the chimney caught fire")]
    [InlineData("I heard that a roof burned down the road")]
    [InlineData("if the stack fell I would run")]
    [InlineData("does foam boil over often?")]
    public void What_is_asked_supposed_past_or_told_of_others_is_no_cry(string said) => Assert.Null(Ear.Hear(said));

    [Theory]
    [InlineData("what do I do the pan's on fire")]
    [InlineData("how do I stop this foam it's going everywhere")]
    [InlineData("can anyone hear me I burned my hand")]
    public void A_cry_in_the_form_of_a_question_is_a_cry(string said) => Assert.NotNull(Ear.Hear(said));

    [Theory]
    [InlineData("pot of syrup is on fire", "fire")]
    [InlineData("flame under the tank", "fire")]
    [InlineData("fire got out", "fire")]
    [InlineData("someone tipped the pan", "leak")]
    [InlineData("pan tipped over", "leak")]
    [InlineData("pouring out the seam", "leak")]
    [InlineData("he nearly fell twice and now he's down", "faint")]
    [InlineData("he nearly fell, bleeding", "hurt")]
    [InlineData("the beam nearly caught and it is smoking", "fire")]
    [InlineData("close call the hose is leaking", "leak")]
    [InlineData("should i pour water on the fire?", "fire")]
    public void S9_half_a_sentence_is_a_cry(string said, string hazard) => Assert.Equal(hazard, Ear.Hear(said)!.Hazards[0]);

    [Theory]
    [InlineData("pot of beans on the fire")]
    [InlineData("even flame under the pan")]
    [InlineData("someone tipped the scale at 30 lb")]
    [InlineData("pour out")]
    [InlineData("should I pour out the pan")]
    [InlineData("getting ready to pour it off")]
    [InlineData("he nearly fell")]
    [InlineData("she almost slipped on the step")]
    [InlineData("last year the stack caught fire")]
    [InlineData("no smoke tonight")]
    [InlineData("looked like flames on the roof, only the sunset")]
    [InlineData("what do I do if the pan leaks?")]
    [InlineData("when does foam go over?")]
    [InlineData("how do I know that it's boiling over and not just foaming?")]
    public void The_words_of_a_danger_in_harmless_use_are_no_cry(string said) => Assert.Null(Ear.Hear(said));

    [Theory]
    [InlineData("teh roof is on fier", "fire")]
    [InlineData("pan is leakign", "leak")]
    [InlineData("chimny is on fire", "chimney")]
    [InlineData("itsboiling over", "foam")]
    [InlineData("i burnde my hnad", "hurt")]
    [InlineData("FOAM IS GOING OVER THE SIIIIDE", "foam")]
    public void Slips_of_the_finger_are_put_right(string said, string hazard) => Assert.Equal(hazard, Ear.Hear(said)!.Hazards[0]);

    [Theory]
    [InlineData("everything is fine")]
    [InlineData("tank 22")]
    [InlineData("five more logs on the fire")]
    [InlineData("")]
    [InlineData("?!")]
    [InlineData("There is no lid for this pan, I'm afraid.")]
    [InlineData("''' -- ''' 217.4 °F")]
    public void Ordinary_words_that_look_like_a_danger_are_none(string said) => Assert.Null(Ear.Hear(said));

    [Fact]
    public void A_flow_adds_cries_to_a_danger_and_dangers_of_its_own()
    {
        var ear = CryCorpus.Ear("en", ("float", "the gizmo gave up"), ("bear", "bear at the door"), ("bear", "!"));
        Assert.Equal("float", ear.Hear("oh the gizmo gave up on me")!.Hazards[0]);
        Assert.Equal(["bear"], ear.Hear("there's a bear at the dooor")!.Hazards);
        Assert.Null(ear.Hear("is there a bear at the door?"));
        Assert.Null(Ear.Hear("there's a bear at the door"));
    }

    [Fact]
    public void A_language_that_the_words_do_not_have_is_refused() =>
        Assert.Contains("en, fr", Assert.Throws<ArgumentException>(() => new CryEar(CryCorpus.Words, "xx", [])).Message, StringComparison.Ordinal);

    [Fact]
    public void The_same_is_heard_by_many_at_once()
    {
        var said = Enumerable.Range(0, 200).Select(number => number % 2 == 0 ? "the roof is brning" : "smoke is going straight up").ToList();
        var heard = said.AsParallel().AsOrdered().Select(text => Ear.Hear(text)?.Hazards[0]).ToList();
        Assert.All(heard, (hazard, number) => Assert.Equal(number % 2 == 0 ? "fire" : null, hazard));
    }

    [Fact]
    public void A_long_text_is_heard_in_time_that_does_not_grow_without_end()
    {
        var text = string.Concat(Enumerable.Repeat("not fire on roof smoke in pan dry foam over ", 2000));
        var began = TimeProvider.System.GetTimestamp();
        Ear.Hear(text);
        Assert.True(TimeProvider.System.GetElapsedTime(began) < TimeSpan.FromSeconds(2));
    }

    [Theory]
    [InlineData("the tarp over the steam hood smoulders")]
    [InlineData("oh no, the tarp over the steam hood smoulders badly!")]
    public void A_cry_that_a_flow_has_word_for_word_is_its_own_danger_whatever_its_words_mean_besides(string said)
    {
        var cry = CryCorpus.Ear("en", ("tarp", "the tarp over the steam hood smoulders")).Hear(said);
        Assert.Equal(("tarp", true), (cry?.Hazards[0], cry?.IsSure));
    }
}
