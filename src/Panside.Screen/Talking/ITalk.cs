using Panside.Screen.Painting;
using Panside.Screen.Typing;

namespace Panside.Screen.Talking;

/// <summary>What the screen shows and types at: a boil that goes on, one that is past, or questions away from the fire.</summary>
internal interface ITalk
{
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

    /// <summary>Paints it as it stands now.</summary>
    /// <param name="desk">What the keys have done.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    Frame Paint(DeskPicture desk, int width, int height);

    /// <summary>Says what was typed.</summary>
    void Say(string words);

    /// <summary>Asks for help; the answer is for the page of help and not for the conversation.</summary>
    void AskForHelp(string word);

    /// <summary>The program is stopped until it is gone on with.</summary>
    /// <param name="stop">Stops it; null where it cannot be.</param>
    void Pause(Action? stop);

    /// <summary>Whether the bell is to be rung at this look.</summary>
    bool TakeRing() => false;

    /// <summary>Lets time pass where that brings anything.</summary>
    void Check();
}
