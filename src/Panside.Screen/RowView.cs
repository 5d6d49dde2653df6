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
    private readonly Palette _palette;
    private readonly bool _isAscii;
    private StyledLine _shown = StyledLine.Empty;

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
            _shown = line;
            SetNeedsDraw();
        }
    }

    /// <summary>Nothing is cleared that is written over: most of the time until a first screen would go into blanks.</summary>
    protected override bool OnClearingViewport() => _shown.Width >= Viewport.Width;

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        Move(0, 0);
        foreach (var piece in _shown.Pieces)
        {
            SetAttribute(_palette.Of(piece.Tone));
            AddStr(_isAscii ? Ascii.Of(piece.Text) : piece.Text);
        }

        return true;
    }
}
