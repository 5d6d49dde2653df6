using System.Globalization;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Tests.Hearing.Talk;

/// <summary>
/// What is made of lines that others wrote and that nothing was fitted to, by writers who saw none of the words in use. The table stands
/// in docs/hearing.md.
/// </summary>
public class TalkCorpusTests
{
    [Theory]
    [InlineData("talk-unseen.tsv")]
    [InlineData("talk-second.tsv")]
    public void Of_unseen_lines_most_are_understood_and_hardly_one_is_taken_for_another(string file)
    {
        var (all, right, wrong) = (0, 0, 0);
        foreach (var cells in Lines(file))
        {
            var meant = cells[0].Split(';').Select(one => one.Trim()).Where(one => one != Meaning.None).ToList();
            var heard = KnownTalk.Ear("en")!.Hear(cells[2], _ => 1).Where(one => one.Kind is not (Meaning.None or Meaning.Cry) && one.Share >= TalkListener.AskedFrom).ToList();
            all++;
            right += meant.Count == heard.Count && meant.Zip(heard).All(pair => Is(pair.First, pair.Second)) ? 1 : 0;
            wrong += heard.Any(fact => fact.Root is "reading" or "did" && fact.Share >= TalkListener.TakenFrom && !meant.Exists(one => Is(one, fact))) ? 1 : 0;
        }

        Assert.True(all >= 800, $"Only {all} lines.");
        Assert.True(right >= 0.93 * all, $"{right} of {all} understood.");
        Assert.True(wrong <= 0.025 * all, $"{wrong} of {all} taken for something else.");
    }

    /// <summary>What a session makes of cries among facts, deeds and questions: danger first, and no fact opens an emergency.</summary>
    [Fact]
    public void A_cry_goes_before_talk_and_talk_is_hardly_ever_a_cry()
    {
        var listener = new Listener(new(Conversation.Flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "two-by-four-forced.yaml")), Guidance.Beginner, "panside test"));
        var at = Moment.Of(new(2031, 3, 8, 20, 0, 0, TimeSpan.FromHours(-5)));
        bool IsCry(string text) => listener.Understand(at, text, null) is MeansCry;
        var cries = Lines("cries-unseen.tsv").Concat(Lines("cries-second.tsv")).Where(cells => cells[0] == "cry").ToList();
        var talk = Lines("talk-unseen.tsv").Concat(Lines("talk-second.tsv")).Where(cells => !cells[0].Contains("foam:rising", StringComparison.Ordinal)).ToList();
        Assert.True(cries.Count(cells => IsCry(cells[3])) >= 0.97 * cries.Count);
        Assert.True(talk.Count(cells => IsCry(cells[2])) <= 0.01 * talk.Count);
    }

    private static IEnumerable<string[]> Lines(string file) =>
        File.ReadLines(Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Hearing", "corpus", file)).Skip(1).Select(line => line.Split('\t'));

    private static bool Is(string meant, Meaning heard)
    {
        var cells = meant.Split(' ', 3);
        return cells[0] == heard.Kind && (cells.Length == 1
            ? heard.Amount is null || heard.Root is "ask" or "away"
            : heard.Amount is { } amount
                && (double.Abs(amount.Value - Number(cells[1])) <= 0.004 + (0.001 * double.Abs(amount.Value)) || (heard.Root == "gone-by" && (amount.Value - Number(cells[1])) % 720 == 0))
                && (cells.Length < 3 || amount.Unit is null or Unit.Percent || amount.Unit == UnitNames.FromWord(cells[2]) || cells[2] == "inHg"));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
