using System.Drawing;
using Panside.Screen.Painting;
using Panside.Screen.Talking;
using Terminal.Gui.Drawing;
using Terminal.Gui.Drivers;
using Terminal.Gui.Input;
using Terminal.Gui.ViewBase;
using Terminal.Gui.Views;

namespace Panside.Screen;

/// <summary>Copies the painted frame to the terminal, a row to each view in it, and hands keys on.</summary>
internal sealed class ScreenWindow : Window
{
    private readonly ITalk _talk;
    private readonly Desk _desk;
    private readonly Palette _palette;
    private readonly List<RowView> _rows = [];
    private Frame? _shown;
    private object? _looking;

    /// <summary>A window on a conversation.</summary>
    public ScreenWindow(ITalk talk, Palette palette)
    {
        (_talk, _desk, _palette) = (talk, new(talk), palette);
        BorderStyle = LineStyle.None;
        Width = Dim.Fill();
        Height = Dim.Fill();
        CanFocus = true;
        SetScheme(new(palette.Of(Tone.Plain)));
    }

    /// <summary>Whether the operator has left.</summary>
    public bool IsFinished => _desk.IsFinished;

    /// <summary>Whether the terminal shows ASCII only.</summary>
    public bool IsAscii { get; init; }

    /// <summary>Rings the terminal's bell once; null where it stays silent.</summary>
    public Action? Ring { get; init; }

    /// <summary>Stops the program until it is gone on with; null where there is no shell to go back to.</summary>
    public Action? Stop { get; init; }

    /// <inheritdoc/>
    protected override void OnIsRunningChanged(bool newIsRunning)
    {
        base.OnIsRunningChanged(newIsRunning);
        if (newIsRunning)
        {
            _looking = App!.AddTimeout(_talk.LookEvery, () =>
            {
                _talk.Check();
                if (_talk.TakeRing())
                {
                    Ring?.Invoke();
                }

                return Refresh();
            });
            App!.Paste += OnPasted;
            Refresh();
        }
        else
        {
            App?.Paste -= OnPasted;
            if (_looking is not null)
            {
                App?.RemoveTimeout(_looking);
            }
        }
    }

    /// <summary>Takes every key: the library's own bindings, Esc for quit among them, are not for an assistant beside a fire.</summary>
    protected override bool OnKeyDown(Key key)
    {
        if (key == Key.Z.WithCtrl)
        {
            _talk.Pause(Stop);
        }
        else
        {
            _desk.Press(key);
        }

        Refresh();
        return true;
    }

    /// <inheritdoc/>
    protected override void OnFrameChanged(in Rectangle frame)
    {
        base.OnFrameChanged(frame);
        Refresh();
    }

    /// <summary>The rows cover it.</summary>
    protected override bool OnClearingViewport() => _rows.Count >= Viewport.Height;

    private void OnPasted(object? sender, PasteEventArgs pasted)
    {
        _desk.Paste(pasted.Text);
        pasted.Handled = true;
        Refresh();
    }

    /// <summary>Paints anew; only rows that look otherwise are drawn, so that a resting screen writes nothing.</summary>
    private bool Refresh()
    {
        if (_desk.IsFinished)
        {
            App?.RequestStop();
            return false;
        }

        Paint();
        return true;
    }

    private void Paint()
    {
        var frame = _desk.Paint(Viewport.Width, Viewport.Height);
        if (frame.LooksLike(_shown))
        {
            return;
        }

        _shown = frame;
        for (var row = _rows.Count; row < frame.Rows.Count; row++)
        {
            _rows.Add(new(row, _palette, IsAscii));
            Add(_rows[row]);
        }

        for (var row = 0; row < _rows.Count; row++)
        {
            // A row that was on a higher screen is below the edge now.
            _rows[row].Show(row < frame.Rows.Count ? frame.Rows[row] : StyledLine.Empty);
        }

        Cursor = frame.Caret is { } caret
            ? new() { Position = ViewportToScreen(new Point(caret.Column, caret.Row)), Style = CursorStyle.SteadyBlock }
            : new() { Position = null };
    }
}
