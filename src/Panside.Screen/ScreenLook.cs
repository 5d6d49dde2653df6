namespace Panside.Screen;

/// <summary>How a screen looks, as the operator wishes it.</summary>
/// <param name="Theme">Its colors.</param>
/// <param name="IsAscii">Whether the terminal shows ASCII only.</param>
public readonly record struct ScreenLook(Theme Theme, bool IsAscii);
