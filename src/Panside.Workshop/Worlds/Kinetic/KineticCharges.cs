using System.Collections.Immutable;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Kinetic;

/// <summary>What the charges did in one second.</summary>
/// <param name="Left">Those left.</param>
/// <param name="Numbers">Their pieces, as a row of numbers.</param>
/// <param name="Taken">Heat that they took, in MJ.</param>
/// <param name="Gas">Heat of what they gave off, in MJ.</param>
/// <param name="Char">Heat of the char that they left, in MJ.</param>
internal readonly record struct KineticFell(ImmutableArray<Charge> Left, double[] Numbers, double Taken, double Gas, double Char);

/// <summary>The charges of the kinetic world: what is around them, and what they give; the oldest takes heat first.</summary>
internal static class KineticCharges
{
    /// <summary>Seconds in which a charge on a burning bed is lit all over. No source.</summary>
    private const double CatchingSeconds = 60;

    /// <summary>Among burning splints, in °C. No source.</summary>
    private const double LitCelsius = 700;

    /// <summary>A glowing bed, in °C. No source.</summary>
    private const double Glow = 850;

    /// <summary>Share of what burns that the wood takes at most to dry and warm. No source.</summary>
    private const double MostTaken = 0.6;

    /// <summary>One second.</summary>
    public static KineticFell Next(Makeup makeup, KineticRig rig, Truth truth)
    {
        if (truth.Charges.IsEmpty)
        {
            return new([], [], 0, 0, 0);
        }

        var own = truth.Own.AsSpan();
        var around = Around(makeup, rig, truth, own);
        var most = MostTaken * own[KineticWorld.Burnt];
        var charges = ImmutableArray.CreateBuilder<Charge>(truth.Charges.Length);
        Span<double> left = stackalloc double[truth.Charges.Length * KineticPieces.Count];
        var (taken, gas, char_) = (0.0, 0.0, 0.0);
        for (var index = 0; index < truth.Charges.Length; index++)
        {
            var charge = truth.Charges[index];
            var lit = double.Min((charge.Seconds + 5) / CatchingSeconds, 1);
            var step = KineticPieces.Read(own[(KineticWorld.Pieces + (index * KineticPieces.Count))..]).Next(around, lit, most);
            taken += step.Taken;
            most = double.Max(most - step.Taken, 0);
            gas += step.Gas;
            char_ += step.Char;
            if (step.Left.Dry > 0)
            {
                step.Left.Write(left[(charges.Count * KineticPieces.Count)..]);
                charges.Add(charge with { Left = step.Left.Heat, Seconds = charge.Seconds + 1 });
            }
        }

        var numbers = left[..(charges.Count * KineticPieces.Count)].ToArray();
        return new(charges.DrainToImmutable(), numbers, taken, gas, char_);
    }

    /// <summary>Flame and coals around the wood, in °C: as far as the bed covers the grate, and the flames fill the fire. No source.</summary>
    private static double Around(Makeup makeup, KineticRig rig, Truth truth, ReadOnlySpan<double> own)
    {
        var covers = double.Min(double.Sqrt(truth.Coals / (0.15 * rig.UsualBed)), 1);
        var flames = double.Min(2.5 * own[KineticWorld.Burnt] / makeup.UsualFire, 1);
        var around = own[KineticWorld.Face] + ((Glow - own[KineticWorld.Face]) * double.Min((0.75 * covers) + (0.4 * flames), 0.95));
        return IsKindled(truth, own) ? double.Max(around, LitCelsius) : around;
    }

    private static bool IsKindled(Truth truth, ReadOnlySpan<double> own)
    {
        for (var index = 0; index < truth.Charges.Length; index++)
        {
            if (KineticPieces.Read(own[(KineticWorld.Pieces + (index * KineticPieces.Count))..]).AreSplints)
            {
                return true;
            }
        }

        return false;
    }
}
