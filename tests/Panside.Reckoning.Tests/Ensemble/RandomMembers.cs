using CsCheck;
using Panside.Reckoning.Chance;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Rig;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>Members in the middle of anything: fires of all sizes, pans from a film to a flood, tanks empty and full.</summary>
internal static class RandomMembers
{
    /// <summary>Members, and how they are run on.</summary>
    public static readonly Gen<(bool Forced, Members Members, Run Run)> Gen =
        CsCheck.Gen.Select(
            CsCheck.Gen.Bool, CsCheck.Gen.ULong, CsCheck.Gen.Double[0.1, 2], CsCheck.Gen.Double[0, 16], CsCheck.Gen.Bool, CsCheck.Gen.Bool,
            CsCheck.Gen.Int[1, 120],
            (forced, seed, minutes, wood, tankEnds, feed, steps) => (forced, Of(forced, seed), new Run
            {
                Steps = steps,
                StepMinutes = minutes,
                WoodMegajoules = wood < 4 ? 0 : wood - 4,
                HeldLiters = feed ? 10 + wood * 3 : 0,
                TankEnds = tankEnds,
                Accounts = true,
            }));

    /// <summary>Members of one pan from a seed.</summary>
    public static Members Of(bool forced, ulong seed, int count = 16) => Of(EnsembleRig.Of(forced), seed, count);

    /// <summary>Members of a rig of one pan or two from a seed.</summary>
    public static Members Of(RigDescription rig, ulong seed, int count = 16)
    {
        var members = Beginning.Of(rig, RigPrior.Default, count);
        Stretch[] pans = members.BackCells > 0 ? [members.Back, members.Front] : [members.Front];
        for (var member = 0; member < count; member++)
        {
            var random = RandomNumbers.For(seed, (ulong)member);
            double Upto(double most) => most * random.Unit();
            members[Field.Flame][member] = Upto(80);
            members[Field.Coals][member] = Upto(120);
            members[Field.Brick][member] = Upto(60);
            foreach (var pan in pans)
            {
                members.SetLiters(pan, member, 0.1 + Upto(random.Unit() < 0.3 ? 2 : pan.IsBack ? 120 : pans.Length > 1 ? 30 : 60));
            }

            members[Field.Temperature][member] = Upto(99.5);
            members[Field.Tank][member] = Upto(random.Unit() < 0.3 ? 5 : 200);
            foreach (var pan in pans)
            {
                for (var cell = pan.First; cell < pan.First + pan.Count; cell++)
                {
                    members[Field.Sugar + cell][member] = members.Liters(pan, member) / pan.Count * Upto(0.8);
                }
            }
        }

        return members;
    }
}
