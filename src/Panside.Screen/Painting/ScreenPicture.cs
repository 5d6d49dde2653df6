using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen.Typing;

namespace Panside.Screen.Painting;

/// <summary>What the screen is busy with.</summary>
internal enum ScreenMode
{
    /// <summary>The conversation.</summary>
    Talking,

    /// <summary>Asking whether to leave.</summary>
    AskingToLeave,

    /// <summary>The page of help.</summary>
    Helping,

    /// <summary>The page of the words that stand in what is asked.</summary>
    Explaining,

    /// <summary>The next action and the countdown, in large figures.</summary>
    Far,
}

/// <summary>All that a screen is painted from.</summary>
/// <param name="State">The state at the moment now.</param>
/// <param name="Setting">What the session runs on.</param>
/// <param name="Said">The conversation.</param>
/// <param name="Told">The answer to the last call for help.</param>
/// <param name="Typed">What stands on the input line.</param>
/// <param name="Caret">Where typing goes on, in it.</param>
/// <param name="Scroll">Rows of the conversation below the last one shown.</param>
/// <param name="Mode">What the screen is busy with.</param>
internal sealed record ScreenPicture(
    SessionState State,
    Setting Setting,
    IReadOnlyList<Entry> Said,
    IReadOnlyList<ToldLine> Told,
    string Typed = "",
    int Caret = 0,
    int Scroll = 0,
    ScreenMode Mode = ScreenMode.Talking)
{
    /// <summary>The function keys.</summary>
    public IReadOnlyList<WordKey> Keys { get; init; } = WordKeys.Of(Setting.Rig.IsBurner);

    /// <summary>What is shown of a replay; null at a boil.</summary>
    public ReplaySight? Replay { get; init; }
}
