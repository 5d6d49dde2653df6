namespace Panside.Reckoning.Ensemble;

/// <summary>Members run on by the minute while wood goes in evenly, each drawn from as it comes to syrup; for questions and plans.</summary>
/// <param name="members">The members, changed in place.</param>
/// <param name="rig">What they share.</param>
/// <param name="wood">Heat of the wood, in MJ a minute.</param>
/// <param name="run">A minute of it, without the wood.</param>
/// <param name="draw">How much is drawn at once, in liters.</param>
internal sealed class Firing(Members members, RigConstants rig, double wood, Run run, double draw)
{
    /// <summary>The members.</summary>
    public Members Members => members;

    /// <summary>How often each was drawn from.</summary>
    public double[] Draws { get; } = new double[members.Count];

    /// <summary>Sugar drawn from each, in kg.</summary>
    public double[] DrawnKilograms { get; } = new double[members.Count];

    /// <summary>A minute on.</summary>
    /// <param name="fired">Which members still get wood.</param>
    public void Minute(bool[] fired)
    {
        for (var member = 0; member < members.Count; member++)
        {
            if (fired[member])
            {
                Charge(member, wood);
            }
        }

        Stepping.Go(members, rig, run);
        for (var member = 0; member < members.Count; member++)
        {
            if (IsDrawDue(member))
            {
                var before = members.SugarOf(member);
                PanDeeds.Draw(members, member, draw);
                DrawnKilograms[member] += before - members.SugarOf(member);
                Draws[member]++;
            }
        }
    }

    /// <summary>Wood goes in.</summary>
    /// <param name="member">Into this one's fire.</param>
    /// <param name="heat">Its heat, in MJ.</param>
    public void Charge(int member, double heat)
    {
        var coals = members[Field.CoalShare][member];
        members[Field.Flame][member] += heat * (1 - coals);
        members[Field.Coals][member] += heat * coals;
    }

    /// <remarks>Nobody draws from a pan that no feed fills again.</remarks>
    private bool IsDrawDue(int member)
    {
        if (members[Field.Steam][member] <= 0 || (run.TankEnds && members[Field.Tank][member] <= 0))
        {
            return false;
        }

        var liters = members[members.DrawPan][member] / members.Front.Count;
        return members.LastSugar[member] >= liters * run.DrawFraction * RigConstants.KilogramsOfSap(run.DrawFraction);
    }
}
