using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Chance;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>
/// Coarse instruments and a slow hand: the tank in whole gallons, by an eye that stands too high or too low all evening; the ruler in
/// quarters of an inch, the thermometer in whole degrees; a sixth of what is asked is skipped, charges are a fifth heavier than told.
/// Wind takes at one time twice as much from the surface as at another, and the cells over the door get twice the heat of the others. The pan
/// goes on as in practice. Wood burns by <see cref="MarkedFire"/>. No source for the sizes of the errors; common practice says that they
/// happen. Leaves out: draft by wind, an eye that tires, charges that are not told.
/// </summary>
internal sealed class MarkedWorld : World
{
    /// <summary>The rig's own number in <see cref="Truth.Own"/>, 0 to 1.</summary>
    internal const int Number = 0;

    /// <summary>The steel of the arch, in °C.</summary>
    internal const int Steel = 1;

    /// <summary>Parallax shows so much of the tank too much or too little, at most: a deviation of 2 %, even. No source.</summary>
    private const double MostParallax = 0.035;

    /// <summary>Seconds from one wind to another: no source.</summary>
    private const int Winds = 480;

    /// <inheritdoc/>
    public override string Name => "marked";

    /// <inheritdoc/>
    public override string Summary => "instruments with few marks, a slow operator with full arms, wind over the pan";

    /// <inheritdoc/>
    public override double Slowness => 1.8;

    /// <inheritdoc/>
    public override double Skips => 1 / 6.0;

    /// <inheritdoc/>
    public override double Charges => 1.2;

    /// <summary>
    /// The spread of one rig beside another, no source: an eighth in what comes to the pan, a fifth in burn times, masonry and walls.
    /// </summary>
    public override Makeup Made(Makeup makeup, RandomStream? random)
    {
        double Factor(double deviation) => random?.Factor(deviation) ?? 1;
        var area = makeup.Size;
        var made = makeup with { HeatShares = Shares(makeup.HeatShares.Length, Factor), SurfaceLoss = makeup.SurfaceLoss * 1.2, SurfaceVapor = makeup.SurfaceVapor * 1.1 };
        if (makeup.Rig.IsBurner)
        {
            return made;
        }

        var coals = (makeup.Forced ? 640 : 9000) * Factor(0.18);
        return made with
        {
            ToPan = (makeup.Forced ? 0.174 : 0.188) * Factor(0.12),
            SweptToPan = random?.Between(0.25, 0.45) ?? 0.35,
            CharShare = random?.Between(0.28, 0.40) ?? 0.34,
            FlameSeconds = (makeup.Forced ? 360 : 1140) * (1 + (makeup.Rig.WoodMoisture - 0.2)) * Factor(0.16),
            CoalSeconds = coals,
            UsualCoals = makeup.UsualFire * ((0.19 * coals) + (makeup.Forced ? 120 : 300)),
            BrickSees = 0.34 * makeup.Area * Factor(0.15),
            BrickExchange = (makeup.Forced ? 20e-6 : 3e-6) * area * Factor(0.2),
            WallLoss = 5e-6 * area * Factor(0.2),
        };
    }

    /// <inheritdoc/>
    public override Truth Begun(Makeup makeup, Truth truth) => truth with { Own = [Noise.NumberOf(makeup), truth.BrickCelsius] };

    /// <inheritdoc/>
    public override Given Burned(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? Fire.Step(makeup, truth) : MarkedFire.Step(makeup, truth);

    /// <summary>Wind takes from the surface from two thirds to four thirds of what it takes in the middle.</summary>
    public override Truth Boiled(Makeup makeup, Truth truth, double heat)
    {
        var wind = (2 + (2 * Noise.At(truth.Own[Number], truth.Second, Winds))) / 3;
        return Pan.Step(makeup with { SurfaceLoss = makeup.SurfaceLoss * wind, SurfaceVapor = makeup.SurfaceVapor * wind }, truth, heat);
    }

    /// <inheritdoc/>
    public override double Stored(Makeup makeup, Truth truth) => makeup.Rig.IsBurner ? base.Stored(makeup, truth) : MarkedFire.Stored(makeup, truth);

    /// <summary>The mark that an eye too high or too low takes for the level; that a tank is empty anybody sees.</summary>
    public override double GaugedLiters(Makeup makeup, Truth truth, double liters)
    {
        var tank = makeup.Rig.Tank.Liters;
        var off = MostParallax * tank * ((2 * truth.Own[Number]) - 1) * double.Min(liters / (0.1 * tank), 1);
        return double.Max(liters + off, 0);
    }

    /// <inheritdoc/>
    public override (double Step, double Eye)? Scale(ReadingName name, Unit unit) => (name.Code, unit) switch
    {
        ("tank-volume", Unit.Gallon) => (1, 0.25),
        ("tank-volume", _) => (4, 1),
        ("pan-depth", Unit.Inch) => (0.25, 0.05),
        ("pan-depth", _) => (0.5, 0.12),
        (_, Unit.DegreeFahrenheit) => (1, 0.2),
        (_, Unit.DegreeCelsius) => (1, 0.15),
        _ => null,
    };

    /// <summary>The path goes forth and back: cells over the door get twice what those before the stack get.</summary>
    private static ImmutableArray<double> Shares(int cells, Func<double, double> factor)
    {
        var shares = Enumerable.Range(0, cells).Select(cell => ((cell + 1) / 2 % 2 == 0 ? 1 : 2) * factor(0.08)).ToList();
        return [.. shares.Select(share => share / shares.Sum())];
    }
}
