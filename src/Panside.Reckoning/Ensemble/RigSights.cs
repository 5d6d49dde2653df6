namespace Panside.Reckoning.Ensemble;

/// <summary>What was seen: an eye's words have no sharp bounds, so that each makes members more or less likely.</summary>
public static class RigSights
{
    /// <summary>An eye says a wrong word so often, whatever it sees.</summary>
    private const double Slip = 0.003;

    /// <summary>So many minutes cold sap takes to come to all channels: no source, calibrated.</summary>
    private const int SapSpreadsIn = 12;

    /// <summary>
    /// The boil was looked at. A simmer just after a flood or a pail poured in is that of a channel that the cold sap has not come to yet: of the pan
    /// it tells nothing.
    /// </summary>
    public static RigEnsemble Seen(this RigEnsemble rigs, BoilSeen boil)
    {
        if (boil == BoilSeen.Simmering && rigs.Common.ChilledAt is { } chilled && rigs.Minute - chilled <= SapSpreadsIn)
        {
            return rigs.With(rigs.Members, rigs.Told + 1, rigs.Minute);
        }

        var seen = rigs.Weighed(
            member => double.Log(double.Max(rigs.Members[Field.Steam][member] / rigs.Constants.Area, 1e-4)), EyeBounds.OfBoil, (int)boil, 0.45);
        return seen.Changed((members, noise) =>
        {
            for (var member = 0; member < members.Count; member++)
            {
                if (boil == BoilSeen.Still)
                {
                    Calm(rigs.Constants, members, member);
                }
                else
                {
                    Boil(rigs.Constants, members, member, boil == BoilSeen.Simmering ? 1.02 : boil == BoilSeen.Steady ? 1.25 : 1.6);
                }
            }
        });
    }

    /// <summary>The coals were looked at.</summary>
    public static RigEnsemble Seen(this RigEnsemble rigs, CoalsSeen coals)
    {
        var usual = UsualCoals.Of(rigs.Rig).Megajoules;
        var seen = rigs.Weighed(
            member => double.Log(double.Max((rigs.Members[Field.Flame][member] + rigs.Members[Field.Coals][member]) / usual, 1e-4)),
            EyeBounds.OfCoals, (int)coals, EyeBounds.CoalsEye);
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
    public static RigEnsemble Seen(this RigEnsemble rigs, GradientSeen gradient) => rigs.Weighed(
        member =>
        {
            var pan = rigs.Members.Front;
            var mean = rigs.Members.SugarOf(pan, member) / pan.Count;
            return (rigs.Members.LastSugar[member] - rigs.Members[Field.Sugar + pan.First][member]) / double.Max(mean, 1e-6);
        },
        EyeBounds.OfGradient, (int)gradient, 0.2);

    private static RigEnsemble Weighed(this RigEnsemble rigs, Func<int, double> scale, double[] bounds, int word, double deviation)
    {
        var likelihoods = new double[rigs.Count];
        for (var member = 0; member < rigs.Count; member++)
        {
            var at = scale(member);
            var below = word == 0 ? 0 : Normal.Below((bounds[word - 1] - at) / deviation);
            var above = word == bounds.Length ? 1 : Normal.Below((bounds[word] - at) / deviation);
            likelihoods[member] = Slip + double.Max(above - below, 0);
        }

        return rigs.With(Assimilation.Seen(rigs.Members, likelihoods, rigs.Told), rigs.Told + 1, rigs.Minute);
    }

    /// <summary>
    /// A boil that is seen still cannot get more heat than its surface gives off: the stores are cut to that. A pan that is still
    /// because cold sap was poured in tells nothing of the fire.
    /// </summary>
    private static void Calm(in RigConstants rig, Members members, int member)
    {
        members[Field.Steam][member] = 0;
        if (members[Field.Temperature][member] < rig.BoilingCelsius - 3)
        {
            return;
        }

        var (heat, lost) = Balance(rig, members, member);
        var cut = heat > lost * 0.95 ? lost * 0.95 / heat : 1;
        members[Field.Flame][member] *= cut;
        members[Field.Coals][member] *= cut;
        members[Field.Brick][member] *= cut;
    }

    /// <summary>A boil that is seen gets at least so many times the heat at which it would be still; coals stand for what is missing.</summary>
    private static void Boil(in RigConstants rig, Members members, int member, double times)
    {
        members[Field.Temperature][member] = rig.BoilingCelsius;
        members[Field.Steam][member] = double.Max(members[Field.Steam][member], 1e-6);
        var (heat, lost) = Balance(rig, members, member);
        if (heat >= lost * times)
        {
            return;
        }

        var perMegajoule = double.Exp(members[Field.Heat][member] + members[Field.Weather][member])
            * rig.ToPan * (1 - rig.Soak)
            * (1 - double.Exp(-1 / double.Exp(members[Field.CoalTime][member])));
        members[Field.Coals][member] += ((lost * times) - heat) / perMegajoule;
    }

    /// <summary>Heat that comes to the pan in the next minute, and what its surface gives off at the boil without boiling, in MJ.</summary>
    private static (double Heat, double Lost) Balance(in RigConstants rig, Members members, int member)
    {
        double Of(int field) => double.Exp(members[field][member]);
        double Gives(int store, int time) => members[store][member] * (1 - double.Exp(-1 / Of(time)));
        var fire = Gives(Field.Flame, Field.FlameTime) + Gives(Field.Coals, Field.CoalTime);
        var soaks = rig.Soak * double.Max(fire - (members[Field.Brick][member] * rig.BrickEvens), 0);
        var heat = double.Exp(members[Field.Heat][member] + members[Field.Weather][member])
            * ((rig.ToPan * (fire - soaks)) + (rig.BrickToPan * Gives(Field.Brick, Field.BrickTime)));
        var lost = rig.Area * ((Of(Field.AirLoss) * (rig.BoilingCelsius - rig.AirCelsius))
            + (Of(Field.Vapor) * rig.BoilingKilopascals * rig.Latent));
        return (heat, lost);
    }
}
