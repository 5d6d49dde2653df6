namespace Panside.Screen;

/// <summary>How the screen is colored. Words and marks say the same in each.</summary>
public enum Theme
{
    /// <summary>The terminal's own colors; color for the abnormal only.</summary>
    Terminal,

    /// <summary>Black on white.</summary>
    Light,

    /// <summary>Light grey on black.</summary>
    Dark,

    /// <summary>White on black, and the strongest pairs for the abnormal.</summary>
    HighContrast,

    /// <summary>The terminal's own colors, bold, reversed and underlined.</summary>
    Monochrome,
}
