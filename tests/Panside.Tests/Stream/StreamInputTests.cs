using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Stream;

/// <summary>Every line in of the stream, taken and refused.</summary>
public class StreamInputTests
{
    private static readonly string[] Good = [Tick(0), Text(1, "yes"), Text(2, "tank 30"), Tick(30), Text(31, "tank 26"), Text(32, "status")];

    /// <summary>What is answered where nothing bad is among them.</summary>
    private static readonly Lazy<StreamRun> GoodAlone = new(() => Of(Good));

    public static TheoryData<string, double, string> Readings { get; } = new()
    {
        { "tank-volume", 22.5, "gal" }, { "tank-volume", 60, "qt" }, { "tank-volume", 80, "L" }, { "tank-volume", 80000, "mL" },
        { "pan-depth", 1.5, "in" }, { "pan-depth", 0.125, "ft" }, { "pan-depth", 4, "cm" }, { "pan-depth", 40, "mm" },
        { "draw-temperature", 212, "degF" }, { "draw-temperature", 100, "degC" },
        { "boiling-water-temperature", 210.5, "degF" }, { "boiling-water-temperature", 99.2, "degC" },
        { "sap-brix", 2.1, "Brix" }, { "pan-brix", 12, "Brix" }, { "draw-brix", 40, "Brix" }, { "hydrometer-brix", 59, "Brix" },
        { "sample-temperature", 185, "degF" }, { "barometer", 30.02, "inHg" }, { "barometer", 1013, "hPa" },
        { "barometer", 101.3, "kPa" }, { "station-pressure", 29, "inHg" }, { "drawn-volume", 2, "qt" },
        { "air-temperature", -3, "degC" },
    };

    public static TheoryData<string, string> Observations { get; } =
        new(ObservationName.All.SelectMany(name => name.States.Select(state => (name.Code, state))));

    public static TheoryData<string> Refused { get; } =
    [
        "", "hello", "[]", "42", "null", "{", """{"at":"2031-03-08T17:05:00-05:00"}""",
        """{"tick":true}""",
        """{"at":null,"tick":true}""",
        """{"at":"yesterday","tick":true}""",
        """{"at":"2031-03-08T17:05:00","tick":true}""",
        """{"at":"2031-03-08","tick":true}""",
        """{"at":"2031-02-30T17:05:00-05:00","tick":true}""",
        """{"at":1930000000,"tick":true}""",
        """{"at":"9999-12-31T23:59:59-05:00","tick":true}""",
        """{"at":"2031-03-08T17:05:00-05:00","tick":false}""",
        """{"at":"2031-03-08T17:05:00-05:00","tick":1}""",
        """{"at":"2031-03-08T17:05:00-05:00","tick":true,"tick":true}""",
        """{"at":"2031-03-08T17:05:00-05:00","tick":true,"text":"wood"}""",
        """{"at":"2031-03-08T17:05:00-05:00","tick":true,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":22.5}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":"22","unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":22,"unit":"degF"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":22,"unit":"bushel"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":22,"unit":"GAL"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":1e400,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":-1,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":36,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"pan-depth","value":8.5,"unit":"in"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"draw-temperature","value":900,"unit":"degF"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"hydrometer-brix","value":86,"unit":"Brix"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"mood","value":1,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","reading":"tank-volume","value":22,"unit":"gal","note":"x"}""",
        """{"at":"2031-03-08T17:05:00-05:00","observed":"boil"}""",
        """{"at":"2031-03-08T17:05:00-05:00","observed":"boil","is":"wild"}""",
        """{"at":"2031-03-08T17:05:00-05:00","observed":"weather","is":"rolling"}""",
        """{"at":"2031-03-08T17:05:00-05:00","observed":"boil","is":"rolling","value":1}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"dance"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"lit-fire","value":7,"unit":"lb"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"add-wood","value":7}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"add-wood","value":7,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"add-wood","value":0,"unit":"lb"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","is":"sap"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":2,"unit":"lb","is":"sap"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":2,"unit":"gal","is":"syrup"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":2,"unit":"gal","is":true}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":2,"unit":"gal","of":"sap"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":0,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"fill-pan","value":400,"unit":"gal"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"refill-tank","value":2,"unit":"gal","is":"sap"}""",
        """{"at":"2031-03-08T17:05:00-05:00","did":"lit-fire","is":"water"}""",
        """{"at":"2031-03-08T17:05:00-05:00","answer":"maybe"}""",
        """{"at":"2031-03-08T17:05:00-05:00","answer":true}""",
        """{"at":"2031-03-08T17:05:00-05:00","text":7}""",
        """{"at":"2031-03-08T17:05:00-05:00","text":"frobnicate"}""",
        """{"at":"2031-03-08T17:05:00-05:00","text":""}""",
        """{"at":"2031-03-08T17:05:00-05:00","song":"la"}""",
    ];

