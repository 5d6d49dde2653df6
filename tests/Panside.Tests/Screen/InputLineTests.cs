using Panside.Screen.Typing;

namespace Panside.Tests.Screen;

public sealed class InputLineTests
{
    [Fact]
    public void Whole_characters_are_taken_away_and_passed_over()
    {
        var line = new InputLine();
        line.Insert("a½🔥b");
        line.Left();
        line.Backspace();
        Assert.Equal("a½b", line.Text);
        line.Home();
        line.Right();
        line.Delete();
        Assert.Equal(("ab", 1), (line.Text, line.Caret));
    }

    [Fact]
    public void At_either_end_nothing_happens()
    {
        var line = new InputLine();
        line.Left();
        line.Right();
        line.Backspace();
        line.Delete();
        line.Older();
        line.Newer();
        Assert.Equal(("", 0), (line.Text, line.Caret));
    }

    [Fact]
    public void Words_and_the_whole_beginning_can_be_taken_away()
    {
        var line = new InputLine();
        line.Insert("refill 5 gal");
        line.BackspaceWord();
        Assert.Equal("refill 5 ", line.Text);
        line.BackspaceWord();
        Assert.Equal("refill ", line.Text);
        line.Clear();
        Assert.Equal("", line.Text);
    }

    [Fact]
    public void Line_ends_in_pasted_text_do_not_send_it()
    {
        var line = new InputLine();
        line.Insert("note a\r\nb");
        Assert.Equal("note ab", line.Text);
    }
}
