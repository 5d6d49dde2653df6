using System.Diagnostics;
using System.Text.Json;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Stream;

/// <summary>SIGKILL in the middle of a boil, at any line: the record goes on at the same step with the same figures (S7).</summary>
public class GoingOnTests
{
    [Theory]
    [InlineData(3)]
    [InlineData(15)]
    [InlineData(20)]
    [InlineData(23)]
    [InlineData(26)]
    [InlineData(30)]
    [InlineData(70)]
    public void S7_a_boil_goes_on_after_sigkill_at_the_same_step_with_the_same_figures(int killedAfter)
    {
        using var scratch = new Scratch();
        var journal = scratch["boil.jsonl"];
        using (var panside = Program.Start("boil", "--stream", "--journal", journal, "--home", scratch.Folder))
        {
            foreach (var line in WholeBoil.Lines.Take(killedAfter))
            {
                panside.StandardInput.WriteLine(line);
                panside.StandardInput.Flush();
                Program.ReadAnswer(panside);
            }

            panside.Kill();
            panside.WaitForExit();
        }

        var whole = Of(WholeBoil.Lines);
        var rest = Of(WholeBoil.Lines.Skip(killedAfter), journal);

        Assert.Equal(0, rest.Exit);
        Assert.Equal("", rest.Errors);
        var first = rest.Answers[0];
        Assert.True(Is(first[0], "phase"));
        Assert.Equal(LastPhase(whole, killedAfter), first[0].GetProperty("phase").GetString());
        Assert.Equal(LastPrompt(whole, killedAfter), first.Where(line => Is(line, "prompt")).Select(Step).FirstOrDefault());
        Assert.Equal(Figures(whole.Answers.Skip(killedAfter + 1)), Figures(rest.Answers.Skip(1)));
        SameForecasts(whole, rest);
    }

    /// <summary>
    /// Between line 23 and the next lie six minutes: told as time away, and the open prompt that is asked again has its five minutes
    /// anew. What waits behind it comes a turn later than in a boil that nobody interrupted; figures and phases are the same.
    /// </summary>
    [Fact]
    public void S7_after_minutes_away_the_open_prompt_waits_anew_and_nothing_else_differs()
    {
        const int KilledAfter = 23;
        using var scratch = new Scratch();
        var whole = Of(WholeBoil.Lines);
        Of(WholeBoil.Lines.Take(KilledAfter), scratch["boil.jsonl"]);
        var rest = Of(WholeBoil.Lines.Skip(KilledAfter), scratch["boil.jsonl"]);
        Assert.Equal("Away 6 minutes.", rest.Answers[0].First(line => Is(line, "told")).GetProperty("told").GetProperty("text").GetString());
        Assert.Equal(LastPrompt(whole, KilledAfter), rest.Answers[0].Where(line => Is(line, "prompt")).Select(Step).First());

        // What is asked comes with its cautions and its advice; all else is the same to the digit.
        static IEnumerable<IReadOnlyList<JsonElement>> Known(IEnumerable<IReadOnlyList<JsonElement>> answers) =>
            answers.Select(answer => (IReadOnlyList<JsonElement>)[.. answer.Where(line => new[] { "phase", "heard", "over", "question" }.Any(kind => Is(line, kind)))]);
        Assert.Contains("heard", Figures(Known(rest.Answers)), StringComparison.Ordinal);
        Assert.Equal(Figures(Known(whole.Answers.Skip(KilledAfter + 1))), Figures(Known(rest.Answers.Skip(1))));
        SameForecasts(whole, rest);
    }

    [Fact]
    public void Going_on_numbers_on_and_the_record_is_the_same_lines()
    {
        using var scratch = new Scratch();
        var journal = scratch["boil.jsonl"];
        var one = Of(WholeBoil.Lines.Take(20), journal);
        var two = Of(WholeBoil.Lines.Skip(20), journal);
        var numbers = one.All.Concat(two.All).Select(line => line.GetProperty("seq").GetInt32()).ToList();
        Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);

