using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>How the fire gets its air.</summary>
public enum Draft
{
    /// <summary>By the stack alone.</summary>
    Natural,

    /// <summary>By a blower.</summary>
    Forced,
}

/// <summary>What heats the pan.</summary>
public enum Fuel
{
    /// <summary>A wood fire.</summary>
    Wood,

    /// <summary>A gas burner.</summary>
    Gas,

    /// <summary>An oil burner.</summary>
    Oil,

    /// <summary>An electric coil.</summary>
    Electric,
}

/// <summary>How syrup comes out of the pan.</summary>
public enum DrawnBy
{
    /// <summary>By a draw-off valve.</summary>
    Valve,

    /// <summary>The whole batch is poured out.</summary>
    Pour,

    /// <summary>With a ladle.</summary>
    Ladle,
}

/// <summary>How sap comes into the pan.</summary>
public enum Feed
{
    /// <summary>A float opens a valve as the pan falls.</summary>
    ByFloat,

    /// <summary>A hand pours it in.</summary>
    ByHand,

    /// <summary>A valve that a hand sets to the boil.</summary>
    ByValve,
}

/// <summary>A rig as its file describes it, with a default for everything that the file leaves open.</summary>
public sealed record Rig
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What is shown, and assumed where no unit is typed.</summary>
    public required UnitSystem Units { get; init; }

    /// <summary>Above sea level.</summary>
    public required Length Altitude { get; init; }

    /// <summary>The pan behind, where there are two; null where there is one. Length, width, channels and depths here are those of the pan where the draw-off is.</summary>
    public PanBehind? Back { get; init; }

    /// <summary>Inside length of the pan.</summary>
    public required Length PanLength { get; init; }

    /// <summary>Inside width of the pan.</summary>
    public required Length PanWidth { get; init; }

    /// <summary>Channels; 1 is an undivided pan.</summary>
    public required int Channels { get; init; }

    /// <summary>The depth that the pan is run at.</summary>
    public required Length RunDepth { get; init; }

    /// <summary>The depth that it must never fall below while hot.</summary>
    public required Length LeastDepth { get; init; }

    /// <summary>The depth for a shutdown.</summary>
    public required Length FloodDepth { get; init; }

    /// <summary>The height of the wall.</summary>
    public required Length WallDepth { get; init; }

    /// <summary>Natural or forced.</summary>
    public required Draft Draft { get; init; }

    /// <summary>What heats the pan.</summary>
    public required Fuel Fuel { get; init; }

    /// <summary>Whether it is shut off at once, and no wood goes in.</summary>
    public bool IsBurner => Fuel != Fuel.Wood;

    /// <summary>What is lit and shut off where no wood burns: a burner, or the heat where current makes it.</summary>
    public string Heater => Fuel == Fuel.Electric ? "heat" : "burner";

    /// <summary>One of two ways to say it: of a wood fire, or of a burner, which over current is the heat.</summary>
    public string OfFire(string wood, string burner) => !IsBurner ? wood : burner.Replace("burner", Heater, StringComparison.Ordinal);

    /// <summary>What a burner boils away at its full flame; of a wood fire its charges say it.</summary>
    public required VolumeRate Boils { get; init; }

    /// <summary>How syrup comes out of the pan.</summary>
    public required DrawnBy DrawnBy { get; init; }

    /// <summary>The instruments that are there; one that no rig file can name is there as well.</summary>
    public required IReadOnlyList<string> Instruments { get; init; }

    /// <summary>The instruments that a rig file can name.</summary>
    public static IReadOnlyList<string> KnownInstruments { get; } = ["thermometer", "hydrometer", "refractometer", "sight glass"];

    /// <summary>Whether what a reading is read with is there, as far as the file says it.</summary>
    /// <param name="instrument">The instrument.</param>
    public bool Has(string instrument) => Instruments.Contains(instrument) || !KnownInstruments.Contains(instrument);

    /// <summary>Whether there is a lid for the pan.</summary>
    public required bool HasLid { get; init; }

    /// <summary>Whether syrup is finished in a pot of its own.</summary>
    public required bool HasFinishingPot { get; init; }

    /// <summary>Mass of the firebrick.</summary>
    public required Mass Firebrick { get; init; }

    /// <summary>The wood's species, as written.</summary>
    public required string WoodSpecies { get; init; }

    /// <summary>The wood's moisture on a dry basis, 0 to 1.</summary>
    public required double WoodMoisture { get; init; }

    /// <summary>One charge of wood.</summary>
    public required Mass Charge { get; init; }

    /// <summary>The time between two charges.</summary>
    public required TimeSpan Interval { get; init; }

    /// <summary>The head tank's capacity.</summary>
    public required Volume Tank { get; init; }

    /// <summary>Whether the file says the tank's capacity; a default one is no limit for readings.</summary>
    public required bool TankIsStated { get; init; }

    /// <summary>How sap comes into the pan.</summary>
    public required Feed Feed { get; init; }

    /// <summary>Whether a float valve holds the pan's depth.</summary>
    public bool HasFloat => Feed == Feed.ByFloat;

    /// <summary>The pail that a pan is fed with by hand.</summary>
    public required Volume Pail { get; init; }

    /// <summary>Whether the file says the pail's size.</summary>
    public required bool PailIsStated { get; init; }

    /// <summary>
    /// What goes into the pan at once by hand: a pail, or less of it where a whole one would raise a small pan by more than half of what it
    /// stands over its least depth. Little and often: common practice, no source.
    /// </summary>
    public Volume Portion => PanArea * (RunDepth - LeastDepth) * 0.5 is var most && most < Pail ? most : Pail;

    /// <summary>The syrup's density aimed at.</summary>
    public required SugarContent Target { get; init; }

    /// <summary>Whether there is a draw-off: a valve, or the end of a divided pan where syrup is ladled out.</summary>
    public bool HasDrawOff => DrawnBy == DrawnBy.Valve || (DrawnBy == DrawnBy.Ladle && Channels > 1);

    /// <summary>Whether a whole batch is poured out of the pan, and not drawn off it.</summary>
    public bool IsBatch => DrawnBy == DrawnBy.Pour;

    /// <summary>
    /// Where syrup leaves the pan: at its target; a batch that a pot finishes nearly there, while it still pours and does not scorch within a
    /// minute. Common practice, no source.
    /// </summary>
    public SugarContent LeavesPanAt => IsBatch && HasFinishingPot ? SugarContent.FromBrix(double.Min(NearlySyrup, Target.Brix)) : Target;

    /// <summary>In Brix: some two degrees Fahrenheit under the draw point of finished syrup.</summary>
    private const double NearlySyrup = 60;

    /// <summary>The file's text.</summary>
    public required string Text { get; init; }

    /// <summary>Plan area of all that stands over the fire.</summary>
    public Area WholeArea => Back is { } back ? PanArea + back.Area : PanArea;

    /// <summary>Plan area of the pan; of two, of the one where the draw-off is.</summary>
    public Area PanArea => Area.FromSquareMeters(PanLength.Meters * PanWidth.Meters);

    /// <summary>The pan of 2 ft by 4 ft that the rules of the trade are made for.</summary>
    internal static Area SmallPan { get; } = Area.FromSquareFeet(8);

    /// <summary>One draw of close to 2 qt is large in a pan of 2 ft by 4 ft: common practice, carried to this one by its area.</summary>
    public Volume LargeDraw => Volume.FromUsQuarts(2 * (PanArea.SquareMeters / SmallPan.SquareMeters));

    /// <summary>The most that the tank can hold: where the file does not say it, no tank is as large.</summary>
    public Volume MostInTank => TankIsStated ? Tank : Tank * 20;

    /// <summary>The pan's contents at a depth; of two, of the one where the draw-off is.</summary>
    public Volume PanVolume(Length depth) => PanArea * depth;

    /// <summary>What runs into all pans from the run depth to the flood depth.</summary>
    public Volume ToFlood => Back is { } back
        ? (PanArea * (FloodDepth - RunDepth)) + (back.Area * (back.FloodDepth - back.RunDepth))
        : PanArea * (FloodDepth - RunDepth);

    /// <summary>What all pans hold as they are run.</summary>
    public Volume WhenRun => Back is { } back ? PanVolume(RunDepth) + back.Description.VolumeAt(back.RunDepth) : PanVolume(RunDepth);

    /// <summary>What all pans hold up to their walls.</summary>
    public Volume ToWalls => Back is { } back ? PanVolume(WallDepth) + back.Description.VolumeAt(back.WallDepth) : PanVolume(WallDepth);
}
