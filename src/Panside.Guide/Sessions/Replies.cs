using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Hearing;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Sessions;

/// <summary>Answers the assistant's own words: why, undo, note, status, what if, skipped, help.</summary>
internal sealed class Replies(Setting setting)
{
    /// <summary>Replies to a word; false where it is none of its own.</summary>
    public bool Reply(Turn turn, string word, string rest)
    {
        switch (word)
        {
            case "why":
                turn.Tell(Why(turn));
                return true;
            case "undo":
                Undo(turn);
                return true;
            case "note":
                if (rest.Length == 0)
                {
                    turn.Refuse("A note wants words behind it: 'note sap is cloudy'.", "text");
                }
                else
                {
                    turn.Tell("Noted.");
                }

                return true;
            case "status":
                foreach (var line in Status(turn))
                {
                    turn.Tell(line);
                }

                return true;
            case Supposition.Word:
                WhatIf(turn, rest);
                return true;
            case "skipped":
                turn.Tell(turn.State.Skipped.Count == 0
                    ? "Nothing was skipped."
                    : "Skipped: " + string.Join(", ", turn.State.Skipped.Select(id => setting.Flow.Steps.GetValueOrDefault(id)?.Name?.TrimEnd('?') ?? id.Replace('-', ' '))) + ".");
                return true;
            case "exit":
                turn.Tell("'leave' ends the boil. Ctrl-C only closes the program: the record stays, and says how to go on.");
                return true;
            case "help":
                foreach (var line in Help())
                {
                    turn.Tell(line);
                }

                return true;
            default:
                return false;
        }
    }

    private string Why(Turn turn)
    {
        if (turn.State.Open is not { } open)
        {
            return Standing(turn) is { } rule
                ? $"{turn.Fill(rule.Text)} {turn.Fill(rule.Because)}"
                : "Nothing is asked just now. 'status' gives the figures.";
        }

        var because = setting.Flow.Steps.TryGetValue(open.Step, out var step)
            ? step.Because
            : setting.Flow.Watches.First(watch => watch.Id == open.Step).Because;
        return because is null ? "The flow gives no reason for this step." : turn.Fill(because);
    }

    /// <summary>The advice that was given last and still holds; null where none does.</summary>
    private AdviceRule? Standing(Turn turn) => setting.Flow.Advices
        .Where(rule => turn.State.Advised.ContainsKey(rule.Id) && rule.When.All(turn.Holds))
        .MaxBy(rule => turn.State.Advised[rule.Id].Time);

    private static void Undo(Turn turn)
    {
        if (turn.State.Doubted is { } doubted && SomePoured.Open(turn.State) is null)
        {
            turn.Happen(new Doubted(null));
            turn.Tell($"Dropped: {Words.Describe.Line(doubted)}.");
        }
        else if (turn.State.Past.Count == 0)
        {
            turn.Refuse("There is nothing to take back.", "text");
        }
        else
        {
            var what = turn.State.LastSaid;
            turn.Happen(new TookBack());
            turn.Tell($"Taken back: {what}.");
        }
    }

    private static void WhatIf(Turn turn, string rest)
    {
        if (Supposition.Read(rest, turn.State.Now!.Value.Time, turn.Now.Setting.Units) is not { } supposed)
        {
            turn.Refuse($"'what if {rest}' is not understood. Understood are {Supposition.Forms}.", "text");
            return;
        }

        foreach (var line in Sessions.WhatIf.Answer(turn.Now, supposed))
        {
            turn.Tell(line);
        }
    }

