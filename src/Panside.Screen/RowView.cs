using System.Drawing;
using Panside.Screen.Painting;
using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;

namespace Panside.Screen;

/// <summary>
/// One row of the screen, with a dirty mark of its own: the library then draws, and writes to the terminal, the rows that look otherwise and no
/// others.
/// </summary>
internal sealed class RowView : View
{
    /// <summary>Signs that stand in long stretches, each in one column.</summary>
    private const string Stretches = " ─━░▒▓█▁▂▃▄▅▆▇";

    private const int LeastStretch = 4;

    private readonly Palette _palette;
    private readonly bool _isAscii;
    private StyledLine _shown = StyledLine.Empty;
    private bool _isSimple;

    /// <summary>A row with nothing on it.</summary>
    /// <param name="row">Where it stands, from the top.</param>
    /// <param name="palette">The colors.</param>
    /// <param name="isAscii">Whether the terminal shows ASCII only.</param>
    public RowView(int row, Palette palette, bool isAscii)
    {
        (_palette, _isAscii) = (palette, isAscii);
        (Y, Width, Height) = (row, Dim.Fill(), 1);
        CanFocus = false;
        SetScheme(new(palette.Of(Tone.Plain)));
    }

    /// <summary>Shows a line; draws nothing where it looks the same as before.</summary>
    public void Show(StyledLine line)
    {
        if (!line.Equals(_shown))
        {
            (_shown, _isSimple) = (line, line.Pieces.All(piece => piece.Text.All(IsSimple)));
            SetNeedsDraw();
        }
    }

    /// <summary>Nothing is cleared that is written over: most of the time until a first screen would go into blanks.</summary>
    protected override bool OnClearingViewport() => _isSimple && _shown.Width >= Viewport.Width;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        Move(0, 0);
        var column = 0;
        foreach (var piece in _shown.Pieces)
        {
            SetAttribute(_palette.Of(piece.Tone));
            var text = _isAscii ? Ascii.Of(piece.Text) : piece.Text;
            if (_isSimple)
            {
                column = Draw(text, column);
            }
            else
            {
                AddStr(text);
            }
        }

        return true;
    }

    /// <summary>Whether a sign is one column for whoever counts: marks that join, wide signs and pictures are left to the library.</summary>
    private static bool IsSimple(char sign) => sign switch
    {
        < ' ' or (>= '\u007f' and < '\u00a0') or '\u00ad' => false,
        < '\u0300' or '…' or '↑' or '↓' or (>= '\u2500' and < '\u25d0') => true,
        _ => false,
    };

    /// <summary>Draws a text from a column on; long stretches of one sign, of which most of a screen is, as one sign that is copied.</summary>
    /// <returns>The column behind it.</returns>
    private int Draw(string text, int column)
    {
        var from = 0;
        for (var at = 0; at < text.Length;)
        {
            var length = Stretches.Contains(text[at]) ? text.AsSpan(at).IndexOfAnyExcept(text[at]) is >= 0 and var other ? other : text.Length - at : 1;

            if (length >= LeastStretch)
            {
                column = Write(text[from..(at + 1)], column);
                Copy(column - 1, length - 1);
                (column, from) = (column + length - 1, at + length);
            }

            at += length;
        }

        return Write(text[from..], column);
    }

    /// <summary>Copies what stands in a column to those behind it; nothing where the terminal has just become smaller than the row.</summary>
    private void Copy(int column, int times)
    {
        var place = ViewportToScreen(new Point(column, 0));
        if (App?.Driver?.Contents is { } cells && place is { X: >= 0, Y: >= 0 } && place.Y < cells.GetLength(0))
        {
            for (var to = place.X + 1; to <= place.X + times && to < cells.GetLength(1); to++)
            {
                cells[place.Y, to] = cells[place.Y, place.X];
            }
        }
    }

    private int Write(string text, int column)
    {
        Move(column, 0);
        AddStr(text);
        return column + text.Length;
    }
}
