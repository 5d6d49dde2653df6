using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs;

/// <summary>
/// What a rig file may leave open. Depths, charge and interval: common practice, no source, for a pan of 2 ft by 4 ft,
/// scaled by the pan's area where size matters. Each is stated in docs/rigs.md.
/// </summary>
public static class RigDefaults
{
    /// <summary>Sea level is the cautious guess only for the thermometer's first check; a boiling-water reading replaces it.</summary>
    public static Length Altitude => Length.FromFeet(0);

    /// <summary>The depth that a small divided pan is run at.</summary>
    public static Length RunDepth => Length.FromInches(1.5);

    /// <summary>Below it the syrup end scorches.</summary>
    public static Length LeastDepth => Length.FromInches(0.75);

    /// <summary>For a shutdown.</summary>
    public static Length FloodDepth => Length.FromInches(2.5);

    /// <summary>The wall of a flat pan.</summary>
    public static Length WallDepth => Length.FromInches(8);

    /// <summary>A common firewood.</summary>
    public static string WoodSpecies => "sugar maple";

    /// <summary>Dry, on a dry basis.</summary>
    public static double WoodMoisturePercent => 20;

    /// <summary>The density of finished syrup.</summary>
    public static double TargetBrix => 66.9;

    /// <summary>Three channels, or one in a pan under two feet.</summary>
    public static int Channels(Length length) => double.Round(length.Inches, 6) < 24 ? 1 : 3;

    /// <summary>15 lb a square foot of pan.</summary>
    public static Mass Firebrick(Area area) => Mass.FromPounds(15 * area.SquareFeet);

    /// <summary>7 lb over 8 ft² with a blower, 5 lb without.</summary>
    public static Mass Charge(Area area, Draft draft) =>
        Mass.FromPounds((draft == Draft.Forced ? 7.0 : 5.0) / 8 * area.SquareFeet);

    /// <summary>Little and often.</summary>
    public static TimeSpan Interval(Draft draft) => TimeSpan.FromMinutes(draft == Draft.Forced ? 8 : 9);

    /// <summary>What lines the arch of a burner: 3 lb a square foot, sheet metal for the most part.</summary>
    public static Mass BurnerLining(Area area) => Mass.FromPounds(3 * area.SquareFeet);

    /// <summary>1 gal/h a square foot.</summary>
    public static VolumeRate Boils(Area area) => VolumeRate.FromUsGallonsPerHour(area.SquareFeet);

    /// <summary>A burner is looked at as often as a natural fire.</summary>
    public static TimeSpan BurnerInterval => TimeSpan.FromMinutes(10);

    /// <summary>All that a flow may ask to read with; a sight glass only where it is said.</summary>
    public static IReadOnlyList<string> Instruments => ["thermometer", "hydrometer", "refractometer"];

    /// <summary>A pail that raises the pan by three eighths of an inch: 2 gal over 8 ft².</summary>
    public static Volume Pail(Area area) => Volume.FromUsGallons(0.25 * area.SquareFeet);

    /// <summary>Four to five hours of boiling.</summary>
    public static Volume Tank(Area area) => Volume.FromUsGallons(4.4 * area.SquareFeet);
}
