using Panside.Guide.Hearing;
using Panside.Screen.Typing;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

public sealed class CompletionTests
{
    [Fact]
    public void Tab_completes_the_word_begun_and_again_gives_the_next()
    {
        var completion = new Completion(["tank", "tank in", "depth"]);
        Assert.Equal("tank", completion.Of("ta"));
        Assert.Equal("tank in", completion.Of("tank"));
        Assert.Equal("tank", completion.Of("tank in"));
        Assert.Equal("depth", completion.Of("d"));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("xyz")]
    public void Where_nothing_begins_so_the_line_stays(string line) =>
        Assert.Equal(line, new Completion(["tank"]).Of(line));

    [Fact]
    public void A_completed_word_is_sent_as_if_it_had_been_typed()
    {
        using var stage = Stage.At("steady-boil");
        stage.Letters("roll");
        stage.Press(Key.Tab);
        Assert.Contains("\nYou: rolling", stage.Text);
        stage.Press(Key.Enter);
        Assert.Contains("Heard: boil rolling", stage.Text);
    }

    [Fact]
    public void The_words_of_every_boil_and_of_its_flow_are_offered_once()
    {
        var door = new SessionDoor(SessionDoor.BuiltIn());
        var words = KnownWords.Of(door.Setting.Flow);
        Assert.Contains("tank", words);
        Assert.Contains("emergency", words);
        Assert.Contains("rolling", words);
        Assert.Equal(words.Count, words.Distinct(StringComparer.OrdinalIgnoreCase).Count());
    }
}
