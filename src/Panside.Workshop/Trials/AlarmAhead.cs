using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Practice;
using Panside.Practice.Assurance;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Workshop.Trials;

/// <summary>
/// Rule F5 on a simulated rig: the advice is followed up to the first alarm after a fault began, or to the first of all where nothing
/// goes wrong; from there on the rig is fired on as usual by somebody who looks at nothing.
/// </summary>
/// <param name="IsAlarmed">Whether such an alarm came; without one the boil came to its end.</param>
/// <param name="SecondsToBare">From the alarm until the floor shows, an hour at the most; 0 where it showed before any alarm.</param>
internal sealed record AlarmAhead(bool IsAlarmed, long SecondsToBare)
{
    /// <summary>The ten minutes that the rule asks.</summary>
    public const long Asked = 600;

    private const double BareMeters = 0.012;

    private const long Longest = 3600;

    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    /// <summary>Tries it.</summary>
    public static AlarmAhead Of(Setting setting, Scenario scenario, long seed)
    {
        var rig = new PracticeRig(setting.Rig, scenario, seed);
        var isAlarmed = false;
        var boil = new Unattended(new SessionDoor(setting), rig, new PracticeOperator(rig, setting.Units, seed), Evening)
        {
            Overheard = (_, answers) => isAlarmed |= (scenario.Mishaps.Count == 0 || rig.Begun.Any()) && answers.Any(IsAlarm),
        };
        boil.RunUntil(() => isAlarmed || rig.Depth.Meters <= BareMeters);
        return (isAlarmed, rig.Depth.Meters > BareMeters) switch
        {
            (_, false) => new(isAlarmed, 0),
            (false, _) => new(false, Longest),
            _ => new(true, FiredOn(rig, setting.Rig)),
        };
    }

    private static bool IsAlarm(LineOut answer) => answer is AdviceLine
    {
        Advice.Action: "check-level" or "raise-level" or "cool-pan" or "hold-wood", Advice.Urgency: "now" or "danger",
    };

    private static long FiredOn(PracticeRig rig, Rig file)
    {
        var alarmed = rig.Second;
        while (rig.Depth.Meters > BareMeters && rig.Second < alarmed + Longest)
        {
            if (rig.SecondsSinceWood >= file.Interval.TotalSeconds)
            {
                rig.AddWood(file.Charge);
                rig.AddDefoamer();
            }

            rig.Step(10);
        }

        return rig.Second - alarmed;
    }
}
