namespace Panside.Reckoning.Ensemble;

/// <summary>How the pan boils, as an eye tells it.</summary>
public enum BoilSeen
{
    /// <summary>No bubbles.</summary>
    Still,

    /// <summary>A few.</summary>
    Simmering,

    /// <summary>All over, low.</summary>
    Steady,

    /// <summary>Full.</summary>
    Rolling,
}

/// <summary>How the coals look through the door.</summary>
public enum CoalsSeen
{
    /// <summary>No more than ash and sparks.</summary>
    Spent,

    /// <summary>A thin bed.</summary>
    Thin,

    /// <summary>A deep bed.</summary>
    Deep,
}

/// <summary>How the channels differ in color.</summary>
public enum GradientSeen
{
    /// <summary>Not at all.</summary>
    Gone,

    /// <summary>A little.</summary>
    Fading,

    /// <summary>Clearly.</summary>
    Clear,
}

/// <summary>What was seen: an eye's words have no sharp bounds, so that each makes members more or less likely.</summary>
public sealed partial class RigEnsemble
{
    /// <summary>An eye says a wrong word so often, whatever it sees.</summary>
    private const double Slip = 0.003;

    /// <summary>Steam below which the boil is called still, in liters a minute and a square meter: no source, calibrated.</summary>
    internal const double StillBoil = 0.013;

    /// <summary>Bounds between the words for the boil, in liters of steam a minute and a square meter: no source, calibrated.</summary>
    private static readonly double[] BoilBounds = [double.Log(StillBoil), double.Log(0.15), double.Log(0.40)];

    /// <summary>Bounds between the words for the coals, as shares of a long-fired bed: no source, calibrated.</summary>
    private static readonly double[] CoalBounds = [double.Log(0.06), double.Log(0.45)];

    /// <summary>How far eyes differ in these bounds, as a deviation of their logarithm: no source, calibrated.</summary>
    private const double CoalsEye = 0.5;

    /// <summary>Bounds between the words for the gradient, as the difference of the ends over the mean: no source, calibrated.</summary>
    private static readonly double[] GradientBounds = [0.3, 0.7];

    /// <summary>So many minutes cold sap takes to come to all channels: no source, calibrated.</summary>
    private const int SapSpreadsIn = 12;

