using System.Collections.Frozen;
using Panside.Guide.Measures;

namespace Panside.Guide.Lines;

/// <summary>What can be read off an instrument.</summary>
/// <param name="Code">As in the stream: <c>tank-volume</c>.</param>
/// <param name="Kind">What it measures.</param>
/// <param name="Spoken">As said to a person: <c>tank</c>.</param>
/// <param name="Interval">How long a value counts as fresh; after twice that it is old.</param>
public sealed record ReadingName(string Code, Dimension Kind, string Spoken, TimeSpan Interval)
{
    /// <summary>Sap in the head tank.</summary>
    public static readonly ReadingName TankVolume = new("tank-volume", Dimension.Volume, "tank", TimeSpan.FromMinutes(15));

    /// <summary>Depth of liquid in the pan.</summary>
    public static readonly ReadingName PanDepth = new("pan-depth", Dimension.Length, "pan depth", TimeSpan.FromMinutes(20));

    /// <summary>Temperature at the draw-off.</summary>
    public static readonly ReadingName DrawTemperature =
        new("draw-temperature", Dimension.Temperature, "draw-off temperature", TimeSpan.FromMinutes(10));

    /// <summary>The same thermometer in boiling water today.</summary>
    public static readonly ReadingName BoilingWaterTemperature =
        new("boiling-water-temperature", Dimension.Temperature, "boiling water", TimeSpan.FromHours(6));

    /// <summary>Sugar of the raw sap.</summary>
    public static readonly ReadingName SapBrix = new("sap-brix", Dimension.Sugar, "sap", TimeSpan.FromHours(6));

    /// <summary>Mean sugar of what stands in the pan before the fire is lit.</summary>
    public static readonly ReadingName PanBrix = new("pan-brix", Dimension.Sugar, "pan sugar", TimeSpan.FromHours(6));

    /// <summary>Sugar of a cooled sample from the draw-off side.</summary>
    public static readonly ReadingName DrawBrix = new("draw-brix", Dimension.Sugar, "draw-off sugar", TimeSpan.FromMinutes(30));

    /// <summary>What the syrup hydrometer shows.</summary>
    public static readonly ReadingName HydrometerBrix =
        new("hydrometer-brix", Dimension.Sugar, "hydrometer", TimeSpan.FromMinutes(30));

    /// <summary>Temperature of the hydrometer's sample.</summary>
    public static readonly ReadingName SampleTemperature =
        new("sample-temperature", Dimension.Temperature, "sample", TimeSpan.FromMinutes(30));

    /// <summary>Pressure reduced to sea level, as a weather report gives it.</summary>
    public static readonly ReadingName Barometer = new("barometer", Dimension.Pressure, "barometer", TimeSpan.FromHours(3));

    /// <summary>Pressure here, not reduced.</summary>
    public static readonly ReadingName StationPressure =
        new("station-pressure", Dimension.Pressure, "pressure here", TimeSpan.FromHours(3));

    /// <summary>Syrup of the last draw.</summary>
    public static readonly ReadingName DrawnVolume = new("drawn-volume", Dimension.Volume, "drawn", TimeSpan.FromHours(6));

    /// <summary>Temperature of the air.</summary>
    public static readonly ReadingName AirTemperature =
        new("air-temperature", Dimension.Temperature, "air", TimeSpan.FromHours(3));

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<ReadingName> All =
    [
        TankVolume, PanDepth, DrawTemperature, BoilingWaterTemperature, SapBrix, PanBrix, DrawBrix, HydrometerBrix,
        SampleTemperature, Barometer, StationPressure, DrawnVolume, AirTemperature,
    ];

    private static readonly FrozenDictionary<string, ReadingName> ByCode = All.ToFrozenDictionary(name => name.Code);

    /// <summary>By its code; null where there is none.</summary>
    public static ReadingName? FromCode(string code) => ByCode.GetValueOrDefault(code);
}

