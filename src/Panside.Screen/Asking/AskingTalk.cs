using Panside.Guide.Asking;
using Panside.Screen.Painting;
using Panside.Screen.Talking;
using Panside.Screen.Typing;
using Terminal.Gui.Input;

namespace Panside.Screen.Asking;

/// <summary>Questions away from the fire on the screen: the same conversation as in lines, typed at and scrolled like a boil.</summary>
internal sealed class AskingTalk(IAsking asking) : ITalk
{
    private static readonly Key[] Functions = [Key.F1, Key.F2, Key.F3, Key.F4, Key.F5, Key.F6, Key.F7, Key.F8, Key.F9];
    private static readonly Key[] Digits = [Key.D1, Key.D2, Key.D3, Key.D4, Key.D5, Key.D6, Key.D7, Key.D8, Key.D9];

    private readonly List<Entry> _said = [.. asking.Opening.Select(Said)];

    /// <summary>It is left as soon as all is said.</summary>
    public bool IsOver => false;

    /// <inheritdoc/>
    public bool LeavesAtOnce => asking.BeforeLeaving is null;

    /// <inheritdoc/>
    public bool IsLeft => asking.IsOver;

    /// <inheritdoc/>
    public IReadOnlyList<WordKey> Keys =>
        [.. asking.Page.Keys.Select(key => new WordKey(KeyOf(key.Name), key.Name, key.Word, key.Hint, key.Meaning))];

    /// <inheritdoc/>
    public IReadOnlyList<string> Words => asking.Words;

    /// <inheritdoc/>
    public TimeSpan LookEvery => TimeSpan.FromSeconds(1);

    /// <inheritdoc/>
    public void Say(string words)
    {
        if (words.Trim().Length > 0)
        {
            _said.Add(new("", [$"You: {Columns.Clean(words)}"], Tone.Strong, EntryKind.Typed));
        }

        _said.AddRange(asking.Hear(words).Select(Said));
    }

    /// <summary>The page of help has the words already.</summary>
    public void AskForHelp(string word)
    {
    }

    /// <inheritdoc/>
    public void Pause(Action? stop) => stop?.Invoke();

    /// <summary>Time brings nothing here.</summary>
    public void Check()
    {
    }

    /// <inheritdoc/>
    public Frame Paint(DeskPicture desk, int width, int height) => AskingPainter.Paint(asking, _said, Keys, desk, width, height);

    /// <summary><c>F3</c> or <c>3</c> as a key.</summary>
    private static Key KeyOf(string name) => (name.Length == 1 ? Digits : Functions)[name[^1] - '1'];

    private static Entry Said(string line) => new("", [Columns.Clean(line)], line.StartsWith('x') ? Tone.Doubt : Tone.Plain);
}
