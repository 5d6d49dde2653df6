using System.Diagnostics;
using Microsoft.Extensions.Time.Testing;
using Panside.Commands;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Tests.Records;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Checks;

public class ReplayTests
{
    private static readonly byte[] Boil = Recorded.Boil(200);

    [Fact]
    public void A_session_is_told_as_the_plain_face_told_it_with_the_clock_before_each_exchange()
    {
        var told = Play(Boil).Said.TrimEnd('\n').Split('\n');
        var session = new Session(Recorded.Setting(Boil));
        var answers = Record.Of(RecordBytes.Lines(Boil)).Exchanges
            .SelectMany(exchange => exchange.Line is { } line ? LinesOfText.Of(session.Hear(line)) : []).ToList();
        Assert.Equal(answers, told.Where(line => !line.StartsWith('[') && !line.StartsWith("x The line is no JSON", StringComparison.Ordinal)));
        Assert.Equal("[17:00]", told[0]);
        Assert.Contains("[17:00] note sève trouble, ½ 🍁", told);
        Assert.Contains("[17:10] wood added, 7 lb", told);
        Assert.Contains("[17:15] boil rolling", told);
        Assert.Contains("[18:45] leaving", told);
    }

    [Fact]
    public void A_passing_of_time_that_says_nothing_is_left_out()
    {
        using var scratch = new Scratch();
        StreamRun.Of([StreamRun.Tick(0), StreamRun.Tick(1), StreamRun.Tick(2)], scratch["b.jsonl"]);
        Assert.Single(Play(File.ReadAllBytes(scratch["b.jsonl"])).Said.Split('\n'), line => line.StartsWith('['));
    }

