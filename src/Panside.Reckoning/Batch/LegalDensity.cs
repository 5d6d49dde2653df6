using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>The sugar content that a place's law asks of syrup for sale.</summary>
/// <remarks>
/// Source: [S30] United States, [S31] Canada, [S32] New York, [S33] Maine, [S10] Vermont; New Hampshire [S34] read
/// second-hand and without an upper limit. Maine writes 69 and names 68.9 beside it: the stricter is taken. Range:
/// those places. Accuracy: as read; laws change, this is no legal advice.
/// </remarks>
public readonly record struct LegalDensity
{
    private LegalDensity(double least, double? most) =>
        (Least, Most) = (SugarContent.FromBrix(least), most is { } brix ? SugarContent.FromBrix(brix) : null);

    /// <summary>The least sugar content.</summary>
    public SugarContent Least { get; }

    /// <summary>The most, where one was read.</summary>
    public SugarContent? Most { get; }

    /// <summary>The law of a place.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No place whose law was read.</exception>
    public static LegalDensity In(Jurisdiction place) => place switch
    {
        Jurisdiction.UnitedStates or Jurisdiction.Canada or Jurisdiction.NewYork or Jurisdiction.Maine => new(66, 68.9),
        Jurisdiction.Vermont => new(66.9, 68.9),
        Jurisdiction.NewHampshire => new(66.9, null),
        _ => throw OutOfRange.For("The place", (int)place, "one whose law was read"),
    };

    /// <summary>Whether syrup of this sugar content may be sold as such there, by its density alone.</summary>
    public bool Allows(SugarContent content) => content >= Least && (Most is not { } most || content <= most);
}
