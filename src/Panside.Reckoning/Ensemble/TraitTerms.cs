using System.Collections.Concurrent;

namespace Panside.Reckoning.Ensemble;

/// <summary>What members' traits come to in a run, one value of each member. Traits stay through a boil, so runs of the same step share it.</summary>
/// <param name="FlameGives">Part of the volatiles' heat that a step gives off.</param>
/// <param name="CoalsGive">Part of the coals'.</param>
/// <param name="BrickGives">Part of the brick's.</param>
/// <param name="ToBrick">Share of the fire's heat that goes into the brick.</param>
/// <param name="AirLoss">The exponential of <see cref="Field.AirLoss"/>.</param>
/// <param name="Vapor">The exponential of <see cref="Field.Vapor"/>.</param>
/// <param name="Mixing">The exponential of <see cref="Field.Mixing"/>.</param>
internal sealed record TraitTerms(
    double[] FlameGives, double[] CoalsGive, double[] BrickGives, double[] ToBrick, double[] AirLoss, double[] Vapor, double[] Mixing)
{
    /// <summary>For members and a step of so many minutes.</summary>
    public static TraitTerms Of(Members members, double stepMinutes)
    {
        double[] GivesOff(int time) => Each(members[time], trait => 1 - double.Exp(-stepMinutes / double.Exp(trait)));
        double[] Exponential(int field) => Each(members[field], double.Exp);
        return new(
            GivesOff(Field.FlameTime), GivesOff(Field.CoalTime), GivesOff(Field.BrickTime), Exponential(Field.ToBrick),
            Exponential(Field.AirLoss), Exponential(Field.Vapor), Exponential(Field.Mixing));
    }

    private static double[] Each(double[] values, Func<double, double> term)
    {
        var terms = new double[values.Length];
        for (var member = 0; member < terms.Length; member++)
        {
            terms[member] = term(values[member]);
        }

        return terms;
    }
}

/// <summary>The terms of traits that several members share, kept for each length of step.</summary>
internal sealed class SharedTerms
{
    private readonly ConcurrentDictionary<double, TraitTerms> _known = new();

    /// <summary>Those for a step of so many minutes.</summary>
    public TraitTerms Of(Members members, double stepMinutes) =>
        _known.GetOrAdd(stepMinutes, static (minutes, members) => TraitTerms.Of(members, minutes), members);
}
