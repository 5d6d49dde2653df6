using System.Text;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Stream;

namespace Panside.Tests.Records;

/// <summary>R8: the reader of lines answers everything with a line; nothing is thrown.</summary>
public class LineReaderFuzzTests
{
    private static readonly string[] Pieces =
    [
        "\"", "{", "}", "[", "]", ":", ",", "\\", "\\ud800", "\\u0000", "\uD83D", "\0", "null", "true", "-", "1e400", "99999999999999999999", "\"at\":", "\"seq\":1,",
        "\"unit\":\"gal\"", "\"value\":1", "T", "+00:00", "é", "🍁",
    ];

    [Fact]
    public void R8_whatever_is_said_becomes_a_line()
    {
        var random = new Random(5);
        var (read, unreadable) = (0, 0);
        for (var round = 0; round < 60_000; round++)
        {
            var line = new StringBuilder(WholeBoil.Lines[random.Next(WholeBoil.Lines.Count)]);
            for (var change = random.Next(5); change >= 0; change--)
            {
                var at = random.Next(line.Length + 1);
                line.Remove(at, int.Min(random.Next(6), line.Length - at)).Insert(at, random.Next(3) == 0 ? "" : Pieces[random.Next(Pieces.Length)]);
            }

            _ = LineReader.Read(line.ToString()) is Unreadable ? unreadable++ : read++;
            _ = LineShape.Of(line.ToString());
        }

        Assert.True(read > 500 && unreadable > 30_000, $"{read} read, {unreadable} not");
    }

    [Theory]
    [InlineData("{\"at\":\"\\ud800\",\"tick\":true}")]
    [InlineData("{\"at\":\"2031-03-08T17:00:00-05:00\",\"text\":\"\\ud800\"}")]
    [InlineData("{\"\\ud800\":1}")]
    [InlineData("{\"at\":\"2031-03-08T17:00:00-05:00\",\"text\":\"HALF\"}")]
    public void R8_half_a_character_is_no_text(string line) =>
        Assert.IsType<Unreadable>(LineReader.Read(line.Replace("HALF", new string('\uD800', 1), StringComparison.Ordinal)));

    [Fact]
    public void R8_deep_and_long_lines_are_refused_at_once()
    {
        Assert.IsType<Unreadable>(LineReader.Read(new string('[', 60_000)));
        Assert.Contains("65536 characters are the most", Assert.IsType<Unreadable>(LineReader.Read(new string(' ', 10 << 20))).Why, StringComparison.Ordinal);
    }
}
