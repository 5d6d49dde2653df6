namespace Panside.Screen.Painting;

/// <summary>How a piece of text stands out. The words and marks carry the meaning; this only carries it further.</summary>
internal enum Tone
{
    /// <summary>The terminal's own colors.</summary>
    Plain,

    /// <summary>Bold.</summary>
    Strong,

    /// <summary>Reversed: the line at the top.</summary>
    Bar,

    /// <summary>Danger to people or pan.</summary>
    Danger,

    /// <summary>To be done now.</summary>
    Now,

    /// <summary>What was typed is doubted or refused.</summary>
    Doubt,
}
