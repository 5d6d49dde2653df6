using System.Globalization;
using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Text;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Panside.Screen.Waiting;

/// <summary>
/// Writes the same to the terminal as the library's own, but a frame in one piece, and a sign without asking a table how wide it is where that is
/// plain: on a large screen, that was most of what a first frame took.
/// </summary>
internal sealed class FrameOutput : AnsiOutput
{
    /// <summary>Below it, no sign that a cell holds alone takes two columns.</summary>
    private const char FirstWide = '\u1100';

    /// <summary>Lines, blocks, bars and arrows, of which most of a screen is, take one column each.</summary>
    private static readonly (char First, char Last) Lines = ('\u2500', '\u259f');

    private readonly StringBuilder _text = new();
    private TextStyle _style;

    /// <inheritdoc/>
    public override void Write(IOutputBuffer buffer)
    {
        if (buffer.Contents is { } cells)
        {
            Attribute? shown = null;
            for (var row = 0; row < buffer.Rows; row++)
            {
                if (buffer.DirtyLines[row])
                {
                    AppendRow(cells, row, ref shown);
                    buffer.DirtyLines[row] = false;
                }
            }
        }

        if (_text.Length > 0)
        {
            Write(_text);
            _text.Clear();
        }

        // It finds no row to write any more, and does what else it does after a frame.
        base.Write(buffer);
    }

    private void AppendRow(Cell[,] cells, int row, ref Attribute? shown)
    {
        var width = cells.GetLength(1);
        MoveTo(row, 0);
        var at = 0;
        for (var column = 0; column < width; column++)
        {
            ref var cell = ref cells[row, column];
            if (!cell.IsDirty)
            {
                continue;
            }

            if (column != at)
            {
                MoveTo(row, column);
            }

            cell.IsDirty = false;
            if (cell.Attribute is { } attribute && attribute != shown)
            {
                AppendOrWriteAttribute(_text, attribute, _style);
                (shown, _style) = (attribute, attribute.Style);
            }

            _text.Append(cell.Grapheme);
            if (IsWide(cell.Grapheme) && column + 1 < width)
            {
                cells[row, ++column].IsDirty = false;
            }

            at = column + 1;
        }
    }

    private void MoveTo(int row, int column) => _text.Append(CultureInfo.InvariantCulture, $"\e[{row + 1};{column + 1}H");

    private static bool IsWide(string sign) =>
        !(sign.Length == 1 && (sign[0] < FirstWide || (sign[0] >= Lines.First && sign[0] <= Lines.Last))) && sign.GetColumns() > 1;
}
