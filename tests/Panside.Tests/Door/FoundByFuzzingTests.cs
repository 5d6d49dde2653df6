using System.Text;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Door;

/// <summary>Inputs that a run of `tests/Panside.Fuzz` has found, each with what is answered to it now.</summary>
public class FoundByFuzzingTests
{
    [Theory]
    [InlineData("{\"\\ud800\":1,\"a\":2}")]
    [InlineData("{\"a\":1,\"\\ud800\":2,\"b\":3}")]
    public void A_key_of_half_a_character_is_damage_in_a_record(string line)
    {
        Assert.NotNull(RecordBytes.Damage(Encoding.UTF8.GetBytes(line)));
        using var scratch = new Scratch();
        File.WriteAllText(scratch["boil.jsonl"], line + "\n");
        var ran = Captured.Run("check", scratch["boil.jsonl"]);
        Assert.Equal(ExitStatus.Wrong, ran.Status);
        Assert.Contains("half a character", ran.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"at\":\"", "\"at\":\"\\ud800")]
    [InlineData("\"prompt\":{", "\"prompt\":{\"\\ud800\":1,")]
    [InlineData("\"forecast\":{", "\"forecast\":{\"x\\udc00\":null,")]
    public void Half_a_character_anywhere_in_an_answer_is_told_with_its_line(string from, string to)
    {
        using var scratch = new Scratch();
        var lines = RepositoryFiles.Read("demo-sessions", "first-shutdown.jsonl").Split('\n');
        var at = Array.FindIndex(lines, line => line.Contains(from, StringComparison.Ordinal) && line.Contains("\"seq\":", StringComparison.Ordinal) && !line.Contains("\"session\":", StringComparison.Ordinal));
        lines[at] = lines[at].Replace(from, to, StringComparison.Ordinal);
        File.WriteAllText(scratch["boil.jsonl"], string.Join('\n', lines));
        var ran = Captured.Run("check", scratch["boil.jsonl"]);
        Assert.Equal(ExitStatus.Wrong, ran.Status);
        Assert.Contains($"boil.jsonl:{at + 1}:1: half a character is escaped in the line", ran.Out, StringComparison.Ordinal);
    }

    /// <summary>Neither an outcome of another dimension nor one with half a character in it ends the season's book.</summary>
    [Theory]
    [InlineData("\"unit\":\"gal\"", "\"unit\":\"min\"")]
    [InlineData("\"text\":\"", "\"text\":\"\\ud800")]
    [InlineData("\"value\":", "\"value\":1e999,\"x\":")]
    public void An_outcome_that_is_none_is_left_out_of_the_book(string from, string to)
    {
        using var scratch = new Scratch();
        var lines = RepositoryFiles.Read("demo-sessions", "first-shutdown.jsonl").Split('\n');
        var changed = lines.Select(line => line.Contains("\"over\":{", StringComparison.Ordinal) ? line.Replace(from, to, StringComparison.Ordinal) : line).ToArray();
        Assert.NotEqual(lines, changed);
        File.WriteAllText(scratch["boil.jsonl"], string.Join('\n', changed).Replace("\"practice\":true", "\"practice\":false", StringComparison.Ordinal));
        var ran = Captured.Run("season", scratch.Folder, "--json");
        Assert.Equal(ExitStatus.Done, ran.Status);
    }

    /// <summary>Seed 201 of `line`, cases 20339 and 166297: the sugar of a pan that was read as empty was told as 252 Brix, in a doubt and in the outcome.</summary>
    [Theory]
    [InlineData("\"reading\":\"pan-brix\",\"value\":12,\"unit\":\"Brix\"", 5)]
    [InlineData("\"reading\":\"draw-brix\",\"value\":12,\"unit\":\"Brix\"", 5)]
    [InlineData("\"did\":\"leave\"", 4)] // The yes to it ends the session.
    public void What_is_told_of_a_pan_that_was_read_as_empty_is_answered(string said, int answers)
    {
        var half = WholeBoil.Lines.Count / 2;
        var run = StreamRun.Of(
        [
            .. WholeBoil.Lines.Take(half),
            .. new[] { "\"reading\":\"pan-depth\",\"value\":5e-324,\"unit\":\"in\"", "\"answer\":\"yes\"", said, "\"answer\":\"yes\"", "\"answer\":\"yes\"" }
                .Select(line => StreamRun.At(300, line)),
        ]);
        Assert.Equal(half + answers, run.Answers.Count);
    }
}
