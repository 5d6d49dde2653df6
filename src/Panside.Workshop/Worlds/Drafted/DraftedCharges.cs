using System.Collections.Immutable;
using Panside.Practice.Physics;
using Panside.Workshop.Worlds.Wood;

namespace Panside.Workshop.Worlds.Drafted;

/// <summary>What the charges did in one second.</summary>
/// <param name="Left">Those left.</param>
/// <param name="Numbers">Their pieces, as a row of numbers.</param>
/// <param name="Gas">Heat of the gas that they gave off, in MJ.</param>
/// <param name="Char">Heat of the char that they left, in MJ.</param>
/// <param name="Drying">Heat that drying took, in MJ.</param>
internal readonly record struct DraftedFell(ImmutableArray<Charge> Left, double[] Numbers, double Gas, double Char, double Drying);

/// <summary>The charges of the drafted world: what shines on them, and what they give.</summary>
internal static class DraftedCharges
{
    /// <summary>Share of wood's heat that its char holds, by mass 0.2 of 30 MJ/kg: textbooks, from memory.</summary>
    private const double CharShare = 0.32;

    /// <summary>Share of the fire's heat that goes into drying at most. No source.</summary>
    private const double MostDrying = 0.4;

    /// <summary>A glowing bed, in °C. No source.</summary>
    private const double Glow = 880;

    /// <summary>What a flame shines on wood like, in °C. No source.</summary>
    private const double FlameCelsius = 1000;

    /// <summary>Seconds in which a charge on a burning bed catches fire all over. No source.</summary>
    private const double CatchingSeconds = 120;

    /// <summary>How hot kindling shines, in °C. No source.</summary>
    private const double KindlingCelsius = 600;

    /// <summary>One second.</summary>
    public static DraftedFell Next(Makeup makeup, DraftedRig rig, Truth truth)
    {
        var own = truth.Own.AsSpan();
        var isKindled = own[DraftedWorld.Kindling] > 0;
        var around = Around(makeup, rig, truth);
        var most = MostDrying * own[DraftedWorld.Burnt] / int.Max(truth.Charges.Length, 1);
        var charges = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        Span<double> left = stackalloc double[truth.Charges.Length * DraftedPieces.Count];
        var (gas, char_, drying) = (0.0, 0.0, 0.0);
        for (var index = 0; index < truth.Charges.Length; index++)
        {
            var charge = truth.Charges[index];
            var before = DraftedPieces.Read(own[(DraftedWorld.Pieces + (index * DraftedPieces.Count))..]);
            var (pieces, broken, dried) = before.Next(around, Lit(charge, isKindled), most);
            var heat = broken * pieces.DryHeat;
            gas += heat * (1 - CharShare);
            char_ += heat * CharShare;
            drying += dried * MoistWood.Drying;
            if (pieces.Dry > 0)
            {
                pieces.Write(left[(charges.Count * DraftedPieces.Count)..]);
                charges.Add(charge with { Left = pieces.Heat, Seconds = charge.Seconds + 1 });
            }
        }

        var numbers = left[..(charges.Count * DraftedPieces.Count)].ToArray();
        return new(charges.DrainToImmutable(), numbers, gas, char_, drying);
    }

    /// <summary>How far flames fill the fire: wholly from a third of the usual fire on. No source.</summary>
    public static double Flames(Makeup makeup, Truth truth) => double.Min(3 * truth.Own[DraftedWorld.Burnt] / makeup.UsualFire, 1);

    /// <summary>Share of a charge that the fire has come to: no source.</summary>
    private static double Lit(Charge charge, bool isKindled) =>
        double.Min((charge.Seconds + 5) / (isKindled ? DraftedWorld.KindlingSeconds : CatchingSeconds), 1);

    /// <summary>
    /// What shines on the pieces, in °C: from below the bed, which from a quarter of the usual one on covers the grate, from above flame and
    /// brick; kindling at first. No source for the shares.
    /// </summary>
    private static double Around(Makeup makeup, DraftedRig rig, Truth truth)
    {
        var bed = 0.55 * double.Min(double.Sqrt(truth.Coals / (0.25 * rig.UsualBed)), 1);
        var shine = (bed * FlueGas.FourthPower(Glow)) + (0.25 * Flames(makeup, truth) * FlueGas.FourthPower(FlameCelsius))
            + (0.2 * FlueGas.FourthPower(truth.Own[DraftedWorld.Face]));
        var celsius = double.Sqrt(double.Sqrt(shine)) - FlueGas.Kelvin;
        return truth.Own[DraftedWorld.Kindling] > 0 ? double.Max(celsius, KindlingCelsius) : celsius;
    }
}
