using System.Text.Json;
using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Practice;
using Panside.Practice.Simulation;
using Panside.Reporting;
using Panside.Tests.Practice;
using Panside.Tests.Reckon;
using Panside.Tests.Records;
using Panside.Tests.Reporting;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Stream;

/// <summary>What is poured into the pan by hand, through every way in and out: stream, record, table, report, practice.</summary>
public class PouredTests
{
    private static readonly string[] Boil =
    [
        Tick(0), Text(1, "yes"), Text(2, "depth 1.5"), Text(3, "tank 30"), Text(4, "sap 2"), Text(5, "lit"), Text(40, "boil rolling"),
        At(41, "\"did\":\"fill-pan\",\"value\":2,\"unit\":\"gal\""),
        Text(42, "poured in half a gallon of water"),
        Text(43, "added 1 gal"), Text(44, "pan"),
        Text(45, "poured 3 gal"), Text(46, "undo"),
        Text(50, "tank 26"), Text(51, "leave"), Text(52, "yes"),
    ];

    [Fact]
    public void A_pour_is_heard_as_the_line_in_that_it_is()
    {
        var run = Of(Boil);
        Assert.Equal("""{"did":"fill-pan","value":0.5,"unit":"gal","is":"water"}""", Heard(run.Answers[8]));
        Assert.Equal("""{"did":"fill-pan","value":1,"unit":"gal","is":"sap"}""", Heard(run.Answers[10]));
        var question = Assert.Single(run.Answers[9], line => Is(line, "question")).GetProperty("question");
        Assert.Equal("""["pan","tank"]""", question.GetProperty("choices").GetRawText());
        Assert.DoesNotContain(run.Answers[9], line => Is(line, "heard"));
    }

    [Fact]
    public void A_record_of_pours_is_whole_replays_to_the_byte_and_is_gone_on_with_at_the_open_question()
    {
        using var scratch = new Scratch();
        Of(Boil[..10], scratch["boil.jsonl"]);
        var goesOn = Of(Boil[10..], scratch["boil.jsonl"]);
        Assert.Contains("fill-pan", Heard(goesOn.Answers[0]), StringComparison.Ordinal);
        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        Assert.Equal((0, ""), (Recorded.Verify(bytes).Exit, Recorded.Verify(bytes).Errors));
        Assert.Equal(ExitStatus.Done, Captured.Run("check", scratch["boil.jsonl"]).Status);
    }

