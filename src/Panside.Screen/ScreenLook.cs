namespace Panside.Screen;

/// <summary>How a screen looks and sounds, as the operator wishes it.</summary>
/// <param name="Theme">Its colors.</param>
/// <param name="IsAscii">Whether the terminal shows ASCII only.</param>
/// <param name="IsQuiet">Whether its bell stays silent.</param>
public readonly record struct ScreenLook(Theme Theme, bool IsAscii, bool IsQuiet = false);
