using System.Globalization;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class PictureTests
{
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

    [Fact]
    public void The_page_on_the_screen_shows_the_programs_own_pictures() => Pictures.SamePage("screen.md", name =>
    {
        var cut = name.LastIndexOf('-');
        return name[..cut] == "home" ? HomeTests.Home(name[(cut + 1)..]) : Draw(Played.Scene(name[..cut]), name[..cut], name[(cut + 1)..]);
    });

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
