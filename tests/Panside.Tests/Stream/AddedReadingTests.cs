using Panside.Faces;
using Panside.Guide;
using Panside.Guide.Debriefing;
using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Snapshots;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Stream;

/// <summary>A reading that the program does not come with is one row; with it every door and every face knows it. docs/adding-a-reading.md.</summary>
public class AddedReadingTests
{
    private const string Line = """{"at":"2031-03-08T17:05:00-05:00","reading":"hood-temperature","value":170,"unit":"degF"}""";

    private static readonly ReadingName Hood = new("hood-temperature", Dimension.Temperature, "hood", TimeSpan.FromMinutes(20))
    {
        Words = ["hood", "steam hood"],
        Row = "hood",
        Usual = _ => (new(40, Unit.DegreeCelsius), new(100, Unit.DegreeCelsius)),
        Possible = _ => (new(-40, Unit.DegreeCelsius), new(200, Unit.DegreeCelsius)),
        Expected = boil => boil.Last(DeedName.LitFire) is null ? null : new(80, 6),
        WouldTake = (_, _, isHigh) => isHigh ? "It would take a pan that is dry." : "It would take a pan that does not boil.",
    };

    private static readonly KnownReadings Known = KnownReadings.BuiltIn.With(Hood);

    private static readonly Setting Setting = new(
        FlowFile.Read("hood.yaml", FlowText, Vocabularies.Flow with { Readings = Known }),
        RigFile.Read("rig", RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")),
        Guidance.Beginner,
        "panside test")
    {
        Members = 200,
    };

    private static string FlowText => RepositoryFiles.Read("flows", "divided-pan.yaml").Replace(
        "      - step: tank-read\n",
        "      - step: hood-read\n        ask: hood-temperature\n        text: Read the thermometer in the hood.\n      - step: tank-read\n",
        StringComparison.Ordinal);

    [Fact]
    public void Without_its_row_no_door_knows_it()
    {
        Assert.Null(KnownReadings.BuiltIn.Find(Hood.Code));
        Assert.Throws<FaultyFileException>(() => FlowFile.Read("hood.yaml", FlowText, Vocabularies.Flow));
        Assert.Equal("reading", Assert.IsType<Unreadable>(LineReader.Read(Line)).Field);
        Assert.Throws<ArgumentException>(() => Known.With(Hood));
    }

    [Fact]
    public void A_line_of_the_stream_reads_it_and_is_written_as_it_was_read()
    {
        var read = Assert.IsType<Reading>(LineReader.Read(Line, readings: Known));
        Assert.Same(Hood, read.Name);
        Assert.Equal(Line, LineWriter.Write(read));
    }

    [Fact]
    public void Typed_words_read_it_and_the_keyboard_completes_them()
    {
        var listener = new Listener(Setting);
        foreach (var text in new[] { "hood 170", "steam hood is 170 F", "hood temperature 170", "170 F hood", "HOOD 170" })
        {
            var line = Assert.IsType<MeansLine>(listener.Understand(default, text, null)).Line;
            Assert.Equal(new Reading(default, Hood, new(170, Unit.DegreeFahrenheit)), line);
        }

        Assert.Contains("steam hood", KnownWords.Of(Setting.Flow));
    }

    [Fact]
    public void The_plain_face_asks_for_it_refuses_what_cannot_be_and_questions_what_is_not_expected()
    {
        var told = new StringWriter();
        var typed = "hood 500\nlit\nhood 300\nno\nsteam hood 170\nstatus\n";
        new PlainFace(new SessionDoor(Setting), new StringReader(typed), told, TextWriter.Null, Evening.Clock()).Run(TestContext.Current.CancellationToken);
        foreach (var text in new[]
        {
            "x 500 °F is not possible for hood: this rig can have -40 to 392 °F.",
            "? 300 °F for hood? About 176.0 °F is expected.",
            "  It would take a pan that is dry. [yes, no, or say it anew]",
            "  Heard: hood 170 °F.",
        })
        {
            Assert.Contains(text, told.ToString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_screen_asks_for_it_with_its_range_and_shows_it_in_a_row_with_its_age()
    {
        var played = new Played(new SessionDoor(Setting));
        while (played.Talk.State.Open is { } open && open.Ask != Hood.Code)
        {
            played.Talk.Say(open.Low is { } low ? $"{(low + open.High) / 2}" : open.Choices?[0] ?? "yes");
        }

        var text = Painter.Paint(played.Picture, 80, 24).ToString();
        Assert.Contains("Read the thermometer in the hood.", text);
        Assert.Contains("[usually 104 to 212 °F]", text);
        Assert.Matches(@"│ Hood not read yet", text);
        played.Talk.Say("170");
        Assert.Matches(@"│ Hood 170 °F · just now", Painter.Paint(played.Picture, 80, 24).ToString());
    }

    [Fact]
    public void A_snapshot_keeps_it()
    {
        var session = new Guide.Sessions.Session(Setting);
        session.Hear(LineReader.Read(Line, readings: Known));
        using var stream = new MemoryStream();
        StateBytes.Write(stream, session.State, new Course(Setting));
        stream.Position = 0;
        Assert.Equal(session.State.Last(Hood), StateBytes.Read(stream, Setting).State.Last(Hood));
    }
}
