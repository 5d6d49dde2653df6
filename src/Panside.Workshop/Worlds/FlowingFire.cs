using System.Collections.Immutable;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds;

/// <summary>
/// The fire of <see cref="FlowingWorld"/>. Each charge has a clock of its own that draft and warmth of the box drive; by it wood gives
/// its flame, then its char, as curves that rise fast, fall slowly and end: the stages of batch-fired stoves (Tissari, Hytönen,
/// Lyyränen, Jokiniemi, Atmospheric Environment 41 (2007) 8330–8344, from memory; the curves' form no source). Air takes up the heat
/// that does not radiate and leaves it to the brick's face, then to the pan. Brick has a face and a back.
/// </summary>
internal static class FlowingFire
{
    /// <summary>Heat of air and flue gas, in MJ/(kg K): air at some 500 °C, from memory.</summary>
    private const double GasHeat = 1.12e-3;

    /// <summary>Air that burns a megajoule of wood without any left over, in kg: 0.33, from memory.</summary>
    private const double AirNeeded = 0.33;

    /// <summary>Char begins to burn at this share of the flame's time: no source.</summary>
    private const double CharBegins = 0.3;

    /// <summary>No charge gives more of its flame in its time than this, beside an even rate, however its time may change.</summary>
    private const double Fastest = 3;

    /// <summary>Share of the brick's heat capacity that is its face: no source.</summary>
    private const double Face = 0.4;

    /// <summary>Share of the flame's heat that radiates: no source.</summary>
    private const double FlameRadiates = 0.10;

    /// <summary>Share of the char's heat that radiates: no source.</summary>
    private const double CharRadiates = 0.6;

    /// <summary>Share of what radiates that comes to the pan, the rest to the brick: no source.</summary>
    private const double RadiatesToPan = 0.65;

    /// <summary>Temperature of the stack at the rig's own firing, in K: no source.</summary>
    private const double StackKelvin = 720;

    /// <summary>Seconds in which the stack follows its gas: no source.</summary>
    private const double StackSeconds = 240;

    /// <summary>How much hotter than the air the brick's face is before wood burns as in a hot box, in K: no source.</summary>
    private const double WarmBox = 400;

    /// <summary>The same with a blower, whose brick is hotter.</summary>
    private const double BlownBox = 500;

    /// <summary>The part of its speed at which wood burns in a cold box: no source.</summary>
    private const double Least = 0.25;

    /// <summary>The part of its draft that a cold stack has, with the doors ajar: no source.</summary>
    private const double ColdDraft = 0.35;

    /// <summary>Heat in the brick's face and back over 0 °C, in MJ.</summary>
    public static double Stored(Makeup makeup, Truth truth) =>
        makeup.BrickCapacity * ((Face * truth.BrickCelsius) + ((1 - Face) * truth.Own[FlowingWorld.Back]));

    /// <summary>One second.</summary>
    public static Given Step(Makeup makeup, Truth truth)
    {
        var (face, back, stack) = (truth.BrickCelsius, truth.Own[FlowingWorld.Back], truth.Own[FlowingWorld.Stack]);
        var draft = Draft(makeup, stack);
        var warm = double.Clamp((face - makeup.AirCelsius) / (makeup.Forced ? BlownBox : WarmBox), 0, 1);
        var (charges, flame, glow, coals) = Burnt(makeup, truth, draft * (Least + ((1 - Least) * warm)), double.Sqrt(draft));

        var air = makeup.UsualFire * AirNeeded * (makeup.Forced ? 2.1 : 2.3) * draft * GasHeat;
        var shines = (FlameRadiates * flame) + (CharRadiates * glow);
        var hot = makeup.AirCelsius + ((flame + glow - shines) / air);
        var toBrick = double.Min(makeup.BrickExchange * double.Sqrt(draft), 0.5 * air) * (hot - face);
        var overPan = hot - (toBrick / air);
        var pan = Pan.MeanCelsius(makeup, truth);
        var reach = double.Min(makeup.ToPan / double.Sqrt(double.Sqrt(draft)), 0.6);
        var swept = reach * air * double.Max(overPan - pan, 0);
        var (faceKelvin, panKelvin) = (face + FlueGas.Kelvin, pan + FlueGas.Kelvin);
        var radiated = double.Max(FlueGas.Radiation * makeup.BrickSees
            * ((faceKelvin * faceKelvin * faceKelvin * faceKelvin) - (panKelvin * panKelvin * panKelvin * panKelvin)), 0);

        var gone = overPan - (swept / air);
        var inward = Inward(makeup) * (face - back);
        var walls = makeup.WallLoss * (back - makeup.AirCelsius);
        return new((RadiatesToPan * shines) + swept + radiated, truth with
        {
            Charges = charges,
            Coals = coals,
            BrickCelsius = face + ((((1 - RadiatesToPan) * shines) + toBrick - radiated - inward) / (Face * makeup.BrickCapacity)),
            Own = With(truth.Own, back + ((inward - walls) / ((1 - Face) * makeup.BrickCapacity)), stack + ((gone - stack) / StackSeconds)),
            Ledger = truth.Ledger with
            {
                Stack = truth.Ledger.Stack + (air * (gone - makeup.AirCelsius)),
                Walls = truth.Ledger.Walls + walls,
            },
        });
    }

