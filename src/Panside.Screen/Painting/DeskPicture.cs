namespace Panside.Screen.Painting;

/// <summary>What the keys have done to the screen.</summary>
/// <param name="Typed">What stands on the input line.</param>
/// <param name="Caret">Where typing goes on, in it.</param>
/// <param name="Scroll">Rows of the conversation below the last one shown.</param>
/// <param name="Mode">What the screen is busy with.</param>
internal readonly record struct DeskPicture(string Typed, int Caret, int Scroll, ScreenMode Mode);