        var record = File.ReadAllLines(journal).ToHashSet();
        Assert.All(WholeBoil.Lines.Where(line => line.StartsWith('{')), line => Assert.Contains(line, record));
        Assert.All((one.Output + two.Output).Split('\n', StringSplitOptions.RemoveEmptyEntries), line => Assert.Contains(line, record));
    }

    [Theory]
    [InlineData(42, "Away 42 minutes.")]
    [InlineData(75, "Away 1 hour 15 minutes.")]
    public void After_a_long_time_away_from_a_fire_it_is_told_and_the_depth_is_asked_first(int minutes, string told)
    {
        using var scratch = new Scratch();
        var journal = scratch["boil.jsonl"];
        var begun = WholeBoil.Lines.TakeWhile(line => !line.Contains("T17:41", StringComparison.Ordinal)).ToList();
        Of(begun, journal);
        var at = WholeBoil.Lines.Skip(begun.Count - 1).Select(line => Guide.Lines.Moment.Read(JsonDocument.Parse(line).RootElement.GetProperty("at").GetString()!)).First()!.Value.Time;
        var first = Of([$$"""{"at":"{{Guide.Lines.Moment.Of(at.AddMinutes(minutes)).Written}}","tick":true}"""], journal).Answers[0];
        Assert.True(Is(first[0], "phase"));
        Assert.Equal(told, first.First(line => Is(line, "told")).GetProperty("told").GetProperty("text").GetString());
        Assert.Equal("pan-depth", first.First(line => Is(line, "prompt")).GetProperty("prompt").GetProperty("ask").GetString());
    }

    [Fact]
    public void After_a_moment_nothing_is_told_of_it_and_before_the_fire_nothing_of_the_pan()
    {
        using var scratch = new Scratch();
        Of(WholeBoil.Lines.Take(5), scratch["a.jsonl"]);
        File.Copy(scratch["a.jsonl"], scratch["b.jsonl"]);
        Assert.DoesNotContain(Of([At(0, "\"tick\":true").Replace(":00:00-05:00", ":00:59-05:00", StringComparison.Ordinal)], scratch["a.jsonl"]).All, line => Is(line, "told"));
        var rest = Of([Tick(90)], scratch["b.jsonl"]);
        Assert.Equal("Away 1 hour 29 minutes.", rest.All.First(line => Is(line, "told")).GetProperty("told").GetProperty("text").GetString());
    }

    [Fact]
    public void A_bad_line_after_going_on_is_refused_and_the_next_good_one_goes_on()
    {
        using var scratch = new Scratch();
        var journal = scratch["boil.jsonl"];
        Of(WholeBoil.Lines.Take(5), journal);
        var rest = Of(["hello", Tick(2)], journal);
        Assert.True(Is(Assert.Single(rest.Answers[0]), "refused"));
        Assert.True(Is(rest.Answers[1][0], "phase"));
    }

    [Fact]
    public void An_answer_cut_off_by_the_power_is_completed()
    {
        using var scratch = new Scratch();
        var journal = scratch["boil.jsonl"];
        Of(WholeBoil.Lines.Take(4), journal);
        var lines = File.ReadAllLines(journal);
        File.WriteAllText(journal, string.Join('\n', lines[..^2]) + "\n" + lines[^2][..20]);
        var rest = Of([Tick(2)], journal);
        Assert.Contains("Damaged lines", rest.Errors, StringComparison.Ordinal);
        Assert.Equal("leftover-good", rest.Answers[0].Where(line => Is(line, "prompt")).Select(Step).Single());
    }

    private static string? LastPhase(StreamRun whole, int until) => whole.Answers.Take(until).SelectMany(answer => answer)
        .Where(line => Is(line, "phase")).Last().GetProperty("phase").GetString();

    /// <summary>The prompt that was open after so many lines, by running just those.</summary>
    private static string? LastPrompt(StreamRun whole, int until)
    {
        using var scratch = new Scratch();
        using var session = Commands.Opening.Open(new(null, null, "beginner", null, scratch.Folder));
        foreach (var line in WholeBoil.Lines.Take(until))
        {
            session.Hear(Journal.LineReader.Read(line), line);
        }

        return session.State.Open?.Step;
    }

    private static string? Step(JsonElement line) => line.GetProperty("prompt").GetProperty("step").GetString();

    /// <summary>
    /// A forecast line is written once the forecast has moved by enough since the last one, so that going on at a minute of its own moves when it is
    /// written. What was told as last differs by no more than that.
    /// </summary>
    private static void SameForecasts(StreamRun whole, StreamRun rest)
    {
        static Dictionary<string, JsonElement> Last(StreamRun run) => run.Answers.SelectMany(answer => answer).Where(line => Is(line, "forecast"))
            .Select(line => line.GetProperty("forecast")).GroupBy(one => one.GetProperty("name").GetString()!).ToDictionary(group => group.Key, group => group.Last());
        static double? Of(JsonElement told, string key) => told.GetProperty(key) is { ValueKind: JsonValueKind.Number } number ? number.GetDouble() : null;
        var (all, others) = (Last(whole), Last(rest));
        Assert.InRange(others.Count, 1, all.Count);
        foreach (var (name, told) in others)
        {
            var enough = double.Max((Of(all[name], "p95") - Of(all[name], "p5")) / 5 ?? 0, 1);
            foreach (var key in new[] { "p5", "p50", "p95" })
            {
                Assert.Equal(Of(all[name], key) is null, Of(told, key) is null);
                Assert.InRange((Of(told, key) - Of(all[name], key)) ?? 0, -enough, enough);
            }
        }
    }

    /// <summary>All but the forecast lines.</summary>
    private static string Figures(IEnumerable<IReadOnlyList<JsonElement>> answers) => string.Join('\n', answers.SelectMany(answer => answer)
        .Where(line => !Is(line, "forecast"))
        .Select(line => string.Join(',', line.EnumerateObject().Where(key => key.Name != "seq").Select(key => key.ToString()))));

    private static class Program
    {
        public static Process Start(params string[] arguments)
        {
            var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "panside"), arguments)
            {
                RedirectStandardInput = true,
                RedirectStandardOutput = true,
                UseShellExecute = false,
            };
            return Process.Start(start)!;
        }

        public static void ReadAnswer(Process process)
        {
            while (process.StandardOutput.ReadLine() is { } line && !line.Contains("\"ready\":true", StringComparison.Ordinal))
            {
            }
        }
    }
}
