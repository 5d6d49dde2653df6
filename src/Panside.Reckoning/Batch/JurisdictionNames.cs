using System.Collections.Frozen;

namespace Panside.Reckoning.Batch;

/// <summary>The names that people write for a <see cref="Jurisdiction"/>.</summary>
public static class JurisdictionNames
{
    private static readonly FrozenDictionary<string, Jurisdiction> ByName = new Dictionary<string, Jurisdiction>
    {
        ["united states"] = Jurisdiction.UnitedStates,
        ["usa"] = Jurisdiction.UnitedStates,
        ["us"] = Jurisdiction.UnitedStates,
        ["canada"] = Jurisdiction.Canada,
        ["new york"] = Jurisdiction.NewYork,
        ["ny"] = Jurisdiction.NewYork,
        ["maine"] = Jurisdiction.Maine,
        ["me"] = Jurisdiction.Maine,
        ["vermont"] = Jurisdiction.Vermont,
        ["vt"] = Jurisdiction.Vermont,
        ["new hampshire"] = Jurisdiction.NewHampshire,
        ["nh"] = Jurisdiction.NewHampshire,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>The full name of every place, in the order of <see cref="Jurisdiction"/>, for a hint.</summary>
    public static IReadOnlyList<string> Known { get; } = [.. Enum.GetValues<Jurisdiction>().Select(NameOf)];

    /// <summary>
    /// The place of a name in any case, with blanks or hyphens between its words; null where no law of it was read.
    /// </summary>
    public static Jurisdiction? FromName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string words = string.Join(' ', name.Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));
        return ByName.TryGetValue(words, out Jurisdiction place) ? place : null;
    }

    /// <summary>The full name of a place.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No place whose law was read.</exception>
    public static string NameOf(Jurisdiction place) => place switch
    {
        Jurisdiction.UnitedStates => "United States",
        Jurisdiction.Canada => "Canada",
        Jurisdiction.NewYork => "New York",
        Jurisdiction.Maine => "Maine",
        Jurisdiction.Vermont => "Vermont",
        Jurisdiction.NewHampshire => "New Hampshire",
        _ => throw OutOfRange.For("The place", (int)place, "one whose law was read"),
    };
}
