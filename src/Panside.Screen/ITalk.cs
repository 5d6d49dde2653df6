using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen.Painting;
using Panside.Screen.Typing;

namespace Panside.Screen;

/// <summary>What the screen shows and types at: a boil that goes on, or one that is past.</summary>
internal interface ITalk
{
    /// <summary>The state as it stands now.</summary>
    SessionState State { get; }

    /// <summary>What the session runs on.</summary>
    Setting Setting { get; }

    /// <summary>What was said, the newest last.</summary>
    IReadOnlyList<Entry> Said { get; }

    /// <summary>The plain answers to the last line heard.</summary>
    IReadOnlyList<ToldLine> Told { get; }

    /// <summary>Whether there is nothing more to say.</summary>
    bool IsOver { get; }

    /// <summary>Whether it is to be left without asking.</summary>
    bool LeavesAtOnce { get; }

    /// <summary>Whether it was left by a word.</summary>
    bool IsLeft { get; }

    /// <summary>The function keys.</summary>
    IReadOnlyList<WordKey> Keys { get; }

    /// <summary>The words that Tab completes.</summary>
    IReadOnlyList<string> Words { get; }

    /// <summary>How often the screen looks whether time has brought something.</summary>
    TimeSpan LookEvery { get; }

    /// <summary>What is shown of a replay; null at a boil.</summary>
    ReplaySight? Replay { get; }

    /// <summary>Says what was typed.</summary>
    void Say(string words);

    /// <summary>Asks for help; the answer is for the page of help and not for the conversation.</summary>
    void AskForHelp(string word);

    /// <summary>The program is stopped until it is gone on with.</summary>
    /// <param name="stop">Stops it; null where it cannot be.</param>
    void Pause(Action? stop);

    /// <summary>Lets time pass where that brings anything.</summary>
    void Check();
}
