using System.Globalization;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Reporting;

/// <summary>A boil told: how it ended, its end in one picture, the evening on one clock, the debrief, its batch sheet, what happened when.</summary>
internal static class BoilReport
{
    /// <summary>The document.</summary>
    public static Document Of(BoilStory story)
    {
        var practice = story.Setting.Header.Practice ? "PRACTICE: " : "";
        var date = story.Begin.Time.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
        var parts = new List<Part> { new Paragraph(Summary(story)) };
        if (story.DiffersAt is { } line)
        {
            parts.Add(new Paragraph($"From line {line} of the record on, another version of the program answered; told is what this one says to the same readings."));
        }

        if (story.Damaged.Count > 0)
        {
            parts.Add(new Paragraph($"Damaged lines of the record, left out: {string.Join(", ", story.Damaged.Take(10))}."));
        }

        if (EndingChart.Of(story) is { } ending)
        {
            parts.Add(new Heading("Water still to leave, told and come"));
            parts.Add(ending);
        }

        parts.Add(new Heading("The evening"));
        parts.Add(BoilCharts.Of(story));
        if (story.Debrief.Count > 0)
        {
            parts.Add(new Heading("Debrief"));
            parts.Add(new Table(["What", "Told"], [.. story.Debrief.Select(row => (IReadOnlyList<string>)[row.Heading, row.Text])]));
        }

        parts.Add(new Heading("Batch sheet"));
        parts.Add(BatchSheet.Of(story));
        parts.Add(new Heading("What happened"));
        parts.Add(new Table(["Time", "What"], [.. Happenings(story).Select(one => (IReadOnlyList<string>)[Clock(one.At), one.What])]));
        if (story.Outcome is { Skipped.Count: > 0 } outcome)
        {
            parts.Add(new Paragraph("Skipped: " + string.Join(", ", outcome.Skipped.Select(step => step.Replace('-', ' '))) + "."));
        }

        return new($"{practice}Boil of {date}, {story.Setting.Rig.Name}", parts);
    }

    private static string Summary(BoilStory story)
    {
        var span = $"{Clock(story.Begin)} to {Clock(story.End)}";
        if (story.Outcome is not { } outcome)
        {
            return $"{span}. Not ended: the record stops here.";
        }

        string Shown(Measure? measure) => measure is { } known ? Amount.Shown(known) : "not known";
        return $"{span}. {outcome.Text} Water boiled away {Shown(outcome.WaterBoiled)}; {story.Setting.Rig.OfFire($"wood {Shown(outcome.Wood)}; ", "")}"
            + $"left in the tank {Shown(outcome.TankVolume)}; in the pan {Shown(outcome.PanVolume)} at {Shown(outcome.PanBrix)}, as reckoned.";
    }

    private static IEnumerable<(Moment At, string What)> Happenings(BoilStory story)
    {
        IEnumerable<(Moment At, string What)> all =
        [
            .. story.Phases.Select(phase => (phase.At, $"Phase: {phase.Phase}")),
            .. story.Facts.OfType<Did>().Where(did => did.Name != DeedName.AddWood).Select(did => (did.At, Capital(Describe.Line(did)))),
            .. story.Alarms.Select(alarm => (alarm.At, $"{(alarm.Advice.Urgency == "danger" ? "DANGER" : "Now")}: {alarm.Advice.Text}")),
            .. story.Notes.Select(note => (note.At, $"Note: {note.Words}")),
        ];
        return all.OrderBy(one => one.At.Time);
    }

    private static string Clock(Moment at) => at.Time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
