using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Debriefing;

/// <summary>
/// The end of a session told on one screen: planned, happened, why, next time; what was forecast at the last charge beside what
/// came; and a score, the safety gates first, then sap left over, then timing.
/// </summary>
public static class Debrief
{
    private const int Width = 78;

    /// <summary>The word of practice and a space, that stand before each line of one.</summary>
    private const int MarkWidth = 9;
    private const int Indent = 11;

    /// <summary>Lines of no more than 78 columns, in practice with its word before each, fewer than 22; none where no fire was lit.</summary>
    public static IReadOnlyList<string> Of(Course course, SessionState state, Setting setting)
    {
        var width = setting.Header.Practice ? Width - MarkWidth : Width;
        return Rows(course, state, setting) is { Count: > 0 } rows ? ["Debrief", .. rows.SelectMany(row => Row(row.Heading, row.Text, width))] : [];
    }

    /// <summary>The headings with what stands beside each; none where no fire was lit.</summary>
    public static IReadOnlyList<(string Heading, string Text)> Rows(Course course, SessionState state, Setting setting)
    {
        if (state.Last(DeedName.LitFire) is null && state.Last(DeedName.AddWood) is null)
        {
            return [];
        }

        var gates = Gate.Of(course, state, setting);
        var missed = gates.Where(gate => gate.Missed is not null).ToList();
        var water = course.Held is { Residual: { P5: not null } residual } held && held.Gone(state) is { } gone
            ? Came(residual, setting.Units.From(gone, residual.Unit).Value)
            : null;
        var still = course is { Held: { ToStill: { P5: not null } toStill } from, Still: { } at }
            ? Came(toStill, (at.Time - from.At.Time).TotalMinutes)
            : null;
        return
        [
            ("Planned", Planned(course, setting)),
            ("Happened", Happened(course, Pour.Told(state.Pours, setting.Units), water, still)),
            ("Why", Why(setting.Rig, course, missed, water, still)),
            ("Next time", NextTime(setting.Rig, missed, water)),
            ("Score", Score(course, state, setting, gates)),
        ];
    }

    private static string Planned(Course course, Setting setting)
    {
        if (course.Held is not { } held)
        {
            return setting.Rig.OfFire("no last charge: the wood was never held.", "it was never shut off.");
        }

        var tank = held.Tank is { } known ? $" with {Amount.Shown(setting.Units.From(known))} in the tank" : "";
        return $"{setting.Rig.OfFire("last charge by", "shut off at")} {Clock(held.At)}{tank}. Told then, 9 times in 10: {Band(held.Residual)} still to go, the boil still in {Band(held.ToStill)}.";
    }

    private static string Happened(Course course, string? poured, (double Value, Forecast Told)? water, (double Value, Forecast Told)? still)
    {
        var parts = new List<string>
        {
            water is { } left ? $"{Amount.Shown(new(left.Value, left.Told.Unit))} gone by the end, as reckoned, {Beside(left)}" : "how much has gone is not known",
            still is { } calm ? $"the boil was seen still after {Amount.Minutes(calm.Value)}, {Beside(calm)}" : "the boil was not seen still",
        };
        if (poured is not null)
        {
            parts.Add($"{poured} poured into the pan by hand");
        }

        if (course.Dangers.Count > 0)
        {
            parts.Add(course.Dangers.Count == 1
                ? $"one warning of danger, at {Clock(course.Dangers[0])}"
                : $"{course.Dangers.Count} warnings of danger, the first at {Clock(course.Dangers[0])}");
        }

        return Sentence(string.Join("; ", parts));
    }

    private static string Why(Rigs.Rig rig, Course course, List<Gate> missed, (double Value, Forecast Told)? water, (double Value, Forecast Told)? still)
    {
        if (missed.Count > 0)
        {
            return Sentence(string.Join("; ", missed.Take(3).Select(gate => gate.Missed)));
        }

        return (water, still) switch
        {
            ({ } left, _) when left.Value > left.Told.P95 => "more has gone than was told: this rig holds more heat than its readings had shown.",
            (_, { } calm) when calm.Value > calm.Told.P95 => $"the boil lasted longer than was told: {rig.OfFire("the coals lay deeper than they looked", "what was hot held more heat than was reckoned")}.",
            ({ } left, _) when left.Value < left.Told.P5 => $"less had gone by the end: {(rig.HasLid ? "a lid keeps most of the steam, and the rest leaves slowly" : "what is left leaves slowly")}.",
            _ => course.Dangers.Count > 0 ? "danger was met in time." : "what was told came true, and each gate was kept.",
        };
    }

    private static string NextTime(Rigs.Rig rig, List<Gate> missed, (double Value, Forecast Told)? water) => missed.Count > 0
        ? string.Join(" ", missed.Take(2).Select(gate => gate.NextTime))
        : water is { } left && left.Value > left.Told.P95
            ? $"Keep more sap in reserve, and {rig.OfFire("stop a charge earlier", "shut off earlier")}."
            : "The same again: sap in reserve, a deep pan, and no hurry.";

    private static string Score(Course course, SessionState state, Setting setting, IReadOnlyList<Gate> gates)
    {
        var left = state.Rig.Tank is { } tank ? $"{Amount.Shown(setting.Units.From(tank))} of sap left over" : "sap left over not known";
        var waited = course.Clear is { } clear && state.Now is { } end
            ? $"gone {Amount.Minutes((end.Time - clear.Time).TotalMinutes)} after it was clear"
            : "gone before it was clear";
        return $"safety {gates.Count(gate => gate.Missed is null)} of {gates.Count}; {left}; {waited}.";
    }

    private static (double Value, Forecast Told)? Came(Forecast told, double value) => (value, told);

    private static string Beside((double Value, Forecast Told) came) =>
        came.Value > came.Told.P95 ? "more than was told" : came.Value < came.Told.P5 ? "less than was told" : "as was told";

    private static string Band(Forecast? told) =>
        told is { P5: { } low, P95: { } high, Unit: var unit } ? Amount.Range(low, high, unit) : "nothing known";

    private static string Clock(Moment at) => at.Time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Sentence(string text) => text.EndsWith('.') ? text : text + ".";

    /// <summary>A heading and its text, broken at spaces.</summary>
    private static IEnumerable<string> Row(string heading, string text, int width)
    {
        var line = heading.PadRight(Indent);
        foreach (var word in text.Split(' '))
        {
            if (line.Length + word.Length > width)
            {
                yield return line.TrimEnd();
                line = new(' ', Indent);
            }

            line += word + " ";
        }

        yield return line.TrimEnd();
    }
}