    /// <summary>The draft beside the usual one: a blower's is always the same, the stack's goes with the root of its pull.</summary>
    private static double Draft(Makeup makeup, double stack)
    {
        var outside = makeup.AirCelsius + FlueGas.Kelvin;
        var pull = makeup.Forced ? 1 : double.Max(1 - (outside / double.Max(stack + FlueGas.Kelvin, outside)), 0) / (1 - (outside / StackKelvin));
        return double.Max(double.Sqrt(pull), ColdDraft) * double.Sqrt(makeup.DraftShare);
    }

    /// <summary>Conduction from face to back, in MW/K: brick of 1 W/(m K), half of its thickness, by its mass; from memory.</summary>
    private static double Inward(Makeup makeup) => 18e-6 * double.Cbrt(makeup.BrickCapacity / 0.0544);

    /// <summary>
    /// Every charge's clock goes on, slower where more would burn than air lets: no source for twice the usual fire. Coals without flame
    /// keep themselves warm: their clock wants air alone, and less of it.
    /// </summary>
    private static (ImmutableArray<Charge> Charges, double Flame, double Glow, double Coals) Burnt(Makeup makeup, Truth truth, double speed, double glows)
    {
        var (flame, made, wants, whole) = (0.0, 0.0, 0.0, 0.0);
        if (truth.Charges.IsEmpty && truth.Coals <= 0)
        {
            return ([], 0, 0, 0);
        }

        var level = truth.CoalsLevel ? 1.2 : 1;
        var most = 2.2 * makeup.UsualFire * double.Sqrt(makeup.DraftShare);
        var asked = 0.0;
        foreach (var charge in truth.Charges)
        {
            asked += speed * charge.Whole * Rate(charge.Seconds / makeup.FlameSeconds) / makeup.FlameSeconds;
        }

        speed *= asked > most ? most / asked : 1;
        var left = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        foreach (var charge in truth.Charges)
        {
            var before = charge.Seconds;
            var after = before + (before < makeup.FlameSeconds ? speed : glows);
            var still = charge.Whole * (1 - Given(after / makeup.FlameSeconds));
            var burnt = double.Clamp(charge.Left - still, 0, Fastest * charge.Whole / makeup.FlameSeconds);
            var (charBefore, charAfter) = (Char(makeup, before), Char(makeup, after));
            var char_ = charge.Whole * charge.CharShare;
            flame += burnt;
            made += burnt * charge.CharShare;
            wants += char_ * (charAfter - charBefore);
            whole += char_ * double.Max(Given(before / makeup.FlameSeconds) - charBefore, 0);
            if (charAfter < 1 || burnt < charge.Left)
            {
                left.Add(charge with { Left = charge.Left - burnt, Seconds = after });
            }
        }

        // Coals that were heaped, or left over by a clock that was slow, burn in the same proportion; the last crumbs evenly.
        var glow = double.Min(whole > 1e-6 ? wants * level * truth.Coals / whole : makeup.UsualCoals / 3600, double.Min(truth.Coals, makeup.UsualFire));
        return (left.DrainToImmutable(), flame, glow, truth.Coals + made - glow);
    }

    /// <summary>What share of its char a charge has burnt: fastest in the middle of its time.</summary>
    private static double Char(Makeup makeup, double seconds)
    {
        var share = double.Clamp((seconds - (CharBegins * makeup.FlameSeconds)) / makeup.CoalSeconds, 0, 1);
        return share * share * (3 - (2 * share));
    }

    /// <summary>What share has been given at a share of its time: highest at a third of it, over at 1.</summary>
    private static double Given(double share)
    {
        var rest = 1 - double.Clamp(share, 0, 1);
        return 1 - (rest * rest * rest * (1 + (3 * (1 - rest))));
    }

    /// <summary>The slope of what is given.</summary>
    private static double Rate(double share)
    {
        var rest = 1 - double.Clamp(share, 0, 1);
        return 12 * (1 - rest) * rest * rest;
    }

    private static ImmutableArray<double> With(ImmutableArray<double> own, double back, double stack) =>
        [own[FlowingWorld.Bulb], own[FlowingWorld.Float], back, stack];
}
