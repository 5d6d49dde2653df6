using System.Collections.Immutable;
using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds.Unseen;

/// <summary>
/// Batches of wood over a bed of char. A batch's rate goes with what of it has burnt already (catching fire from itself and from
/// the bed) and with what is left, so that it rises, stands and falls as published curves of log batches do (Skreiberg 1997 on stoves,
/// from memory; the form and its constants have no source); char comes late in it. Char burns by reaction and by diffusion through film and ash in
/// series on the surface of a heap that shrinks (the usual form for char, from memory).
/// </summary>
internal static class UnseenFire
{
    /// <summary>Heat of a flame for each kilogram of air that it needs, in MJ/kg: Thornton 1917, from memory.</summary>
    public const double MegajoulesPerAir = 3.05;

    /// <summary>E/R of char with air, in K: Evans and Emmons 1977, from memory.</summary>
    private const double Activation = 9000;

    private const double UsualGlow = 1130;

    /// <summary>What burns in one second, in MJ.</summary>
    /// <param name="Charges">The batches after it.</param>
    /// <param name="Flame">Heat of volatiles.</param>
    /// <param name="Char">Char that batches leave.</param>
    /// <param name="Glow">Heat of char that burns.</param>
    internal readonly record struct Burning(ImmutableArray<Charge> Charges, double Flame, double Char, double Glow);

    /// <summary>Char that a batch still will leave, in MJ: what it leaves grows with what has burnt.</summary>
    public static double CharLeft(Charge charge)
    {
        var burnt = 1 - (charge.Left / charge.Whole);
        return charge.Whole * charge.CharShare * (1 - (burnt * burnt));
    }

    /// <summary>One second at this draft beside the usual one.</summary>
    public static Burning Step(UnseenRig rig, Truth truth, UnseenState state, double draft, double airCelsius)
    {
        var hot = double.Clamp((truth.BrickCelsius - airCelsius) / 500, 0, 1.15);
        var bed = truth.Coals / (truth.Coals + (0.4 * rig.Bed));
        var pace = (rig.ColdPace + ((1 - rig.ColdPace) * hot)) * (0.35 + (0.65 * double.Sqrt(draft))) / rig.BatchSeconds;
        // A strong draft chills what has not caught yet; the bed lights it.
        var catching = 0.26 - (0.215 * double.Min(draft, 1.05)) + (0.12 * bed);
        Span<double> rates = stackalloc double[truth.Charges.Length];
        var flame = 0.0;
        for (var one = 0; one < rates.Length; one++)
        {
            var charge = truth.Charges[one];
            var left = charge.Left / charge.Whole;
            rates[one] = double.Min(charge.Whole * pace * (catching + 1 - left) * double.Pow(left, 0.75), charge.Left);
            flame += rates[one];
        }

        // Volatiles cannot burn beyond the air; what the air does not reach waits in the heap.
        var over = flame / (0.9 * MegajoulesPerAir * rig.Air * draft);
        var share = 1 / double.Sqrt(double.Sqrt(1 + (over * over * over * over)));
        var charges = ImmutableArray.CreateBuilder<Charge>(rates.Length);
        var (burnt, made) = (0.0, 0.0);
        for (var one = 0; one < rates.Length; one++)
        {
            var before = truth.Charges[one];
            var after = before with { Left = before.Left - (rates[one] * share), Seconds = before.Seconds + 1 };
            var isOut = after.Left < 2e-3 * after.Whole;
            after = isOut ? after with { Left = 0 } : after;
            burnt += before.Left - after.Left;
            made += CharLeft(before) - CharLeft(after);
            if (!isOut)
            {
                charges.Add(after);
            }
        }

        return new(charges.DrainToImmutable(), burnt, made, Glowing(rig, truth, state, draft, bed, hot));
    }

    /// <summary>Share of the bed that ash covers.</summary>
    public static double Covered(UnseenRig rig, Truth truth, UnseenState state) =>
        state.Ash / (state.Ash + truth.Coals + (0.25 * rig.Bed));

    private static double Glowing(UnseenRig rig, Truth truth, UnseenState state, double draft, double bed, double hot)
    {
        if (truth.Coals <= 0)
        {
            return 0;
        }

        var kelvin = 800 + (260 * bed) + (150 * hot) + (60 * double.Min(draft, 1.5));
        var reaction = double.Exp(Activation * ((1 / UsualGlow) - (1 / kelvin)));
        var heaped = truth.CoalsLevel ? 1 : 1.15;
        var resistance = (0.3 / reaction) + (heaped * (0.5 + (rig.AshHinders * Covered(rig, truth, state))) / double.Pow(double.Max(draft, 0.02), 0.6));
        var surface = double.Pow(truth.Coals / rig.Bed, 2.0 / 3);
        return double.Min((rig.BedPower * surface / resistance) + (2e-6 * rig.Bed), truth.Coals);
    }
}