    [Fact]
    public void A_report_and_a_table_tell_of_pours_and_the_table_is_brought_in_again_with_them()
    {
        using var scratch = new Scratch();
        Of(Boil, scratch["boil.jsonl"]);
        var story = Story.Of(scratch["boil.jsonl"]);
        Assert.Equal("3 gal of sap and 0.5 gal of water", story.Poured);
        var report = MarkdownPages.Of(BoilReport.Of(story));
        Assert.Contains("Poured in by hand | 3 gal of sap and 0.5 gal of water", report, StringComparison.Ordinal);
        Assert.Contains("Poured into the pan, 0.5 gal of water", report, StringComparison.Ordinal);

        var table = FactRows.Of(story);
        Assert.StartsWith("at,what,name,value,unit,is\n", table, StringComparison.Ordinal);
        Assert.Contains("did,fill-pan,0.5,gal,water\n", table, StringComparison.Ordinal);
        Assert.DoesNotContain("fill-pan,3,", table, StringComparison.Ordinal);
        File.WriteAllText(scratch["boil.csv"], table);
        var run = Captured.Run("import", scratch["boil.csv"], "--journal", scratch["again.jsonl"], "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.Equal(table, FactRows.Of(Story.Of(scratch["again.jsonl"])));
    }

    private static readonly string[] Unmeasured = [Tick(0), Text(1, "yes"), Text(2, "depth 1.5"), Text(3, "tank 30"), Text(5, "lit"), Text(30, "boil rolling"), Text(40, "poured some water"), Text(41, "yes"), Text(42, "depth 2"), Text(51, "leave"), Text(52, "yes")];

    [Fact]
    public void A_pour_that_nobody_measured_is_heard_kept_and_brought_in_again()
    {
        using var scratch = new Scratch();
        var run = Of(Unmeasured, scratch["boil.jsonl"]);
        Assert.Equal("""{"did":"fill-pan","is":"water"}""", Heard(run.Answers[6]));
        var bytes = File.ReadAllBytes(scratch["boil.jsonl"]);
        Assert.Equal((0, ""), (Recorded.Verify(bytes).Exit, Recorded.Verify(bytes).Errors));
        Assert.Equal(ExitStatus.Done, Captured.Run("check", scratch["boil.jsonl"]).Status);
        var table = FactRows.Of(Story.Of(scratch["boil.jsonl"]));
        Assert.Contains("text,poured some water into the pan", table, StringComparison.Ordinal);
        File.WriteAllText(scratch["boil.csv"], table);
        var brought = Captured.Run("import", scratch["boil.csv"], "--journal", scratch["again.jsonl"], "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, ""), (brought.Status, brought.Errors));
        Assert.Equal(table, FactRows.Of(Story.Of(scratch["again.jsonl"])));
    }

    [Fact]
    public void The_stream_says_into_which_of_two_pans_and_a_line_without_its_amount_stays_refused()
    {
        var line = LineReader.Read(At(1, "\"did\":\"fill-pan\",\"value\":2,\"unit\":\"gal\",\"is\":\"water\",\"pan\":\"front\""));
        Assert.Equal((Pans.Front, Liquids.Water), (Assert.IsType<Did>(line).Pan, ((Did)line).Is));
        Assert.Equal(line, LineReader.Read(LineWriter.Write(line)));
        Assert.Equal("pan", Assert.IsType<Unreadable>(LineReader.Read(At(1, "\"did\":\"fill-pan\",\"value\":2,\"unit\":\"gal\",\"pan\":\"left\""))).Field);
        Assert.IsType<Unreadable>(LineReader.Read(At(1, "\"did\":\"fill-pan\",\"is\":\"water\"")));
        Assert.IsType<Unreadable>(LineReader.Read(At(1, "\"did\":\"add-wood\",\"value\":2,\"unit\":\"lb\",\"pan\":\"front\"")));
    }

    [Fact]
    public void A_table_without_the_sixth_column_takes_a_pour_for_sap()
    {
        var (line, _) = FactRows.Line(["2031-03-08T12:00:00-05:00", "did", "fill-pan", "2", "gal"]);
        Assert.Equal("sap", Assert.IsType<Did>(line).Is);
    }

    /// <summary>Records of before: a deed without the key reads as it did, and is written as it was.</summary>
    [Theory]
    [InlineData("""{"at":"2031-03-08T17:05:00-05:00","did":"refill-tank","value":5,"unit":"gal"}""")]
    [InlineData("""{"at":"2031-03-08T17:05:00-05:00","did":"lit-fire"}""")]
    [InlineData("""{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":2,"unit":"gal","is":"water"}""")]
    public void A_deed_is_written_as_it_was_read(string line) => Assert.Equal(line, LineWriter.Write(LineReader.Read(line)));

    [Fact]
    public void Only_advice_that_makes_ready_carries_the_mark()
    {
        var run = Of([.. Boil[..7], Text(40, "depth 1.5"), Text(41, "water 212"), Text(42, "open"), Text(43, "draw 214")]);
        var advice = run.All.Where(line => Is(line, "advice")).Select(line => line.GetProperty("advice")).ToList();
        Assert.Contains(advice, one => one.GetProperty("action").GetString() == "close-draw" && one.GetProperty("prepare").GetBoolean());
        Assert.Contains(advice, one => one.GetProperty("action").GetString() == "add-wood" && !one.TryGetProperty("prepare", out _));
        Assert.DoesNotContain(advice, one => one.TryGetProperty("prepare", out var prepare) && prepare.ValueKind != JsonValueKind.True);
        Assert.All(advice, one => Assert.True(!one.TryGetProperty("prepare", out _) || one.GetProperty("action").GetString() is "close-draw" or "open-draw" or "hold-wood"));
    }

    [Fact]
    public void What_a_person_says_was_poured_is_in_the_simulated_pan()
    {
        using var boil = new AtTheRig("mid-boil");
        boil.Come();
        var before = boil.Rig.Truth;
        boil.Type("poured 2 gal of water");
        var after = boil.Rig.Truth;
        double Water(Panside.Practice.Physics.Truth truth) => truth.Pan.Sum(cell => cell.Water);
        Assert.Equal(2 * 3.785, Water(after) - Water(before), 0.1);
        Assert.Equal(before.Pan.Sum(cell => cell.Sugar), after.Pan.Sum(cell => cell.Sugar), 0.01);
        Assert.Equal(before.Tank.Mass, after.Tank.Mass, 0.2);
        boil.Type("undo");
        Assert.True(Water(boil.Rig.Truth) > Water(before) + 7);
    }

    /// <summary>A pan that falls behind a hung float is filled by hand, and each pail is told.</summary>
    [Fact]
    public void The_simulated_operator_who_is_told_to_pour_tells_what_was_poured()
    {
        var scenario = ScenarioLibrary.Of("float-stuck");
        var said = new List<LineIn>();
        using var scratch = new Scratch();
        using var session = Opening.Open(new(null, null, "beginner", null, scratch.Folder), practice: true, ScenarioLibrary.RigOf(scenario));
        var rig = new PracticeRig(session.Setting.Rig, scenario, 1);
        var start = new DateTimeOffset(2031, 3, 8, 16, 0, 0, TimeSpan.Zero);
        var door = new Panside.Faces.PracticeDoor(session);
        var boil = new Unattended(door, rig, new Panside.Practice.Operator.PracticeOperator(rig, session.Setting.Units, 1), start)
        {
            Overheard = (line, _) => said.Add(line),
        };
        var outcome = boil.Run();
        Assert.True(outcome.IsGood);
        Assert.Contains(said, line => line is Did { Name.Code: "fill-pan", Measure.Value: > 0.5 });
        Assert.Equal(session.State.Pours.Count, said.Count(line => line is Did { Name.Code: "fill-pan" }));
        Assert.InRange(outcome.Questions, 0, 6);
    }

    private static string Heard(IReadOnlyList<JsonElement> answer) => Assert.Single(answer, line => Is(line, "heard")).GetProperty("heard").GetRawText();
}
