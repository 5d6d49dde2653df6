namespace Panside.Reckoning.Ensemble;

/// <summary>How the pan boils, as an eye tells it.</summary>
public enum BoilSeen
{
    /// <summary>No bubbles.</summary>
    Still,

    /// <summary>A few.</summary>
    Simmering,

    /// <summary>All over, low.</summary>
    Steady,

    /// <summary>Full.</summary>
    Rolling,
}

/// <summary>How the coals look through the door.</summary>
public enum CoalsSeen
{
    /// <summary>No more than ash and sparks.</summary>
    Spent,

    /// <summary>A thin bed.</summary>
    Thin,

    /// <summary>A deep bed.</summary>
    Deep,
}

/// <summary>How the channels differ in color.</summary>
public enum GradientSeen
{
    /// <summary>Not at all.</summary>
    Gone,

    /// <summary>A little.</summary>
    Fading,

    /// <summary>Clearly.</summary>
    Clear,
}
