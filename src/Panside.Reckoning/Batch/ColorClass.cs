namespace Panside.Reckoning.Batch;

/// <summary>
/// The color classes of syrup that the United States and Canada share, each with the taste that goes by it.
/// </summary>
public enum ColorClass
{
    /// <summary>Golden, delicate: 75.0 % or more.</summary>
    Golden,

    /// <summary>Amber, rich: 50.0 to 74.9 %.</summary>
    Amber,

    /// <summary>Dark, robust: 25.0 to 49.9 %.</summary>
    Dark,

    /// <summary>Very dark, strong: under 25.0 %.</summary>
    VeryDark,
}
