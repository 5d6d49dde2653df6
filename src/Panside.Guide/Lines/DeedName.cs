using System.Collections.Frozen;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Lines;

/// <summary>What the operator does.</summary>
public sealed class DeedName(string code, Dimension? kind, string spoken) : Thing(code)
{
    /// <summary>The fire is lit.</summary>
    public static readonly DeedName LitFire = new("lit-fire", null, "fire lit") { Words = ["lit", "lit the fire", "fire lit", "fire is lit", "lit it", "relit", "relit it", "relit the fire", "relit the burner", "burner relit", "lit the burner again", "i lit the burner again", "burner on again", "burner is on again", "burner back on", "burner is back on", "turned the burner back on", "turned it back on", "burner is on"] };

    /// <summary>A charge of wood went in.</summary>
    public static readonly DeedName AddWood = new("add-wood", Dimension.Mass, "wood added")
    {
        Words = ["wood", "wood in", "added wood", "fired", "charge", "charge in", "wood on"],
        Most = rig => rig.Units.From(rig.Charge * 20),
        Doubted = (boil, wood) => UnitSystem.Mass(wood) > boil.Rig.Charge * 3
            ? new(
                $"{Amount.Plain(wood)} in one charge? The rig file says {Amount.Shown(boil.Units.From(boil.Rig.Charge))}.",
                "It would take a firebox filled at once: little and often boils better.")
            : null,
    };

    /// <summary>The burner is shut off.</summary>
    public static readonly DeedName ShutOff = new("shut-off", null, "burner shut off")
    {
        Words = ["shut off", "off", "turned off", "burner off", "shut it off", "switched off", "gas off", "heat off", "burner is off", "burner's off", "turned off the burner", "turned the burner off", "turned off the gas", "shut off the gas", "gas is off", "gas's off", "flame is off", "flame out"],
    };

    /// <summary>The draw-off is open.</summary>
    public static readonly DeedName OpenDraw = new("open-draw", null, "draw-off opened") { Words = ["open", "opened", "draw open", "drawing", "opened draw", "draw-off open"] };

    /// <summary>The draw-off is shut; the value is the volume drawn.</summary>
    public static readonly DeedName CloseDraw = new("close-draw", Dimension.Volume, "draw-off shut")
    {
        Words = ["drew", "closed", "draw closed", "shut", "close", "draw shut", "drawn off"],
        Most = rig => rig.Units.From(rig.ToWalls),
        Reads = ReadingName.DrawnVolume,
    };

    /// <summary>The coals are raked level over the grates.</summary>
    public static readonly DeedName SpreadCoals = new("spread-coals", null, "coals spread") { Words = ["spread", "coals spread", "raked", "raked coals", "coals raked"] };

    /// <summary>The pan is flooded for the shutdown.</summary>
    public static readonly DeedName FloodPan = new("flood-pan", null, "pan flooded") { Words = ["flood", "flooded", "pan flooded", "flooded pan"] };

    /// <summary>Defoamer went in.</summary>
    public static readonly DeedName AddDefoamer = new("add-defoamer", null, "defoamer added") { Words = ["defoamer", "added defoamer", "defoamed", "defoamer in"] };

    /// <summary>The pan is covered.</summary>
    public static readonly DeedName CoverPan = new("cover-pan", null, "pan covered") { Words = ["cover", "covered", "lid on", "pan covered", "lid", "covered pan"] };

    /// <summary>Sap went into the head tank; the value is the volume added.</summary>
    public static readonly DeedName RefillTank = new("refill-tank", Dimension.Volume, "tank refilled") { Words = ["refill", "refilled", "tank refilled"] };

    /// <summary>Liquid was poured into the pan by hand; the value is the volume, and must stand.</summary>
    public static readonly DeedName FillPan = new("fill-pan", Dimension.Volume, "poured into the pan")
    {
        Words = ["poured", "poured in", "pour"],
        Liquids = Lines.Liquids.All,
        Pans = Lines.Pans.All,
        WantsAmount = true,
        Most = rig => rig.Units.From(rig.ToWalls),
        Doubted = PouredDoubted,
    };

