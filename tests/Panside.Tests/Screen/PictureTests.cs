using System.Globalization;
using Panside.Faces;
using Panside.Journal;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class PictureTests
{
    private const string Debrief = "debrief-80x24";

    private static readonly string[] Sizes = ["80x24", "100x30", "160x50"];

    public static TheoryData<string> Scenes => new(Evening.Scenes.Keys);

    [Theory]
    [MemberData(nameof(Scenes))]
    public void The_screen_looks_as_its_pictures(string scene)
    {
        var played = Played.Scene(scene);
        foreach (var size in Sizes)
        {
            Pictures.Same($"{scene}-{size}", Draw(played, scene, size));
        }
    }

    [Theory]
    [InlineData("screen.md")]
    [InlineData("screen-boil.md")]
    [InlineData("screen-endings.md")]
    public void The_pages_on_the_screen_show_the_programs_own_pictures(string page) => Pictures.SamePage(page, name =>
    {
        var cut = name.LastIndexOf('-');
        return name == Debrief ? Debriefed()
            : name[..cut] == "home" ? HomeTests.Home(name[(cut + 1)..])
            : Draw(Played.Scene(name[..cut]), name[..cut], name[(cut + 1)..]);
    });

    [Fact]
    public void The_picture_that_the_readme_opens_with_is_the_programs_own()
    {
        var picture = Played.Scene("draw-off").Picture;
        Pictures.SameFile(ScreenSvg.Of(Painter.Paint(picture, 120, 40), "The screen of a boil at a draw, 120 columns by 40 rows"), "docs", "screen.svg");
        Assert.Contains("](docs/screen.svg)", RepositoryFiles.Read("README.md")[..2000]);
    }

    [Fact]
    public void The_debrief_of_an_evening_fits_a_terminal_of_80_by_24()
    {
        var rows = Debriefed().Split('\n');
        Assert.InRange(rows.Length, 6, 23);
        Assert.All(rows, row => Assert.InRange(row.Length, 1, 80));
        Assert.All((string[])["Debrief", "Planned ", "Happened ", "Why ", "Next time ", "Score "], heading => Assert.Contains(rows, row => row.StartsWith(heading, StringComparison.Ordinal)));
    }

    /// <summary>What stands on the normal screen when the full screen was left after the end.</summary>
    private static string Debriefed()
    {
        using var session = RecordedSession.New(SessionDoor.BuiltIn(), _ => null);
        var played = Played.Scene("over", new RecordedConversation(session));
        using var output = new StringWriter { NewLine = "\n" };
        FullScreenFace.Tell(session, played.Talk.Outcome, output);
        return output.ToString().TrimEnd('\n');
    }

    private static string Draw(Played played, string scene, string size)
    {
        var sides = size.Split('x').Select(side => int.Parse(side, CultureInfo.InvariantCulture)).ToArray();
        using var stage = new Stage(sides[0], sides[1], played);
        if (scene == "help")
        {
            stage.Type("help");
        }
        else if (scene == "large")
        {
            stage.Press(Key.F6);
        }

        return stage.Text;
    }
}
