using System.Text.RegularExpressions;
using Panside.Guide.Answering;

namespace Panside.Guide.Tests.Sessions;

/// <summary>Every word of the trade that a text uses is explained, and can be asked for.</summary>
public partial class TermsTests
{
    /// <summary>Words that a person who never boiled sap does not know, by hand; the texts are searched for each.</summary>
    private static readonly string[] OfTheTrade =
    [
        "gradient", "draw-off", "draw point", "brix", "density", "hydrometer", "refractometer", "channel", "float", "feed", "head tank", "foam", "defoamer", "firebox",
        "grates", "charge", "coals", "firebrick", "draft", "stack", "damper", "blower", "last charge", "flood", "least depth", "rolling", "simmering", "still", "scorch",
        "barometer", "sample", "filter", "shutdown", "start-up", "steady boil", "clear to leave", "syrup side", "feed side", "carbon monoxide", "target", "pail",
    ];

    [Fact]
    public void Every_word_of_the_trade_in_a_flow_is_explained_and_can_be_asked_for()
    {
        var texts = RepositoryFiles.Read("flows", "divided-pan.yaml").ToLowerInvariant();
        var terms = KnownAnswers.TermsOf("en");
        var used = OfTheTrade.Where(word => texts.Contains(word, StringComparison.Ordinal)).ToList();
        Assert.InRange(used.Count, 30, OfTheTrade.Length);
        Assert.All(used, word => Assert.True(terms.In($"what is a {word}?") is not null, word));
        Assert.All(used, word =>
        {
            var boil = new Conversation(members: Conversation.Few);
            boil.Say($"what is {word}");
            Assert.NotEmpty(boil.Answers.OfType<Panside.Guide.Lines.ToldLine>());
        });
    }

    [Fact]
    public void No_term_is_a_wall_of_text_and_each_ends_as_a_sentence_does()
    {
        Assert.All(KnownAnswers.TermsOf("en").All, term =>
        {
            Assert.Matches(@"[.:!]$", term.Is);
            Assert.InRange(Sentence().Count(term.Is), 1, 3);
            Assert.True(term.Measure is null || term.Measure.EndsWith('.'), term.Name);
        });
    }

    [GeneratedRegex(@"[.!?](\s|$)")]
    private static partial Regex Sentence();
}
