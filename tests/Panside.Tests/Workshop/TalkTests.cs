using Panside.Guide.Hearing;
using Panside.Workshop.Hearing;

namespace Panside.Tests.Workshop;

/// <summary>
/// What a session makes of lines that others wrote and that nothing was fitted to: facts, deeds, questions, remarks and cries. The tables
/// stand in docs/talking.md and docs/hearing.md; the floors lie just under them.
/// </summary>
public class TalkTests
{
    private static readonly SteadyBoilEar Ear = new();

    [Theory]
    [InlineData("talk-unseen.tsv")]
    [InlineData("talk-second.tsv")]
    [InlineData("talk-third.tsv")]
    public void Of_unseen_lines_most_are_understood_and_hardly_one_is_taken_for_another(string file)
    {
        var lines = TalkSentence.Read([Corpus(file)]);
        Assert.True(lines.Count >= 600, $"Only {lines.Count} lines.");
        var all = TalkTable.Of(Ear, lines).Last().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(double.Parse(all[2].TrimEnd('%'), System.Globalization.CultureInfo.InvariantCulture) >= 94, string.Join(' ', all));
        Assert.True(int.Parse(all[^1], System.Globalization.CultureInfo.InvariantCulture) <= 0.01 * lines.Count, string.Join(' ', all));
    }

    /// <summary>The goal: of lines that nobody used while building, 95 in 100.</summary>
    [Fact]
    public void Of_all_unseen_lines_together_the_goal_is_reached()
    {
        var lines = TalkSentence.Read([Corpus("talk-unseen.tsv"), Corpus("talk-second.tsv"), Corpus("talk-third.tsv")]);
        var all = TalkTable.Of(Ear, lines).Last().Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.True(double.Parse(all[2].TrimEnd('%'), System.Globalization.CultureInfo.InvariantCulture) >= 95, string.Join(' ', all));
    }

    [Fact]
    public void A_cry_goes_before_talk_and_talk_is_hardly_ever_a_cry()
    {
        bool IsCry(string text) => Ear.Understand(text) is MeansCry;
        var said = SaidSentence.Read([Corpus("cries-unseen.tsv"), Corpus("cries-second.tsv")]);
        var cries = said.Where(sentence => sentence.Hazard is not null).ToList();
        var talk = SaidSentence.Read([Corpus("talk-unseen.tsv"), Corpus("talk-second.tsv")]);
        Assert.True(cries.Count(cry => IsCry(cry.Text)) >= 0.97 * cries.Count);
        Assert.True(talk.Count(line => IsCry(line.Text)) <= 0.01 * talk.Count);
        Assert.True(said.Count(sentence => sentence.Hazard is null && IsCry(sentence.Text)) <= 30);
    }

    private static string Corpus(string file) => Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Hearing", "corpus", file);
}
