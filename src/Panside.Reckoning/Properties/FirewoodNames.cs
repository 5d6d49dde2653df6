using System.Collections.Frozen;

namespace Panside.Reckoning.Properties;

/// <summary>The names that people write for firewood.</summary>
public static class FirewoodNames
{
    private static readonly FrozenDictionary<string, FirewoodSpecies> ByName = new Dictionary<string, FirewoodSpecies>
    {
        ["sugar maple"] = FirewoodSpecies.SugarMaple,
        ["hard maple"] = FirewoodSpecies.SugarMaple,
        ["rock maple"] = FirewoodSpecies.SugarMaple,
        ["red oak"] = FirewoodSpecies.RedOak,
        ["white oak"] = FirewoodSpecies.WhiteOak,
        ["shagbark hickory"] = FirewoodSpecies.ShagbarkHickory,
        ["hickory"] = FirewoodSpecies.ShagbarkHickory,
        ["ash"] = FirewoodSpecies.Ash,
        ["silver maple"] = FirewoodSpecies.SilverMaple,
        ["american elm"] = FirewoodSpecies.AmericanElm,
        ["elm"] = FirewoodSpecies.AmericanElm,
        ["black locust"] = FirewoodSpecies.BlackLocust,
        ["box elder"] = FirewoodSpecies.BoxElder,
        ["basswood"] = FirewoodSpecies.Basswood,
        ["linden"] = FirewoodSpecies.Basswood,
        ["cottonwood"] = FirewoodSpecies.Cottonwood,
        ["shortleaf pine"] = FirewoodSpecies.ShortleafPine,
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>All names that are understood, in alphabetical order, for a hint.</summary>
    public static IReadOnlyList<string> Known { get; } = [.. ByName.Keys.Order(StringComparer.Ordinal)];

    /// <summary>
    /// The species of a name in any case, with blanks or hyphens between its words; null when it is not in the table.
    /// </summary>
    public static FirewoodSpecies? FromName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string words = string.Join(' ', name.Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));
        return ByName.TryGetValue(words, out FirewoodSpecies species) ? species : null;
    }

    /// <summary>The first name of a species, as it is shown.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No species of the table.</exception>
    public static string NameOf(FirewoodSpecies species) => species switch
    {
        FirewoodSpecies.SugarMaple => "sugar maple",
        FirewoodSpecies.RedOak => "red oak",
        FirewoodSpecies.WhiteOak => "white oak",
        FirewoodSpecies.ShagbarkHickory => "shagbark hickory",
        FirewoodSpecies.Ash => "ash",
        FirewoodSpecies.SilverMaple => "silver maple",
        FirewoodSpecies.AmericanElm => "American elm",
        FirewoodSpecies.BlackLocust => "black locust",
        FirewoodSpecies.BoxElder => "box elder",
        FirewoodSpecies.Basswood => "basswood",
        FirewoodSpecies.Cottonwood => "cottonwood",
        FirewoodSpecies.ShortleafPine => "shortleaf pine",
        _ => throw OutOfRange.For("The species", (int)species, "one of the table"),
    };
}
