using System.Collections.Frozen;

namespace Panside.Reckon;

/// <summary>Short names of the sources of docs/sources.md that results cite. What is from memory says so.</summary>
internal static class SourceNames
{
    private static readonly FrozenDictionary<string, string> Short = new Dictionary<string, string>
    {
        ["S1"] = "IAPWS-IF97, water and steam; coefficients from memory, verified",
        ["S2"] = "ISO 2533, standard atmosphere; its constants from memory",
        ["S3"] = "ICUMSA SPS-4, sugar densities",
        ["S7"] = "Sugar Technologists Manual 1995, specific heat; from memory",
        ["S10"] = "State of Vermont, hydrometer chart and law",
        ["S11"] = "Starzak and Peacock 1997, water activity; its form from memory",
        ["S12"] = "Geankoplis 1983, boiling-point rise",
        ["S16"] = "NBS Circular C440, Baume of modulus 145; from memory",
        ["S17"] = "extension services' firewood table",
        ["S18"] = "EN ISO 18125, heat of wood as fired; from memory",
        ["S19"] = "expansion of glass; from memory",
        ["S20"] = "VDI Heat Atlas 2010, firebrick",
        ["S24"] = "a sap-hydrometer chart for 38 °F",
        ["S25"] = "OIV-MA-AS2-02 2012, refractometry",
        ["S26"] = "ICUMSA SPS-3, refractometry; from memory",
        ["S27"] = "Jones 1946, the rule of 86; as cited",
        ["S28"] = "Perkins and Isselhardt 2013, the revised rule; as cited",
        ["S30"] = "USDA grade standard 2015",
        ["S31"] = "Canadian grade compendium 2018",
        ["S32"] = "1 NYCRR 270.1",
        ["S33"] = "Maine, 7 M.R.S. 892-A",
        ["S34"] = "New Hampshire, read second-hand",
        ["S35"] = "Cornell University maple outreach, syrup from a cord",
        ["S37"] = "a trade magazine's rule for flat pans",
    }.ToFrozenDictionary();

    /// <summary>All keys that have a name.</summary>
    public static IEnumerable<string> Keys => Short.Keys;

    /// <summary><c>[S1] IAPWS-IF97, water and steam</c>.</summary>
    public static string Spelled(string key) => $"[{key}] {Short[key]}";

    /// <summary>Several, one after the other.</summary>
    public static string Spelled(IEnumerable<string> keys) => string.Join("; ", keys.Select(Spelled));
}