    private static IEnumerable<string> Status(Turn turn)
    {
        string F(string figure) => Figures.Of(turn.Now, figure);
        foreach (var clock in turn.State.Clocks)
        {
            yield return $"{clock.Text}: {Amount.Minutes(double.Ceiling((clock.Until - turn.State.Now!.Value.Time).TotalMinutes))} to go.";
        }

        var isEnding = turn.Now.IsHeld || turn.Now.IsEnding;
        var stop = turn.Now.IsLit && !isEnding ? $", {turn.Now.Setting.Rig.OfFire("firing stops at", "shut off at")} {F("stop-at")} ({F("stop-says")})" : "";
        var boils = turn.Now.IsLit ? $"; {F("sweetness")}; {F("rate")} boil off" : "";
        var pan = turn.Now.Setting.Rig.Back is null ? "pan"
            : $"back pan {F("back-depth")}{(turn.Now.BackDepthRead is null ? "" : " deep")}, least {F("back-least-depth")}; front pan";
        yield return $"{(RigFacts.Holds(turn.Now.Setting.Rig, "has-tank") ? "Tank" : "Sap left")} {F("tank")}{stop}; {pan} {(turn.State.Readings.ContainsKey(ReadingName.PanDepth) ? F("depth") + " deep" : "not read")}, least {F("least-depth")}{boils}.";
        yield return !turn.Now.Setting.IsThere(ReadingName.DrawTemperature.Code) ? $"Water boils at {F("boiling-water")}."
            : $"Water boils at {F("boiling-water")}; {F("draw")} at {F("draw-point")}; {(turn.Now.Setting.Rig.HasDrawOff ? "draw-off" : "thermometer")} {(turn.State.Readings.ContainsKey(ReadingName.DrawTemperature) ? "last " + F("draw-temperature") : "not read")}.";
        if (isEnding)
        {
            yield return $"{F("boils-away")} will still boil away. The boil stops in about {F("minutes-to-still")}, {F("minutes-to-still-latest")} at most.";
            yield return $"Against leaving: {(turn.Now.Unmet.Count == 0 ? "nothing" : string.Join("; ", turn.Now.Unmet))}.";
        }
        else if (turn.Now.IsLit)
        {
            var isBatch = turn.Now.Setting.Rig.IsBatch;
            yield return turn.Now.MinutesToDraw is null ? $"When {(isBatch ? "the batch is done" : "the next draw comes")} is not known yet."
                : Coming(isBatch ? "Batch done" : "Next draw", F("minutes-to-draw"), F("minutes-to-draw-soonest"));
            yield return turn.Now.MinutesToLastCharge is null
                ? turn.Now.Setting.Rig.OfFire("When the last charge goes in is not known yet.", "When to shut off is not known yet.")
                : Coming(turn.Now.Setting.Rig.OfFire("Last charge", "Shut off"), F("minutes-to-last-charge"), F("minutes-to-last-charge-soonest"));
        }
    }

    private static string Coming(string what, string likely, string soonest) =>
        $"{what} in about {likely}{(soonest == likely ? "" : $", in {soonest} at the soonest")}.";

    /// <summary>A reading of each kind as it may be typed, of what this rig has and in its units.</summary>
    private IEnumerable<string> ReadingExamples()
    {
        var (rig, isMetric) = (setting.Rig, setting.Units == UnitSystem.Metric);
        yield return isMetric ? "tank 80" : "tank 22";
        yield return isMetric ? "depth 4" : "depth 1 1/2";
        if (rig.Has("thermometer"))
        {
            yield return isMetric ? "draw 103" : "draw 217.4";
            yield return isMetric ? "water 99.7" : "water 211.5";
        }

        yield return "sap 2.1";
        if (rig.Has("hydrometer"))
        {
            yield return "hydrometer 59";
            yield return isMetric ? "sample 82" : "sample 180";
        }
    }

    /// <summary>A deed of each kind as it may be typed, of what this rig has and in its units.</summary>
    private IEnumerable<string> DeedExamples()
    {
        var (rig, isMetric) = (setting.Rig, setting.Units == UnitSystem.Metric);
        string?[] deeds =
        [
            "lit", rig.OfFire("wood", "shut off"), rig.DrawnBy == DrawnBy.Valve ? "open" : null,
            rig.IsBatch ? (isMetric ? "poured out 8 L" : "poured out 2 gal") : isMetric ? "drew 2 L" : "drew 2 qt",
            rig.IsBurner ? null : "spread", "flooded", isMetric ? "poured 8 L" : "poured 2 gal", "defoamer", rig.HasLid ? "covered" : null,
            isMetric ? "refill 20 L" : "refill 5 gal", "leave",
        ];
        return deeds.OfType<string>();
    }

    private IEnumerable<string> Help()
    {
        yield return $"Readings: {string.Join(", ", ReadingExamples())}.";
        yield return $"Done: {string.Join(", ", DeedExamples())}.";
        yield return $"Seen: rolling, steady, simmering, still; {setting.Rig.OfFire("deep, thin, spent; ", "")}{(setting.Rig.Channels > 1 ? "clear, fading, gone; " : "")}rising, over; scorched.";
        yield return "Answers: yes, no, skip, later. Also: why, undo, status, skipped, note …";
        yield return $"Ask: when can I leave, what is {(setting.Rig.Channels > 1 ? "gradient" : "Brix")}, what if I stop now. Or talk freely.";
        yield return "Flow: " + string.Join(", ", setting.Flow.OwnWords.Where(setting.IsOfThisRig)) + ".";
    }
}