/// <summary>What is seen or smelled, and the states it can have.</summary>
/// <param name="Code">As in the stream: <c>boil</c>.</param>
/// <param name="States">Its states, the liveliest first.</param>
/// <param name="Interval">How long it counts as fresh.</param>
public sealed record ObservationName(string Code, IReadOnlyList<string> States, TimeSpan Interval)
{
    /// <summary>How the pan boils.</summary>
    public static readonly ObservationName Boil =
        new("boil", ["rolling", "steady", "simmering", "still"], TimeSpan.FromMinutes(10));

    /// <summary>The bed of coals.</summary>
    public static readonly ObservationName Coals = new("coals", ["deep", "thin", "spent"], TimeSpan.FromMinutes(15));

    /// <summary>How clearly the channels differ.</summary>
    public static readonly ObservationName Gradient =
        new("gradient", ["clear", "fading", "gone"], TimeSpan.FromMinutes(30));

    /// <summary>Foam on the pan.</summary>
    public static readonly ObservationName Foam = new("foam", ["low", "rising", "over"], TimeSpan.FromMinutes(15));

    /// <summary>The smell of the steam.</summary>
    public static readonly ObservationName Smell = new("smell", ["sweet", "scorched"], TimeSpan.FromMinutes(10));

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<ObservationName> All = [Boil, Coals, Gradient, Foam, Smell];

    /// <summary>By its code; null where there is none.</summary>
    public static ObservationName? FromCode(string code) => All.FirstOrDefault(name => name.Code == code);
}

/// <summary>What the operator does.</summary>
/// <param name="Code">As in the stream: <c>add-wood</c>.</param>
/// <param name="Kind">What its value measures; null where it takes none.</param>
/// <param name="Spoken">As told back: <c>wood added</c>.</param>
public sealed record DeedName(string Code, Dimension? Kind, string Spoken)
{
    /// <summary>The fire is lit.</summary>
    public static readonly DeedName LitFire = new("lit-fire", null, "fire lit");

    /// <summary>A charge of wood went in.</summary>
    public static readonly DeedName AddWood = new("add-wood", Dimension.Mass, "wood added");

    /// <summary>The draw-off is open.</summary>
    public static readonly DeedName OpenDraw = new("open-draw", null, "draw-off opened");

    /// <summary>The draw-off is shut; the value is the volume drawn.</summary>
    public static readonly DeedName CloseDraw = new("close-draw", Dimension.Volume, "draw-off shut");

    /// <summary>The coals are raked level over the grates.</summary>
    public static readonly DeedName SpreadCoals = new("spread-coals", null, "coals spread");

    /// <summary>The pan is flooded for the shutdown.</summary>
    public static readonly DeedName FloodPan = new("flood-pan", null, "pan flooded");

    /// <summary>Defoamer went in.</summary>
    public static readonly DeedName AddDefoamer = new("add-defoamer", null, "defoamer added");

    /// <summary>The pan is covered.</summary>
    public static readonly DeedName CoverPan = new("cover-pan", null, "pan covered");

    /// <summary>Sap went into the head tank; the value is the volume added.</summary>
    public static readonly DeedName RefillTank = new("refill-tank", Dimension.Volume, "tank refilled");

    /// <summary>The operator leaves.</summary>
    public static readonly DeedName Leave = new("leave", null, "leaving");

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<DeedName> All =
        [LitFire, AddWood, OpenDraw, CloseDraw, SpreadCoals, FloodPan, AddDefoamer, CoverPan, RefillTank, Leave];

    /// <summary>By its code; null where there is none.</summary>
    public static DeedName? FromCode(string code) => All.FirstOrDefault(name => name.Code == code);
}

/// <summary>The words that answer an open prompt.</summary>
public static class AnswerWords
{
    /// <summary>It is so; it is done.</summary>
    public const string Yes = "yes";

    /// <summary>It is not so; not done.</summary>
    public const string No = "no";

    /// <summary>Go past it; it stays listed.</summary>
    public const string Skip = "skip";

    /// <summary>Ask again in a while.</summary>
    public const string Later = "later";

    /// <summary>All four.</summary>
    public static readonly IReadOnlyList<string> All = [Yes, No, Skip, Later];
}
