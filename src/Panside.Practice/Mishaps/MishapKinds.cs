using Panside.Practice.Physics;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Mishaps;

/// <summary>All mishaps by name. Their strengths have no source: common practice says that they happen, not how strongly.</summary>
internal static class MishapKinds
{
    /// <summary>All of them: the feed, the fire, the pan, the weather, the instruments, the operator.</summary>
    public static IReadOnlyList<MishapKind> All { get; } =
    [
        new("float-stuck-shut", "the float hangs, and no sap comes until it is freed") { Rig = (rig, _) => rig with { FloatHangs = 0 }, IsFreed = true },
        new("float-stuck-open", "the float hangs open at a quarter, and the pan rises until it is freed") { Rig = (rig, on) => rig with { FloatHangs = 0.25 * on.Strength }, IsFreed = true },
        new("valve-half-shut", "the tank's valve lets through half of what a full boil wants, until it is opened") { Rig = (rig, on) => rig with { MostFeed = rig.MostFeed * 0.05 / on.Strength }, IsFreed = true },
        new("feed-freezing", "ice narrows the feed line more and more over an hour, until it is freed") { Rig = (rig, on) => rig with { MostFeed = rig.MostFeed * double.Max(1 - (on.Minutes / 60 * on.Strength), 0.02), SapCelsius = 0 }, Grows = true, IsFreed = true },
        new("tank-leak", "the tank loses 4 gal an hour on a pan of 8 square feet") { Rig = (rig, on) => rig with { TankLeak = 0.0042 * on.Strength * rig.Area / Makeup.SmallPan } },
        new("tank-emptied", "the tank's drain is knocked open: nine tenths of the sap are gone at once") { Blow = (_, truth, strength) => truth with { Tank = truth.Tank * double.Max(1 - (0.9 * strength), 0) } },
        new("draw-off-drips", "the shut draw-off drips a gallon an hour") { Rig = (rig, on) => rig with { DrawOffDrip = 0.001 * on.Strength } },
        new("wet-wood", "the wood is wet: a fifth less heat, slower flame, more coals") { Rig = (rig, on) => rig with { WoodHeat = rig.WoodHeat * (1 - (0.2 * on.Strength)), FlameSeconds = rig.FlameSeconds * (1 + (0.4 * on.Strength)), CharShare = double.Min(rig.CharShare * (1 + (0.25 * on.Strength)), 0.6) } },
        new("coals-heaped", "the bed of coals is found half as deep again, heaped under a part of the pan, until it is raked") { Rig = (rig, on) => rig with { HeatShares = Heaped(rig, on.Strength) }, Blow = (_, truth, strength) => truth with { Coals = truth.Coals * (1 + (0.5 * strength)), CoalsLevel = false }, IsRaked = true },
        new("blower-dead", "the blower stops: the flame falls to a third, and coals pile up") { Rig = (rig, on) => rig with { DraftShare = double.Max(0.12 / on.Strength, 0.05) } },
        new("draft-too-strong", "wind pulls at the stack: coals burn a quarter faster, brick gives more") { Rig = (rig, on) => rig with { DraftShare = 1 + (0.6 * on.Strength) } },
        new("stack-down", "the stack is down: hardly any draft is left") { Rig = (rig, _) => rig with { DraftShare = 0.15 } },
        new("foam-strong", "the sap foams four times as fast") { Rig = (rig, on) => rig with { Foaming = rig.Foaming * 4 * on.Strength } },
        new("foam-sudden", "foam stands just under the wall's top") { Blow = (_, truth, _) => truth with { Foam = double.Max(truth.Foam, 0.9) } },
        new("pan-tilted", "the draw-off side lies a quarter of an inch higher") { Rig = (rig, on) => rig with { Tilt = 0.00635 * on.Strength } },
        new("pan-scaled", "scale on the floor lets it grow hotter by two fifths under the same boil") { Rig = (rig, on) => rig with { Scale = 1 + (0.4 * on.Strength) } },
        new("hot-spot", "a fallen firebrick sends half as much heat again under one stretch of the pan") { Rig = (rig, on) => rig with { HeatShares = Spotted(rig, on.Strength) } },
        new("barometer-falling", "the barometer falls by 0.6 inHg in two hours") { Rig = (rig, on) => Weather.Under(rig, -2.0 * on.Strength * double.Min(on.Minutes / 120, 1)), Grows = true },
        new("cold-wind", "a cold wind goes over the pan: twice the loss, air and sap near freezing") { Rig = (rig, on) => rig with { SurfaceLoss = rig.SurfaceLoss * (1 + on.Strength), AirCelsius = rig.AirCelsius - (8 * on.Strength), SapCelsius = 0.5 } },
        new("sap-watery", "thin sap is in the tank: half of the sugar") { Blow = (rig, truth, strength) => truth with { Tank = Thinned(truth.Tank, strength) } },
        new("thermometer-high", "the thermometer shows 2 °F more") { Kit = (kit, on) => kit with { ThermometerOff = kit.ThermometerOff + (1.1 * on.Strength) } },
        new("thermometer-low", "the thermometer shows 2 °F less") { Kit = (kit, on) => kit with { ThermometerOff = kit.ThermometerOff - (1.1 * on.Strength) } },
        new("ruler-high", "the depth reads a quarter of an inch too deep") { Kit = (kit, on) => kit with { RulerOff = 0.00635 * on.Strength } },
        new("tank-gauge-hangs", "the tank's gauge hangs at what it showed, for forty minutes") { Kit = (kit, on) => kit with { GaugeHangs = on.Tank }, Minutes = 40 },
        new("hydrometer-off", "the hydrometer shows 1.5 Brix too much") { Kit = (kit, on) => kit with { HydrometerOff = 1.5 * on.Strength } },
        new("operator-late", "the operator takes three times as long for everything") { Operator = (one, on) => one with { Slowness = 1 + (2 * on.Strength) } },
        new("operator-away", "the operator is away for ten minutes") { Operator = (one, _) => one with { IsAway = true }, Minutes = 10 },
        new("operator-skips", "the operator skips a third of what is to be read or looked at") { Operator = (one, on) => one with { Skips = double.Min(on.Strength / 3, 0.9) } },
        new("operator-mistypes", "the operator mistypes one number in ten") { Operator = (one, on) => one with { Mistypes = double.Min(0.1 * on.Strength, 1) } },
        new("operator-heavy-hand", "every charge is a third heavier, and told as the usual one") { Operator = (one, on) => one with { Charges = 1 + (0.33 * on.Strength) } },
        new("operator-tells-nothing", "wood goes in untold between the charges that are asked for, for twenty minutes") { Operator = (one, _) => one with { ForgetsToTell = true }, Minutes = 20 },
        new("operator-smells-nothing", "the operator has a cold and smells nothing") { Operator = (one, _) => one with { HasACold = true } },
        new("operator-leaves", "the operator says 'leave' before it is clear, every quarter of an hour") { Operator = (one, _) => one with { WantsToLeave = true }, Minutes = 45 },
        new("laptop-off", "the laptop is off for a quarter of an hour; wood goes in by habit") { Operator = (one, _) => one with { IsUnheard = true }, Minutes = 15 },
        new("water-spilled", "the water that stood ready in pails is spilled") { TakesTheWater = true },
    ];

    /// <summary>By its name; null where there is none.</summary>
    public static MishapKind? Named(string name) => All.FirstOrDefault(kind => kind.Name == name);

    private static System.Collections.Immutable.ImmutableArray<double> Heaped(Makeup rig, double strength)
    {
        // Toward the draw-off, where the syrup is.
        var cells = rig.HeatShares.Length;
        var shares = rig.HeatShares.Select((share, cell) => share * (1 + (0.3 * strength * ((2.0 * cell / (cells - 1)) - 1)))).ToList();
        return [.. shares.Select(share => share / shares.Sum())];
    }

    private static System.Collections.Immutable.ImmutableArray<double> Spotted(Makeup rig, double strength)
    {
        var shares = rig.HeatShares.Select((share, cell) => share * (cell == rig.HeatShares.Length - 1 ? 1 + (0.5 * strength) : 1)).ToList();
        return [.. shares.Select(share => share / shares.Sum())];
    }

    private static Cell Thinned(Cell tank, double strength)
    {
        var gone = tank.Sugar * double.Min(0.5 * strength, 0.95);
        return tank with { Sugar = tank.Sugar - gone, Water = tank.Water + gone };
    }
}
