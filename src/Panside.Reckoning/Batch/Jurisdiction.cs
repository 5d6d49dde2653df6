namespace Panside.Reckoning.Batch;

/// <summary>A place with a law on the density of syrup that was read.</summary>
public enum Jurisdiction
{
    /// <summary>The federal grade of the United States.</summary>
    UnitedStates,

    /// <summary>Canada.</summary>
    Canada,

    /// <summary>The state of New York.</summary>
    NewYork,

    /// <summary>The state of Maine.</summary>
    Maine,

    /// <summary>The state of Vermont.</summary>
    Vermont,

    /// <summary>The state of New Hampshire.</summary>
    NewHampshire,
}
