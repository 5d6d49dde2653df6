using Panside.Screen.Painting;
using Panside.Screen.Typing;
using Terminal.Gui.Input;

namespace Panside.Screen.Talking;

/// <summary>What keys do, and what is to be painted. Knows nothing of a terminal.</summary>
internal sealed class Desk(ITalk talk)
{
    private readonly InputLine _input = new();
    private ScreenMode _mode;
    private int _scroll;
    private int _page = 1;
    private bool _isFinished;
    private bool _isFar;
    private bool _isHelpOpen;
    private bool _hasChosen;
    private Completion? _completion;

    /// <summary>Whether the screen is to be left.</summary>
    public bool IsFinished => _isFinished || talk.IsLeft;

    /// <summary>Paints the screen as it stands now.</summary>
    public Frame Paint(int width, int height)
    {
        var frame = talk.Paint(new(_input.Text, _input.Caret, _scroll, Shown), width, height);
        (_scroll, _page) = (frame.Scroll, int.Max(height / 2, 1));
        return frame;
    }

    private ScreenMode Shown => _mode == ScreenMode.Talking && _isFar ? ScreenMode.Far : _mode;

    /// <summary>Types text that came in one piece.</summary>
    public void Paste(string text)
    {
        _mode = ScreenMode.Talking;
        _input.Insert(text);
    }

    /// <summary>A key was pressed.</summary>
    public void Press(Key key)
    {
        if (key == Key.C.WithCtrl)
        {
            _isFinished = talk.LeavesAtOnce || _mode == ScreenMode.AskingToLeave;
            _mode = ScreenMode.AskingToLeave;
            return;
        }

        // Who ends a digit that has acted already with Enter does not mean the next page's first choice.
        var isEndOfDigit = _hasChosen && key == Key.Enter && _input.Text.Length == 0;
        _hasChosen = false;
        if (isEndOfDigit || Answered(key) || Scrolled(key))
        {
            return;
        }

        if (talk.IsOver)
        {
            // Not any key: what is typed ahead would wipe the outcome away unread.
            _isFinished = key == Key.Enter;
        }
        else if (Of(key) is { } wordKey && (Typed(key) is null || _input.Text.Length == 0))
        {
            _hasChosen = Typed(key) is not null;
            Say(wordKey.Word);
        }
        else if (key == Key.Enter)
        {
            Say(_input.Take());
        }
        else if (key == Key.Tab)
        {
            _completion ??= new(talk.Words);
            _input.Replace(_completion.Of(_input.Text));
        }
        else if (!Edited(key) && Typed(key) is { } text)
        {
            if (text == "?" && _input.Text.Length == 0)
            {
                Help(text);
            }
            else
            {
                _input.Insert(text);
            }
        }
    }

    /// <summary>Whether the key did no more than answer what stood over the conversation. Typing and the function keys go on.</summary>
    private bool Answered(Key key)
    {
        var before = _mode;
        (_mode, _isHelpOpen) = (ScreenMode.Talking, before == ScreenMode.Helping);
        return before switch
        {
            ScreenMode.AskingToLeave => Of(key) is null,
            ScreenMode.Helping or ScreenMode.Explaining => Of(key) is null && Typed(key) is null,
            _ => false,
        };
    }

    /// <summary>The function key; null where it is none.</summary>
    private WordKey? Of(Key key) => talk.Keys.FirstOrDefault(one => one.Key == key);

    private bool Scrolled(Key key)
    {
        var by = key == Key.PageUp ? _page : key == Key.PageDown ? -_page : 0;
        _scroll = int.Max(_scroll + by, 0);
        return by != 0;
    }

    private void Say(string words)
    {
        _scroll = 0;
        if (words.Trim().Equals(WordKeys.Large, StringComparison.OrdinalIgnoreCase) && talk.Keys.Any(key => key.Word == WordKeys.Large))
        {
            _isFar = !_isFar;
        }
        else if (words.Trim().Equals(WordKeys.Help, StringComparison.OrdinalIgnoreCase) || words.Trim() == "?")
        {
            Help(words);
        }
        else
        {
            talk.Say(words);
        }
    }

    private void Help(string words)
    {
        if (_isHelpOpen && words != "?")
        {
            _mode = ScreenMode.Explaining;
            return;
        }

        talk.AskForHelp(words);
        _mode = ScreenMode.Helping;
    }

    private bool Edited(Key key)
    {
        Action? edit = key switch
        {
            _ when key == Key.CursorUp => _input.Older,
            _ when key == Key.CursorDown => _input.Newer,
            _ when key == Key.CursorLeft => _input.Left,
            _ when key == Key.CursorRight => _input.Right,
            _ when key == Key.Home || key == Key.A.WithCtrl => _input.Home,
            _ when key == Key.End || key == Key.E.WithCtrl => _input.End,
            _ when key == Key.Backspace => _input.Backspace,
            _ when key == Key.Delete => _input.Delete,
            _ when key == Key.U.WithCtrl => _input.Clear,
            _ when key == Key.W.WithCtrl => _input.BackspaceWord,
            _ => null,
        };
        edit?.Invoke();
        return edit is not null;
    }

    private static string? Typed(Key key) =>
        !key.IsCtrl && !key.IsAlt && key.AsRune is { Value: >= ' ' and not 0x7f } rune ? rune.ToString() : null;
}
