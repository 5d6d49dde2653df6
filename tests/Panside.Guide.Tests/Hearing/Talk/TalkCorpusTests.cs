using System.Globalization;
using Panside.Guide.Hearing.Talk;
using Panside.Guide.Measures;

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
        foreach (var cells in File.ReadLines(Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Hearing", "corpus", file)).Skip(1).Select(line => line.Split('\t')))
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
