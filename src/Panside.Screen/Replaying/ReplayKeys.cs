using Panside.Screen.Typing;
using Terminal.Gui.Input;

namespace Panside.Screen.Replaying;

/// <summary>The function keys of a replay. Each is a typed word too. F9 is left alone: at a boil it is the emergency.</summary>
internal static class ReplayKeys
{
    /// <summary>All of them; those without a hint stand on the page of help only.</summary>
    public static IReadOnlyList<WordKey> All { get; } =
    [
        new(Key.F2, "F2", "pause", "Pause", "stands still; again, or 'go', goes on"),
        new(Key.F1, "F1", WordKeys.Help, "Help", "this page; ? does the same on an empty line"),
        new(Key.F3, "F3", "slower", "", "half as fast, down to 0.25x"),
        new(Key.F4, "F4", "faster", "Faster", "twice as fast, up to 64x"),
        new(Key.F5, "F5", "step", "Step", "one line on, and stands still; 'step back' one line back"),
        new(Key.F6, "F6", "back 10", "", "10 minutes back, or as many as you type"),
        new(Key.F7, "F7", "on 10", "", "10 minutes on, or as many as you type"),
        new(Key.F8, "F8", "alarm", "Alarm", "to the next alarm, and stands still"),
        new(Key.F10, "F10", "draw", "Draw", "to the next draw, and stands still"),
    ];

    /// <summary>The words that have no key.</summary>
    public static IReadOnlyList<string> OtherWords { get; } =
    [
        "to 18:30: to a time.  start, end: to the first line, to the last.",
        "speed 4: four times as fast as it was, 0.25 to 64.  leave: leaves.",
        "A silence of more than a minute is shortened to one.",
        "'came' under a forecast is what the record shows later.",
        "Nothing typed here reaches the boil or its record.",
    ];
}