    /// <summary>
    /// The boil was looked at. A simmer just after a flood or a pail poured in is that of a channel that the cold sap has not come to yet: of the pan
    /// it tells nothing.
    /// </summary>
    public RigEnsemble Seen(BoilSeen boil)
    {
        if (boil == BoilSeen.Simmering && Common.ChilledAt is { } chilled && Minute - chilled <= SapSpreadsIn)
        {
            return With(Members, Told + 1, Minute);
        }

        var seen = Weighed(
            member => double.Log(double.Max(Members[Field.Steam][member] / Constants.Area, 1e-4)), BoilBounds, (int)boil, 0.45);
        return seen.Changed((members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                if (boil == BoilSeen.Still)
                {
                    Calm(members, member);
                }
                else
                {
                    Boil(members, member, boil == BoilSeen.Simmering ? 1.02 : boil == BoilSeen.Steady ? 1.25 : 1.6);
                }
            }
        });
    }

    /// <summary>
    /// Minutes until an eye would call the coals thin, or spent, with no more wood: each member's bed empties by its own time constant, and is looked at
    /// by an eye that is as unsure of the bound as <see cref="Seen(CoalsSeen)"/> takes it to be. 0 where it has.
    /// </summary>
    /// <param name="to">Thin or spent.</param>
    /// <exception cref="ArgumentOutOfRangeException">Deep: that comes of wood, and not of waiting.</exception>
    public RankedValues MinutesToCoals(CoalsSeen to)
    {
        ArgumentOutOfRangeException.ThrowIfEqual(to, CoalsSeen.Deep);
        var bound = UsualCoals.Of(Rig).Megajoules * double.Exp(CoalBounds[(int)to]);
        var minutes = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            var fuel = Members[Field.Flame][member] + Members[Field.Coals][member];
            var called = bound * double.Exp(CoalsEye * Noise.Noise[member]);
            minutes[member] = fuel > called ? double.Exp(Members[Field.CoalTime][member]) * double.Log(fuel / called) : 0;
        }

        return new(minutes);
    }

    /// <summary>The coals were looked at.</summary>
    public RigEnsemble Seen(CoalsSeen coals)
    {
        var usual = UsualCoals.Of(Rig).Megajoules;
        var seen = Weighed(
            member => double.Log(double.Max((Members[Field.Flame][member] + Members[Field.Coals][member]) / usual, 1e-4)),
            CoalBounds, (int)coals, CoalsEye);
        return seen.Changed((members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                var fuel = members[Field.Flame][member] + members[Field.Coals][member];
                var bound = usual * double.Exp(0.3 * noise[member]);
                var to = coals switch
                {
                    CoalsSeen.Spent => double.Min(fuel, 0.05 * bound),
                    CoalsSeen.Thin => double.Clamp(fuel, 0.03 * bound, 0.6 * bound),
                    _ => double.Max(fuel, 0.3 * bound),
                };
                if (fuel > 1e-9 && to < fuel)
                {
                    members[Field.Flame][member] *= to / fuel;
                    members[Field.Coals][member] *= to / fuel;
                }
                else
                {
                    members[Field.Coals][member] += to - fuel;
                }
            }
        });
    }

    /// <summary>The channels were looked at.</summary>
    public RigEnsemble Seen(GradientSeen gradient) => Weighed(
        member =>
        {
            var pan = Members.Front;
            var mean = Members.SugarOf(pan, member) / pan.Count;
            return (Members.LastSugar[member] - Members[Field.Sugar + pan.First][member]) / double.Max(mean, 1e-6);
        },
        GradientBounds, (int)gradient, 0.2);

    private RigEnsemble Weighed(Func<int, double> scale, double[] bounds, int word, double deviation)
    {
        var likelihoods = new double[Count];
        for (var member = 0; member < Count; member++)
        {
            var at = scale(member);
            var below = word == 0 ? 0 : Normal.Below((bounds[word - 1] - at) / deviation);
            var above = word == bounds.Length ? 1 : Normal.Below((bounds[word] - at) / deviation);
            likelihoods[member] = Slip + double.Max(above - below, 0);
        }

        return With(Assimilation.Seen(Members, likelihoods, Told), Told + 1, Minute);
    }

    /// <summary>
    /// A boil that is seen still cannot get more heat than its surface gives off: the stores are cut to that. A pan that is still
    /// because cold sap was poured in tells nothing of the fire.
    /// </summary>
    private void Calm(Members members, int member)
    {
        members[Field.Steam][member] = 0;
        if (members[Field.Temperature][member] < Constants.BoilingCelsius - 3)
        {
            return;
        }

        var (heat, lost) = Balance(members, member);
        var cut = heat > lost * 0.95 ? lost * 0.95 / heat : 1;
        members[Field.Flame][member] *= cut;
        members[Field.Coals][member] *= cut;
        members[Field.Brick][member] *= cut;
    }

    /// <summary>A boil that is seen gets at least so many times the heat at which it would be still; coals stand for what is missing.</summary>
    private void Boil(Members members, int member, double times)
    {
        members[Field.Temperature][member] = Constants.BoilingCelsius;
        members[Field.Steam][member] = double.Max(members[Field.Steam][member], 1e-6);
        var (heat, lost) = Balance(members, member);
        if (heat >= lost * times)
        {
            return;
        }

        var perMegajoule = double.Exp(members[Field.Heat][member] + members[Field.Weather][member])
            * Constants.ToPan * (1 - Constants.Soak)
            * (1 - double.Exp(-1 / double.Exp(members[Field.CoalTime][member])));
        members[Field.Coals][member] += ((lost * times) - heat) / perMegajoule;
    }

    /// <summary>Heat that comes to the pan in the next minute, and what its surface gives off at the boil without boiling, in MJ.</summary>
    private (double Heat, double Lost) Balance(Members members, int member)
    {
        double Of(int field) => double.Exp(members[field][member]);
        double Gives(int store, int time) => members[store][member] * (1 - double.Exp(-1 / Of(time)));
        var fire = Gives(Field.Flame, Field.FlameTime) + Gives(Field.Coals, Field.CoalTime);
        var soaks = Constants.Soak * double.Max(fire - (members[Field.Brick][member] * Constants.BrickEvens), 0);
        var heat = double.Exp(members[Field.Heat][member] + members[Field.Weather][member])
            * ((Constants.ToPan * (fire - soaks)) + (Constants.BrickToPan * Gives(Field.Brick, Field.BrickTime)));
        var lost = Constants.Area * ((Of(Field.AirLoss) * (Constants.BoilingCelsius - Constants.AirCelsius))
            + (Of(Field.Vapor) * Constants.BoilingKilopascals * Constants.Latent));
        return (heat, lost);
    }
}
