using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;
using Panside.Practice;

namespace Panside.Faces;

/// <summary>What an unattended practice tells while it runs and at its end; each line bears the mark of practice.</summary>
internal static class PracticeReport
{
    /// <summary>Stands on every line of practice.</summary>
    public const string Mark = "PRACTICE";

    /// <summary>The few lines of an exchange that matter from afar: phases, urgent advice, draws, the end.</summary>
    public static IEnumerable<string> Of(LineIn line, IReadOnlyList<LineOut> answers)
    {
        var time = line.At.Time.ToString("HH:mm", CultureInfo.InvariantCulture);
        if (Deed(line, answers) is { } deed)
        {
            yield return $"{time} {deed}";
        }

        foreach (var answer in answers)
        {
            var text = answer switch
            {
                PhaseLine(_, _, var phase) => phase,
                AdviceLine(_, _, { Urgency: "danger" or "now" } advice) => $"{advice.Urgency}: {advice.Text} {advice.Because}",
                AdviceLine(_, _, { Action: "clear-to-leave" } advice) => advice.Text,
                QuestionLine(_, _, var question, _) => $"doubted: {question}",
                RefusedLine(_, _, var why, _) => $"refused: {why}",
                _ => null,
            };
            if (text is not null)
            {
                yield return $"{time} {text}";
            }
        }
    }

    /// <summary>The outcome as the assistant says it.</summary>
    public static IEnumerable<string> Said(PracticeOutcome outcome)
    {
        if (outcome.Said is not { } said)
        {
            yield return $"Stopped after {Amount.Minutes(outcome.Seconds / 60.0)} of simulated time: the session had not come to its end.";
            yield break;
        }

        string Shown(Measure? measure) => measure is { } known ? Amount.Shown(known) : "not known";
        yield return $"The assistant says: sap used {Shown(said.SapUsed)}; {(said.SyrupMade is { Value: 0 } ? "no syrup drawn" : $"syrup made {Shown(said.SyrupMade)}")}"
            + $"{(said.SyrupBrix is { } brix ? $" at {Amount.Shown(brix)}" : "")}; "
            + (said.Wood is null ? "" : $"wood {Shown(said.Wood)}; ") + $"{Amount.Minutes(said.Minutes?.Value ?? 0)}; {(said.Safe ? "safe" : "not safe")}.";
    }

    /// <summary>What truly was, and what comes after.</summary>
    public static IEnumerable<string> Truth(PracticeOutcome outcome, Setting setting)
    {
        var units = setting.Units;
        static string Brix(double brix) => Amount.Shown(new(brix, Unit.Brix));
        yield return $"The simulated rig knows: least depth {Least(outcome.LeastDepth, outcome.LeastBackDepth, units)}; "
            + $"{(outcome.IsScorched ? "SCORCHED" : "not scorched")}; at most {Brix(outcome.MostSugar.Brix)} in the pan; "
            + $"{Amount.Shown(units.From(outcome.BoiledAwayAfterHold))} boiled away after {setting.Rig.OfFire("the last charge", "it was shut off")}; "
            + $"{Amount.Shown(units.From(outcome.TankLeft))} left in the tank.";
        yield return $"After leaving, without any feed: least depth {Least(outcome.LeastDepthAfter, outcome.LeastBackDepthAfter, units)}, "
            + $"at most {Brix(outcome.MostSugarAfter.Brix)}: {(outcome.IsPromiseKept ? "what was promised came true" : "NOT WHAT WAS PROMISED")}.";
        if (outcome is { Said: not null, MinutesPastTruth: { } minutes })
        {
            yield return $"As the rig knows, and nobody could see: safe to leave {Amount.Minutes(double.Max(minutes, 0))} earlier.";
        }
    }

    private static string Least(Reckoning.Quantities.Length depth, Reckoning.Quantities.Length? behind, UnitSystem units) =>
        Amount.Shown(units.From(depth)) + (behind is { } back ? $", of the back pan {Amount.Shown(units.From(back))}" : "");

    private static string? Deed(LineIn line, IReadOnlyList<LineOut> answers)
    {
        var meant = answers.OfType<HeardLine>().FirstOrDefault()?.As ?? line;
        return meant switch
        {
            Did { Name.Code: "close-draw", Measure: { } drawn } => $"drew {Amount.Shown(drawn)}",
            Did { Name.Code: "fill-pan" } poured => Describe.Line(poured),
            Did { Name.Code: "lit-fire" or "spread-coals" or "flood-pan" or "cover-pan" or "leave" or "refill-tank" } did
                => did.Name.Spoken + (did.Measure is { } measure ? $" {Amount.Shown(measure)}" : ""),
            _ => null,
        };
    }
}
