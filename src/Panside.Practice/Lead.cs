using Panside.Guide.Lines;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Practice;

/// <summary>The part of a boil before a person takes over: the simulated operator follows the advice up to there.</summary>
public static class Lead
{
    private const int BoilsSeconds = 900;

    /// <summary>The action whose advice a beginning waits for; null where it waits for something else.</summary>
    private static string? Awaited(Begins begins) => begins switch
    {
        Begins.DrawDue => "open-draw",
        Begins.LastCharge => "hold-wood",
        _ => null,
    };

    /// <summary>Comes to where the rig's scenario begins; does nothing where that is before the fire.</summary>
    /// <returns>Whether it came there; false where the boil was over before.</returns>
    public static bool Run(IDoor door, PracticeRig rig, DateTimeOffset start)
    {
        var begins = rig.Scenario.Begins;
        if (begins == Begins.Cold)
        {
            return true;
        }

        var (boiled, isThere, wasUnheard) = ((long?)null, false, false);
        var lead = new Unattended(door, rig, new PracticeOperator(rig, rig.Makeup.Rig.Units, rig.Seed), start)
        {
            Overheard = (_, answers) => isThere |= answers.Any(answer => answer is AdviceLine { Advice: var advice }
                && advice.Action == Awaited(begins) && !advice.Prepare),
        };
        bool IsBegun()
        {
            boiled ??= Sights.Of(rig, ObservationName.Boil) == "rolling" ? rig.Second : null;
            var wasOff = wasUnheard && !rig.Temper.IsUnheard;
            wasUnheard = rig.Temper.IsUnheard;
            return begins switch
            {
                Begins.MidBoil => rig.Second >= boiled + BoilsSeconds,
                Begins.PowerCut => wasOff,
                _ => isThere,
            };
        }

        var came = false;
        lead.RunUntil(() => came = IsBegun());
        return came;
    }
}
