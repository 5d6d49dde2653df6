using System.Text;

namespace Panside.Screen.Typing;

/// <summary>The line being typed, and the lines typed before.</summary>
internal sealed class InputLine
{
    private readonly List<string> _before = [];
    private int _shown;
    private string _unsent = "";

    /// <summary>What stands on it.</summary>
    public string Text { get; private set; } = "";

    /// <summary>Where typing goes on.</summary>
    public int Caret { get; private set; }

    /// <summary>Types text at the caret; what would move the cursor is left out.</summary>
    public void Insert(string text)
    {
        var clean = string.Concat(text.Where(letter => !char.IsControl(letter)));
        Text = Text.Insert(Caret, clean);
        Caret += clean.Length;
    }

    /// <summary>Takes the line, and keeps it among those typed before.</summary>
    public string Take()
    {
        var taken = Text;
        if (taken.Trim().Length > 0 && (_before.Count == 0 || _before[^1] != taken))
        {
            _before.Add(taken);
        }

        _shown = _before.Count;
        _unsent = "";
        Show("");
        return taken;
    }

    /// <summary>The line typed before the one shown.</summary>
    public void Older()
    {
        if (_shown > 0)
        {
            _unsent = _shown == _before.Count ? Text : _unsent;
            Show(_before[--_shown]);
        }
    }

    /// <summary>The line typed after the one shown, at last the one that was not sent.</summary>
    public void Newer()
    {
        if (_shown < _before.Count)
        {
            _shown++;
            Show(_shown == _before.Count ? _unsent : _before[_shown]);
        }
    }

    /// <summary>One character to the left.</summary>
    public void Left() => Caret -= Before();

    /// <summary>One character to the right.</summary>
    public void Right() => Caret += After();

    /// <summary>To the beginning.</summary>
    public void Home() => Caret = 0;

    /// <summary>To the end.</summary>
    public void End() => Caret = Text.Length;

    /// <summary>Takes away the character before the caret.</summary>
    public void Backspace()
    {
        var length = Before();
        Caret -= length;
        Text = Text.Remove(Caret, length);
    }

    /// <summary>Takes away the character at the caret.</summary>
    public void Delete() => Text = Text.Remove(Caret, After());

    /// <summary>Takes away all before the caret.</summary>
    public void Clear()
    {
        Text = Text[Caret..];
        Caret = 0;
    }

    /// <summary>Takes away the word before the caret.</summary>
    public void BackspaceWord()
    {
        var kept = Text[..Caret].TrimEnd();
        var start = kept.LastIndexOf(' ') + 1;
        Text = Text.Remove(start, Caret - start);
        Caret = start;
    }

    /// <summary>Puts another text in its place, the caret at its end.</summary>
    public void Replace(string text) => Show(text);

    private void Show(string text)
    {
        Text = text;
        Caret = text.Length;
    }

    private int Before()
    {
        Rune.DecodeLastFromUtf16(Text.AsSpan(0, Caret), out _, out var length);
        return length;
    }

    private int After()
    {
        Rune.DecodeFromUtf16(Text.AsSpan(Caret), out _, out var length);
        return length;
    }
}