    [Theory]
    [InlineData("17:15")]
    [InlineData("2031-03-08T17:15:00-05:00")]
    [InlineData("2031-03-08T22:15:30Z")]
    public void A_time_to_stop_at_ends_it_there(string to)
    {
        var heads = Play(Boil, to: to).Said.Split('\n').Where(line => line.StartsWith('[')).ToList();
        Assert.Equal("[17:15] boil rolling", heads[^1]);
        Assert.StartsWith(Play(Boil, to: to).Said, Play(Boil).Said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_time_of_day_before_the_start_is_the_next_day_s()
    {
        using var scratch = new Scratch();
        string[] lines = [StreamRun.Tick(0), StreamRun.At((6 * 60) + 59, "\"text\":\"status\""), "{\"at\":\"2031-03-09T00:30:00-05:00\",\"text\":\"status\"}", "{\"at\":\"2031-03-09T02:00:00-05:00\",\"text\":\"status\"}"];
        StreamRun.Of(lines, scratch["b.jsonl"]);
        var said = Play(File.ReadAllBytes(scratch["b.jsonl"]), to: "00:30").Said;
        Assert.Contains("[23:59] status\n", said, StringComparison.Ordinal);
        Assert.Contains("--- 2031-03-09 ---\n[00:30] status\n", said, StringComparison.Ordinal);
        Assert.DoesNotContain("[02:00]", said, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("soon")]
    [InlineData("25:00")]
    [InlineData("2031-03-08T17:16:00")]
    public void A_time_that_is_none_is_a_sentence(string to) =>
        Assert.StartsWith($"--to is '{to}'. Expected a time of day like 17:05", Assert.Throws<UnusableException>(() => Play(Boil, to: to)).Message, StringComparison.Ordinal);

    [Fact]
    public async Task At_a_speed_the_pauses_between_the_exchanges_are_kept()
    {
        var clock = new FakeTimeProvider();
        var start = clock.GetUtcNow();
        using var output = new StringWriter { NewLine = "\n" };
        var play = Task.Run(() => new Player(output, TextWriter.Null, clock).Play(Recorded.Past(Boil), 60, null, null, CancellationToken.None), TestContext.Current.CancellationToken);
        while (!play.IsCompleted)
        {
            await Task.Delay(1, TestContext.Current.CancellationToken);
            clock.Advance(TimeSpan.FromSeconds(1));
        }

        // 105 minutes at sixty times are 105 seconds; a pause ends at the earliest when it is over.
        Assert.Equal(0, await play);
        Assert.True(clock.GetUtcNow() - start >= TimeSpan.FromSeconds(105));
        Assert.Equal(Play(Boil).Said, output.ToString());
    }

    [Fact]
    public void A_player_that_is_stopped_ends_as_interrupted()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        Assert.Equal(130, new Player(TextWriter.Null, TextWriter.Null, new FakeTimeProvider()).Play(Recorded.Past(Boil), 1, null, null, stopped.Token));
    }

    [Fact]
    public void A_record_that_agrees_is_verified_with_one_line() =>
        Assert.Equal((0, $"{Boil.Lines().Length} lines, no difference\n", ""), Recorded.Verify(Boil));

    [Theory]
    [InlineData(20)]
    [InlineData(32)]
    [InlineData(90)]
    public void The_first_difference_is_named_with_its_line_what_stood_there_and_what_comes_now(int number)
    {
        var stood = Boil.Lines()[number - 1];
        Assert.NotEqual(LineKind.In, LineShape.Of(stood).Kind);
        var changed = stood.Replace("-05:00", "-06:00", StringComparison.Ordinal);
        var (exit, said, _) = Recorded.Verify(Boil.WithLine(number, _ => changed).WithLine(120, _ => "{}"));
        Assert.Equal((1, $"boil.jsonl:{number}: the first difference\nstood: {changed}\ncomes: {stood}\n"), (exit, said));
    }

    [Fact]
    public void A_record_that_lacks_its_last_answers_differs_at_its_end()
    {
        var lines = Boil.Lines();
        var (exit, said, _) = Recorded.Verify((string.Join('\n', lines[..^1]) + "\n").Bytes());
        Assert.Equal((1, $"boil.jsonl:{lines.Length}: the first difference\nstood: nothing\ncomes: {lines[^1]}\n"), (exit, said));
    }

    [Fact]
    public void A_damaged_line_that_changes_the_answers_is_named_as_the_cause()
    {
        var number = Boil.Lines().Index().First(line => line.Item.Contains("\"text\":\"1 1/2\"", StringComparison.Ordinal)).Index + 1;
        var (exit, said, _) = Recorded.Verify(Boil.WithLine(number, _ => "{\"at\":"));
        Assert.Equal(1, exit);
        Assert.StartsWith($"boil.jsonl:{number}: the line is damaged; from here on the answers differ\n", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_torn_line_between_whole_exchanges_is_left_out_and_told()
    {
        var (exit, said, errors) = Recorded.Verify([.. Boil, .. "{\"at\":\"20\n"u8]);
        Assert.Equal((0, $"{Boil.Lines().Length} lines, no difference\n"), (exit, said));
        Assert.StartsWith($"boil.jsonl: damaged lines, left out: {Boil.Lines().Length + 1}.", errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_record_of_another_flow_is_not_played_and_the_sentence_says_which_flow_it_wants()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["b.jsonl"], Boil.WithLine(2, line => System.Text.RegularExpressions.Regex.Replace(line, "\"flow-hash\":\"[0-9a-f]*", "\"flow-hash\":\"0123456789abcdef")));
        var (exit, said, errors) = Run("replay", scratch["b.jsonl"], "--plain");
        Assert.Equal((2, ""), (exit, said));
        Assert.Contains("was made with the flow 'divided pan'", errors, StringComparison.Ordinal);
        Assert.Contains("--flow FILE", errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0.1")]
    [InlineData("-1")]
    [InlineData("4000")]
    [InlineData("NaN")]
    public void A_speed_that_nobody_can_follow_is_refused(string speed) => Assert.Equal(2, Run("replay", "none.jsonl", "--speed", speed).Exit);

    [Fact]
    public void The_program_plays_and_verifies_and_tells_what_it_cannot_read()
    {
        using var scratch = new Scratch();
        File.WriteAllBytes(scratch["b.jsonl"], Boil);
        Assert.Equal((0, Play(Boil).Said, ""), Run("replay", scratch["b.jsonl"], "--plain"));
        Assert.Equal((0, $"{Boil.Lines().Length} lines, no difference\n", ""), Run("replay", scratch["b.jsonl"], "--verify"));
        Assert.Equal((2, "", $"{scratch["no.jsonl"]}: there is no such file. Check the name.\n"), Run("replay", scratch["no.jsonl"], "--plain"));
        Assert.Equal((2, ""), (Run("replay", scratch["b.jsonl"], "--verify", "--plain") is var (exit, said, _) ? (exit, said) : default));
    }

    private static (int Exit, string Said, string Errors) Play(byte[] record, string? to = null)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        return (new Player(output, errors, TimeProvider.System).Play(Recorded.Past(record), null, null, to, CancellationToken.None), output.ToString(), errors.ToString());
    }

    private static (int Exit, string Said, string Errors) Run(params string[] arguments)
    {
        var start = new ProcessStartInfo(Path.Combine(AppContext.BaseDirectory, "panside"), arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        using var panside = Process.Start(start)!;
        var errors = panside.StandardError.ReadToEndAsync();
        var said = panside.StandardOutput.ReadToEnd();
        panside.WaitForExit();
        return (panside.ExitCode, said, errors.Result);
    }
}
