using System.Collections.Frozen;
using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Hearing;

/// <summary>
/// Hears how much sap or water went where, in whatever order it is said: <c>poured in a gallon of water</c>, <c>2 gal sap into the
/// pan</c>, <c>added 5 gal to the tank</c>. Every word must be one of these; a sentence with another word says something else.
/// </summary>
internal static partial class Pouring
{
    /// <summary>The answer to a pour that is told without its amount.</summary>
    public const string HowMuch = "How much? Say 'poured 2 gal' for the pan, 'refill 10 gal' for the tank; or read the depth: 'depth 1 1/2'.";

    /// <summary>Whether a line says with what, or how, liquid went in, and names no wood: dumped some in, put a pitcher in.</summary>
    /// <param name="said">The words.</param>
    public static bool NamesAVessel(string said) => Vessel().IsMatch(said) && !OfWood().IsMatch(said);

    [GeneratedRegex(@"\b(?:dump\w*|pour\w*|tipp?ed|sloshed|splash\w*|ladled|dipped|pitchers?|jugs?|buckets?|pails?|dippers?|saucepans?|kettles?|pots?|bottles?|cups?)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Vessel();

    [GeneratedRegex(@"\b(?:wood|logs?|splits?|sticks?|slabs?|armloads?|armfuls?|fire|firebox|stove|arch|chunks?|kindling|pieces?|charge|load)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex OfWood();

    private enum Part
    {
        Filler,
        Pour,
        Add,
        Refill,
        Sap,
        Water,
        Pan,
        Tank,
        In,
        Into,
        Pail,
        Back,
        Front,
    }

    private static readonly FrozenDictionary<string, Part> Known = new (Part Part, string[] Words)[]
    {
        (Part.Filler, ["i", "we", "i've", "we've", "have", "just", "now", "about", "of", "the", "a", "an", "more", "another", "cold", "clean", "raw", "fresh", "head", "with", "up", "by", "hand", "some", "went", "bit", "little", "lot", "few", "it", "ok", "okay", "yes", "yep", "done", "half", "all", "that", "most"]),
        (Part.Pour, ["poured", "pour"]),
        (Part.Add, ["added", "add", "put", "filled", "fill", "topped"]),
        (Part.Refill, ["refilled", "refill"]),
        (Part.Sap, ["sap"]),
        (Part.Water, ["water"]),
        (Part.Pan, ["pan"]),
        (Part.Tank, ["tank"]),
        (Part.In, ["in"]),
        (Part.Into, ["into", "to"]),
        (Part.Back, ["back", "rear", "flue"]),
        (Part.Front, ["front", "syrup"]),
        (Part.Pail, ["pail", "pails", "bucket", "buckets", "pailful"]),
    }.SelectMany(row => row.Words.Select(word => (word, row.Part))).ToFrozenDictionary(row => row.word, row => row.Part, StringComparer.Ordinal);

    /// <summary>What it means; null where it says nothing of sap or water that went anywhere.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="rig">The rig: its units are those of a bare number, and where it has two pans their names count.</param>
    /// <param name="usual">What it is taken for where neither sap nor water is named: what is asked for just then.</param>
    public static Understood? Understand(Moment at, string said, Rig rig, string usual = Liquids.Sap)
    {
        var units = rig.Units;
        var words = InDigits(Side().Replace(Source().Replace(said.ToLowerInvariant().Replace(", ", " ", StringComparison.Ordinal), ""), " pan"));
        if (Amount().Match(words) is not { Success: true } found)
        {
            return Parts(words, rig) is not { } plain || !plain.Any(IsVerb) ? null : Unmeasured(at, plain, usual);
        }

        if (!MeasureText.TryNumber(words[found.Index..], out var value, out var behind) || Parts(words[..found.Index], rig) is not { } before)
        {
            return null;
        }

        var (word, rest) = behind.IndexOf(' ', StringComparison.Ordinal) is > 0 and var space ? (behind[..space], behind[space..]) : (behind, "");
        var unit = word.Length > 0 ? UnitNames.FromWord(word) : null;
        if (Parts(unit is null ? behind : rest, rig) is not { } after)
        {
            return null;
        }

        List<Part> all = [.. before, .. after];
        if (!all.Any(IsVerb) && (unit?.Kind() != Dimension.Volume || !SaysWhere(before, after)))
        {
            return null;
        }

        if (all.Contains(Part.Pail))
        {
            return Unmeasured(at, all, usual);
        }

        return unit is { } other && other.Kind() != Dimension.Volume
            ? new MeansNothing($"'{said}': sap and water are told in {UnitNames.SpokenOf(Dimension.Volume)}. Of wood say 'wood 7 lb', of the depth 'depth 1 1/2'.")
            : new MeansLine(Went(all, new(at, new(value, unit ?? units.Preferred(Dimension.Volume)), Liquid(all, usual))));
    }

    /// <summary>Where it went: by the place that is named, else by the verb; else nobody said.</summary>
    private static LineIn Went(List<Part> all, Added added)
    {
        if (all.Contains(Part.Pan) != all.Contains(Part.Tank))
        {
            return all.Contains(Part.Pan) ? added.IntoPan(added.At) with { Pan = PanOf(all) } : added.IntoTank(added.At);
        }

        return all.Contains(Part.Refill) ? added.IntoTank(added.At)
            : all.Contains(Part.Pour) || (!all.Any(IsVerb) && all.Contains(Part.Water)) ? added.IntoPan(added.At)
            : added;
    }

    /// <summary>A pour of unknown size, where it went into the pan; where it may have gone into the tank, how much is asked and nothing taken.</summary>
    private static Understood Unmeasured(Moment at, List<Part> all, string usual) =>
        all.Contains(Part.Tank) || all.Contains(Part.Refill) || (!all.Contains(Part.Pan) && !all.Contains(Part.Pour) && !all.Contains(Part.Water))
            ? new MeansNothing(HowMuch)
            : new MeansPoured(new(at, DeedName.FillPan, null) { Is = Liquid(all, usual), Pan = PanOf(all) });

    private static string Liquid(List<Part> all, string usual) => all.Contains(Part.Water) ? Liquids.Water : all.Contains(Part.Sap) ? Liquids.Sap : usual;

    private static string? PanOf(List<Part> all) => all.Contains(Part.Back) == all.Contains(Part.Front) ? null : all.Contains(Part.Back) ? Pans.Back : Pans.Front;

    /// <summary>
    /// Without a verb only a way says that something went: <c>2 gal into the tank</c>, <c>water 2 gal in</c>. What is in the tank or
    /// in the pan is a reading.
    /// </summary>
    private static bool SaysWhere(List<Part> before, List<Part> after)
    {
        var named = before.Contains(Part.Sap) || before.Contains(Part.Water) || after.Contains(Part.Sap) || after.Contains(Part.Water);
        return before.TrueForAll(part => part is Part.Filler or Part.Sap or Part.Water)
            && (after.Contains(Part.Into) ? after.Contains(Part.Pan) || after.Contains(Part.Tank)
                : after.Contains(Part.In) && !after.Contains(Part.Tank) && (named || !after.Contains(Part.Pan)));
    }

    private static bool IsVerb(Part part) => part is Part.Pour or Part.Add or Part.Refill;

    /// <summary>What each word is; null where one is none of these.</summary>
    private static List<Part>? Parts(string words, Rig rig)
    {
        var parts = new List<Part>();
        foreach (var word in words.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            if (!Known.TryGetValue(word, out var part) || (part is Part.Back or Part.Front && rig.Back is null))
            {
                return null;
            }

            parts.Add(part);
        }

        return parts;
    }

    /// <summary><c>a gallon</c> and <c>half a gallon</c> as numbers; other words stay.</summary>
    internal static string InDigits(string words)
    {
        var halved = Half().Replace(words, "0.5 ");
        return Counted().Replace(halved, match => UnitNames.FromWord(match.Groups["unit"].Value)?.Kind() == Dimension.Volume
            ? $"{(NumberWords.Value(match.Groups["number"].Value) ?? 1).ToString(CultureInfo.InvariantCulture)} {match.Groups["unit"].Value}"
            : match.Value);
    }

    /// <summary>What it was dipped or poured out of: nobody needs to say it.</summary>
    [GeneratedRegex(@"\b(?:from|out of) (?:a |the )?(?:head )?(?:tank|pail|pails|bucket|buckets)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Source();

    /// <summary>A side of the pan: where along it the liquid went is not told apart.</summary>
    [GeneratedRegex(@"\b(?:at|on|in at|into|to) (?:the )?(?:(?:syrup|draw-off|feed) side|draw-off)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Side();

    [GeneratedRegex(@"(?<![\w./-])[+]?[0-9.¼½¾⅛⅜⅝⅞⅓⅔]", RegexOptions.CultureInvariant)]
    private static partial Regex Amount();

    [GeneratedRegex(@"\bhalf (?:a |an )?(?!of\b)(?=\w)", RegexOptions.CultureInvariant)]
    private static partial Regex Half();

    [GeneratedRegex(@"\b(?<number>an?|another|" + NumberWords.Pattern + @") (?<unit>[a-z]+)\b", RegexOptions.CultureInvariant)]
    private static partial Regex Counted();
}
