using System.Text.RegularExpressions;
using Panside.Screen.Waiting;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Panside.Tests.Screen;

/// <summary>What reaches the terminal is what the library's own output would write.</summary>
public sealed partial class FrameOutputTests
{
    private const int Width = 30;
    private const int Height = 8;

    private static readonly string[] Signs = ["a", "7", "é", "─", "█", "▃", "…", "°", "½", "↑", "漢", "🔥", "e\u0301", " "];

    private static readonly Attribute[] Looks =
    [
        new(Color.None, Color.None), new(Color.None, Color.None, TextStyle.Bold), new(new Color(ColorName16.Red), Color.None, TextStyle.Reverse),
        new(new Color(ColorName16.Black), new Color(ColorName16.White)),
    ];

    [Fact]
    public void The_same_is_written_frame_by_frame()
    {
        var random = new Random(1);
        var (ours, theirs) = (new FrameOutput { Force16Colors = true }, new AnsiOutput { Force16Colors = true });
        var (here, there) = (Cleared(), Cleared());
        for (var frame = 0; frame < 200; frame++)
        {
            for (var change = random.Next(6); change > 0; change--)
            {
                var (column, row, look) = (random.Next(Width), random.Next(Height), Looks[random.Next(Looks.Length)]);
                var text = string.Concat(Enumerable.Range(0, random.Next(1, 12)).Select(_ => Signs[random.Next(Signs.Length)]));
                Draw(here, column, row, look, text);
                Draw(there, column, row, look, text);
            }

            ours.Write(here);
            theirs.Write(there);

            // Without a terminal, the library does not write where it moves to.
            Assert.Equal(theirs.GetLastOutput(), Move().Replace(ours.GetLastOutput(), ""));
            Assert.DoesNotContain(true, here.DirtyLines);
            Assert.DoesNotContain(here.Contents!.Cast<Cell>(), cell => cell.IsDirty);
        }
    }

    [Fact]
    public void Each_stretch_that_looks_otherwise_is_written_in_its_place()
    {
        var output = new FrameOutput();
        var buffer = Cleared();
        output.Write(buffer);
        Draw(buffer, 3, 2, Looks[0], "ab漢");
        Draw(buffer, 9, 2, Looks[0], "c");
        Draw(buffer, 0, 5, Looks[0], "d");
        output.Write(buffer);

        // The library holds the sign behind a single one for changed too.
        Assert.Equal("\e[3;1H\e[3;4Hab漢\e[3;10Hc \e[6;1Hd ", Look().Replace(output.GetLastOutput(), ""));
    }

    private static OutputBufferImpl Cleared()
    {
        var buffer = new OutputBufferImpl();
        buffer.SetSize(Width, Height);
        return buffer;
    }

    private static void Draw(OutputBufferImpl buffer, int column, int row, Attribute look, string text)
    {
        buffer.CurrentAttribute = look;
        buffer.Move(column, row);
        buffer.AddStr(text);
    }

    [GeneratedRegex("\e\\[[0-9]+;[0-9]+H")]
    private static partial Regex Move();

    [GeneratedRegex("\e\\[[0-9;]*m")]
    private static partial Regex Look();
}
