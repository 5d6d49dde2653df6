using Terminal.Gui.Input;

namespace Panside.Screen.Typing;

/// <summary>A function key and the word that it types.</summary>
/// <param name="Key">The key.</param>
/// <param name="Name">As printed on it.</param>
/// <param name="Word">The word that goes through the door.</param>
/// <param name="Hint">What the last row says of it; empty where it has no place there.</param>
/// <param name="Meaning">What the page of help says of it.</param>
internal sealed record WordKey(Key Key, string Name, string Word, string Hint, string Meaning);

/// <summary>The function keys. Each is a typed word too.</summary>
internal static class WordKeys
{
    /// <summary>The word for help, and for the page of help.</summary>
    public const string Help = "help";

    /// <summary>The word for the large figures, and back.</summary>
    public const string Large = "large";

    /// <summary>All of them, the most needed first.</summary>
    public static IReadOnlyList<WordKey> All { get; } =
    [
        new(Key.F9, "F9", "emergency", "EMERGENCY", "the emergency list, from anywhere"),
        new(Key.F1, "F1", Help, "Help", "this page; ? does the same on an empty line"),
        new(Key.F2, "F2", "status", "Status", "figures and forecasts in words"),
        new(Key.F3, "F3", "why", "Why", "the reason for what is asked"),
        new(Key.F5, "F5", Wood, "Wood in", "a charge of wood went in"),
        new(Key.F6, "F6", Large, "", "what to do and how soon, in large figures; again: back"),
        new(Key.F8, "F8", "undo", "Undo", "takes the last thing back"),
    ];

    /// <summary>Those that mean something where a burner heats the pan.</summary>
    public static IReadOnlyList<WordKey> OverABurner { get; } = [.. All.Where(key => key.Word != Wood)];

    /// <summary>Those that mean something on a rig.</summary>
    /// <param name="isBurner">Whether a burner heats it.</param>
    public static IReadOnlyList<WordKey> Of(bool isBurner) => isBurner ? OverABurner : All;

    private const string Wood = "wood";
}