    /// <summary>A batch is poured out: the pan is emptied whole; the value is the volume that came out.</summary>
    public static readonly DeedName EmptyPan = new("empty-pan", Dimension.Volume, "pan poured out")
    {
        Words = ["poured out", "poured it out", "poured the pan out", "poured the batch out", "poured off", "poured it off", "emptied the pan", "tipped out", "tipped it out", "poured into the pot", "poured it into the pot", "poured out into the pot"],
        Most = rig => rig.Units.From(rig.ToWalls),
        Doubted = EmptiedDoubted,
    };

    /// <summary>The operator leaves.</summary>
    public static readonly DeedName Leave = new("leave", null, "leaving") { Words = ["left", "leaving", "i leave", "i am leaving", "gone home"] };

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<DeedName> All =
        [LitFire, AddWood, ShutOff, OpenDraw, CloseDraw, SpreadCoals, FloodPan, AddDefoamer, CoverPan, RefillTank, FillPan, EmptyPan, Leave];

    /// <summary>What is typed for each; the amount may follow.</summary>
    public static readonly FrozenDictionary<string, DeedName> Said = All
        .SelectMany(name => name.Typed.Select(said => (said, name))).DistinctBy(row => row.said)
        .ToFrozenDictionary(row => row.said, row => row.name, StringComparer.OrdinalIgnoreCase);

    /// <summary>What its value measures; null where it takes none.</summary>
    public Dimension? Kind { get; } = kind;

    /// <summary>As told back: <c>wood added</c>.</summary>
    public string Spoken { get; } = spoken;

    /// <summary>The liquids that it can be done with, the usual one first; empty where nobody says which.</summary>
    public IReadOnlyList<string> Liquids { get; init; } = [];

    /// <summary>The pans that it can be done to, where a rig has two of them; empty where that is not said.</summary>
    public IReadOnlyList<string> Pans { get; init; } = [];

    /// <summary>Whether it tells nothing without its amount.</summary>
    public bool WantsAmount { get; init; }

    /// <summary>The reading that its amount is, and is believed as; null where it is none.</summary>
    public ReadingName? Reads { get; init; }

    /// <summary>The most that no rig like this one could go beyond, where it has an amount.</summary>
    public Func<Rig, Measure> Most { get; init; } = rig => rig.Units.From(rig.MostInTank);

    /// <summary>The doubt of an amount, told with what is known of this rig; null where it could be.</summary>
    public Func<IBoil, Measure, Doubt?> Doubted { get; init; } = (_, _) => null;

    /// <summary>By its code; null where there is none.</summary>
    public static DeedName? FromCode(string code) => All.FirstOrDefault(name => name.Code == code);

    /// <summary>Half a pan is no pan that was poured out: no source.</summary>
    private const double Whole = 0.5;

    private static Doubt? EmptiedDoubted(IBoil boil, Measure poured)
    {
        var held = boil.Likely.Pan;
        return boil.Units.Volume(poured).Liters >= Whole * held.Liters ? null
            : new($"The whole pan poured out, {Amount.Plain(poured)} in all? It should hold about {Amount.Shown(boil.Units.From(held))}.", "Yes, where nothing is left in it.");
    }

    private static Doubt? PouredDoubted(IBoil boil, Measure poured)
    {
        if (boil.Rig.Back is not null)
        {
            // Into which of the two it goes nobody says: their depths tell.
            return null;
        }

        var depth = (boil.Likely.Pan + boil.Units.Volume(poured)) / boil.Rig.PanArea;
        return depth > boil.Rig.FloodDepth * 2
            ? new(
                $"{Amount.Plain(poured)} into the pan? It would stand at {Amount.Shown(boil.Units.From(depth))}, and floods at {Amount.Shown(boil.Units.From(boil.Rig.FloodDepth))}.",
                "It would take many pails, or another unit.")
            : null;
    }
}

/// <summary>The pans of a rig that has two.</summary>
public static class Pans
{
    /// <summary>The one that the tank feeds.</summary>
    public const string Back = "back";

    /// <summary>The one with the draw-off.</summary>
    public const string Front = "front";

    /// <summary>Both, in the order of the sap.</summary>
    public static readonly IReadOnlyList<string> All = [Back, Front];
}

/// <summary>What can be poured into the pan.</summary>
public static class Liquids
{
    /// <summary>Sap as it stands in the tank.</summary>
    public const string Sap = "sap";

    /// <summary>Clean water.</summary>
    public const string Water = "water";

    /// <summary>Both, the usual one first.</summary>
    public static readonly IReadOnlyList<string> All = [Sap, Water];
}
