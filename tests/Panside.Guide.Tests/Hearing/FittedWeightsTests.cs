using Panside.Guide.Hearing.Cries;

namespace Panside.Guide.Tests.Hearing;

public class FittedWeightsTests
{
    private const string Three = "# made\nhazards\tnone fire leak\nbias\t0:100\nword leak\t2:300\nword fire\t1:200 2:-50\n";

    /// <summary>The soft maximum of 1, 2 and 3 is 0.0900, 0.2447 and 0.6652: worked by hand from e, e² and e³ over 30.1929.</summary>
    [Fact]
    public void Shares_are_the_soft_maximum_of_sums()
    {
        var shares = new FittedWeights("hazards\tnone fire leak\nbias\t0:100 1:200 2:300\n").Shares([]);
        Assert.Equal([0.0900, 0.2447, 0.6652], shares.Select(share => double.Round(share, 4)));
    }

    [Fact]
    public void Weights_of_all_traits_are_summed_and_what_is_not_known_adds_nothing()
    {
        var weights = new FittedWeights(Three);
        Assert.Equal(["none", "fire", "leak"], weights.Kinds);
        var shares = weights.Shares(["word fire", "word leak", "word owl"]);
        Assert.Equal(double.Exp(1.5), shares[2] / shares[0], 9);
        Assert.Equal(double.Exp(1), shares[1] / shares[0], 9);
        Assert.Equal(1, shares.Sum(), 12);
    }

    [Fact]
    public void What_is_written_reads_as_it_was_but_for_what_rounds_to_nothing()
    {
        var text = FittedWeights.Write("made", ["none", "fire"], [0.5, -0.25], [("word b", [0.004, 1]), ("word a", [-2, 0.01]), ("word c", [0.01, -0.01])], least: 0.015);
        Assert.Equal("# made\nhazards\tnone fire\nbias\t0:50 1:-25\nword a\t0:-200\nword b\t1:100\n", text);
        var shares = new FittedWeights(text).Shares(["word a", "word b"]);
        Assert.Equal(double.Exp(0.50 - 2.00 - (-0.25 + 1.00)), shares[0] / shares[1], 9);
    }

    [Theory]
    [InlineData("hazards\tnone fire\nword leak 1:2\n", "line 2: expected a trait, a tab and its weights.")]
    [InlineData("hazards\tnone fire\nword leak\t2:5\n", "line 2: '2:5' is no weight.")]
    [InlineData("hazards\tnone fire\n\nword leak\t1:much\n", "line 3: '1:much' is no weight.")]
    [InlineData("hazards\tnone fire\nword leak\t1:99999\n", "line 2: '1:99999' is no weight.")]
    [InlineData("hazards\tnone fire\nword leak\t-1:5\n", "line 2: '-1:5' is no weight.")]
    public void A_line_that_is_no_weight_is_told_with_its_number(string text, string words) =>
        Assert.StartsWith(words, Assert.Throws<FormatException>(() => new FittedWeights(text)).Message, StringComparison.Ordinal);

    [Fact]
    public void The_weights_that_are_built_in_are_of_the_hazards_of_the_words_and_of_all_sentences()
    {
        var built = KnownCries.Fitted("en")!;
        Assert.Equal(KnownCries.Words.Hazards.Where(hazard => hazard != "unsure").Append(FittedWeights.None).Order(), built.Kinds.Order());
        var sentences = RepositoryFiles.Read("flows", "words", "said", "dangers.en.tsv").Split('\n').Count(line => line.StartsWith("cry\t", StringComparison.Ordinal) || line.StartsWith("everyday\t", StringComparison.Ordinal));
        var talk = RepositoryFiles.Read("flows", "words", "said", "talk.en.tsv").Split('\n').Skip(1).Count(line => line.Split('\t').Length == 3 && !line.Split('\t')[0].Contains("foam:rising", StringComparison.Ordinal));
        Assert.Contains($"fitted to {sentences + talk} sentences", RepositoryFiles.Read("flows", "words", "dangers.en.weights").Split('\n')[0], StringComparison.Ordinal);
        Assert.Null(KnownCries.Fitted("fr"));
    }

    [Fact]
    public void What_is_denied_asked_or_said_has_other_traits()
    {
        var ear = CryCorpus.Ear("en");
        Assert.Contains("said leak", ear.TraitsOf("the pan is leaking"));
        Assert.Contains("said -leak", ear.TraitsOf("the pan is not leaking"));
        Assert.Contains("said ?leak", ear.TraitsOf("what if the pan is leaking"));
        Assert.Contains("piece ^lea", ear.TraitsOf("leaking"));
        Assert.Contains("shape ?", ear.TraitsOf("is it leaking?"));
        Assert.Contains("shape capitals", ear.TraitsOf("LEAK"));
        Assert.Contains("combined none", ear.TraitsOf("good evening"));
        Assert.Empty(ear.TraitsOf("?!"));
    }
}