    [Theory]
    [MemberData(nameof(Readings))]
    public void Every_reading_in_every_unit_is_taken(string name, double value, string unit)
    {
        var run = Of([Tick(0), Reading(1, name, value, unit)]);
        Assert.DoesNotContain(run.Answers[1], line => Is(line, "refused") || Is(line, "question"));
    }

    [Fact]
    public void Every_reading_name_is_exercised() =>
        Assert.Equal(
            KnownReadings.BuiltIn.All.Where(name => name != ReadingName.BackPanDepth).Select(name => name.Code).Order(StringComparer.Ordinal),
            Readings.Select(row => row.Data.Item1).Distinct().Order(StringComparer.Ordinal));

    /// <summary>The built-in rig has one pan; `TwoPansTests` takes it where there are two.</summary>
    [Fact]
    public void The_depth_of_a_pan_that_the_rig_has_not_is_refused() =>
        Assert.Contains(Of([Tick(0), Reading(1, "back-pan-depth", 2, "in")]).Answers[1], line => Is(line, "refused"));

    [Theory]
    [MemberData(nameof(Observations))]
    public void Every_observation_is_taken_at_any_time(string name, string state)
    {
        var run = Of([Tick(0), At(1, $"\"observed\":\"{name}\",\"is\":\"{state}\"")]);
        Assert.DoesNotContain(run.Answers[1], line => Is(line, "refused") || Is(line, "question"));
    }

    [Theory]
    [InlineData("\"did\":\"lit-fire\"")]
    [InlineData("\"did\":\"add-wood\"")]
    [InlineData("\"did\":\"add-wood\",\"value\":7,\"unit\":\"lb\"")]
    [InlineData("\"did\":\"add-wood\",\"value\":3,\"unit\":\"kg\"")]
    [InlineData("\"did\":\"open-draw\"")]
    [InlineData("\"did\":\"close-draw\"")]
    [InlineData("\"did\":\"close-draw\",\"value\":2,\"unit\":\"qt\"")]
    [InlineData("\"did\":\"spread-coals\"")]
    [InlineData("\"did\":\"flood-pan\"")]
    [InlineData("\"did\":\"add-defoamer\"")]
    [InlineData("\"did\":\"cover-pan\"")]
    [InlineData("\"did\":\"refill-tank\",\"value\":5,\"unit\":\"gal\"")]
    [InlineData("\"did\":\"fill-pan\",\"value\":2,\"unit\":\"gal\"")]
    [InlineData("\"did\":\"fill-pan\",\"value\":2,\"unit\":\"gal\",\"is\":\"sap\"")]
    [InlineData("\"did\":\"fill-pan\",\"value\":2,\"unit\":\"L\",\"is\":\"water\"")]
    public void Every_deed_is_taken_at_any_time(string deed)
    {
        var run = Of([Tick(0), At(1, deed)]);
        Assert.DoesNotContain(run.Answers[1], line => Is(line, "refused") || Is(line, "question"));
    }

    [Fact]
    public void Leaving_is_questioned_while_it_is_not_clear_and_yes_ends_the_session_unsafe()
    {
        var run = Of([Tick(0), At(1, "\"did\":\"leave\""), At(2, "\"answer\":\"yes\""), Tick(3)]);
        Assert.Contains(run.Answers[1], line => Is(line, "question"));
        Assert.False(Assert.Single(run.Answers[2], line => Is(line, "over")).GetProperty("over").GetProperty("safe").GetBoolean());
        Assert.Equal(1, run.Exit);
        Assert.Equal(3, run.Answers.Count);
    }

    [Theory]
    [InlineData("yes", "pan-sound")]
    [InlineData("no", "pan-sound")]
    [InlineData("skip", "pan-sound")]
    public void Every_answer_moves_on(string word, string step)
    {
        var run = Of([Tick(0), At(1, $"\"answer\":\"{word}\"")]);
        var prompt = Assert.Single(run.Answers[1], line => Is(line, "prompt")).GetProperty("prompt");
        Assert.Equal(step, prompt.GetProperty("step").GetString());
    }

    [Fact]
    public void Going_on_is_no_line_that_a_program_says()
    {
        var run = Of([Tick(0), At(1, "\"resume\":true")]);
        Assert.Equal("resume", Assert.Single(run.Answers[1], line => Is(line, "refused")).GetProperty("refused").GetProperty("field").GetString());
    }

    [Fact]
    public void A_time_finer_than_any_clock_is_taken()
    {
        var run = Of([Tick(0), "{\"at\":\"2031-03-08T17:30:00.123456789012-05:00\",\"reading\":\"tank-volume\",\"value\":20,\"unit\":\"gal\"}"]);
        Assert.DoesNotContain(run.Answers[1], line => Is(line, "refused"));
    }

    [Fact]
    public void Later_asks_again_when_ticks_bring_the_time()
    {
        var run = Of([Tick(0), At(1, "\"answer\":\"later\""), Tick(3), Tick(7)]);
        Assert.DoesNotContain(run.Answers[2], line => Is(line, "prompt"));
        Assert.Equal("season-first", Assert.Single(run.Answers[3], line => Is(line, "prompt")).GetProperty("prompt").GetProperty("step").GetString());
    }

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_cannot_be_is_refused_with_a_reason_and_changes_nothing(string bad)
    {
        var without = GoodAlone.Value;
        var with = Of([.. Good[..2], bad.Replace("17:05:00", "17:01:30", StringComparison.Ordinal), .. Good[2..]]);

        var refused = Refusal(with.Answers[2]);
        Assert.NotEmpty(refused.GetProperty("why").GetString()!);
        Assert.DoesNotContain(with.Answers[2], line => !Is(line, "refused") && !Is(line, "heard"));
        Assert.Equal(Spoken(without.Answers[2..]), Spoken(with.Answers[3..]));
    }

    [Fact]
    public void A_line_that_is_too_late_is_refused_and_answered_with_the_last_good_time()
    {
        var run = Of([Tick(10), Tick(9), Tick(11)]);
        var refused = Assert.Single(run.Answers[1]);
        Assert.Equal("at", refused.GetProperty("refused").GetProperty("field").GetString());
        Assert.Equal("2031-03-08T17:10:00-05:00", refused.GetProperty("at").GetString());
        Assert.Equal("2031-03-08T17:10:00-05:00", run.Ready[1].GetProperty("at").GetString());
    }

    [Fact]
    public void A_line_without_a_good_time_before_any_good_one_is_answered_without_a_time()
    {
        var run = Of(["hello", Tick(0)]);
        Assert.Equal(JsonValueKind.Null, Assert.Single(run.Answers[0]).GetProperty("at").ValueKind);
        Assert.Equal(JsonValueKind.Null, run.Ready[0].GetProperty("at").ValueKind);
        Assert.Equal(2, run.Answers[1][0].GetProperty("seq").GetInt32());
    }

    [Theory]
    [InlineData("\"reading\":\"tank-volume\",\"value\":22.5,\"unit\":\"gal\"")]
    [InlineData("\"observed\":\"boil\",\"is\":\"rolling\"")]
    [InlineData("\"did\":\"add-wood\",\"value\":7,\"unit\":\"lb\"")]
    public void The_same_line_at_the_same_time_is_refused(string line)
    {
        var run = Of([Tick(0), At(1, line), At(1, line), At(2, line)]);
        Assert.DoesNotContain(run.Answers[1], one => Is(one, "refused"));
        Assert.Contains("already", Refusal(run.Answers[2]).GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.DoesNotContain(run.Answers[3], one => Is(one, "refused"));
    }

    [Theory]
    [InlineData("2031-03-08T22:01:00Z")]
    [InlineData("2031-03-08T17:01:00.250-05:00")]
    [InlineData("2031-03-08T23:01:00+01:00")]
    public void Any_offset_is_taken_and_given_back_as_it_was_written(string at)
    {
        var run = Of([Tick(0), $$"""{"at":"{{at}}","text":"status"}"""]);
        Assert.All(run.Answers[1], line => Assert.Equal(at, line.GetProperty("at").GetString()));
    }

    private static string Reading(int minute, string name, double value, string unit) => At(
        minute, $"\"reading\":\"{name}\",\"value\":{value.ToString(System.Globalization.CultureInfo.InvariantCulture)},\"unit\":\"{unit}\"");

    /// <summary>Answers without their sequence numbers, which a refusal moves on.</summary>
    private static string Spoken(IEnumerable<IReadOnlyList<JsonElement>> answers) => string.Join('\n', answers.SelectMany(answer => answer)
        .Select(line => string.Join(',', line.EnumerateObject().Where(key => key.Name != "seq").Select(key => key.ToString()))));
}
