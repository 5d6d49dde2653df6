using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Reporting;

/// <summary>A past boil as it is told: what was taken as true, without what was taken back, and what was said and forecast then.</summary>
internal sealed record BoilStory
{
    /// <summary>What it ran on.</summary>
    public required Setting Setting { get; init; }

    /// <summary>The time of its first line.</summary>
    public required Moment Begin { get; init; }

    /// <summary>The time of its last line.</summary>
    public required Moment End { get; init; }

    /// <summary>Readings, observations and deeds in order of time.</summary>
    public required IReadOnlyList<LineIn> Facts { get; init; }

    /// <summary>Phases as they began.</summary>
    public required IReadOnlyList<(Moment At, string Phase)> Phases { get; init; }

    /// <summary>Advice in danger or at once, each time that it was given.</summary>
    public required IReadOnlyList<(Moment At, Advice Advice)> Alarms { get; init; }

    /// <summary>Evaporation rates as forecast then; only those that have numbers.</summary>
    public required IReadOnlyList<(Moment At, Forecast Forecast)> Rates { get; init; }

    /// <summary>Water still to leave with no more wood, as forecast then; only those that have numbers.</summary>
    public required IReadOnlyList<(Moment At, Forecast Forecast)> Residuals { get; init; }

    /// <summary>Water that had left the pan by then, as reckoned, in the rig's units.</summary>
    public required IReadOnlyList<(Moment At, double Value)> Gone { get; init; }

    /// <summary>Sap in the tank by then, as reckoned, in the rig's units.</summary>
    public required IReadOnlyList<(Moment At, double Value)> TankByNow { get; init; }

    /// <summary>When it was said that it is clear to leave, the last time that this was new; null where it never was.</summary>
    public required Moment? Clear { get; init; }

    /// <summary>The draw point of the day at each time that it moved.</summary>
    public required IReadOnlyList<(Moment At, double Value)> DrawPoints { get; init; }

    /// <summary>What was poured into the pan by hand, in words; null where nothing was.</summary>
    public required string? Poured { get; init; }

    /// <summary>Charges of wood, in the rig's units.</summary>
    public required IReadOnlyList<(Moment At, double Value)> Wood { get; init; }

    /// <summary>Syrup drawn, in the rig's smaller unit of volume.</summary>
    public required IReadOnlyList<(Moment At, double Value)> Draws { get; init; }

    /// <summary>Notes.</summary>
    public required IReadOnlyList<(Moment At, string Words)> Notes { get; init; }

    /// <summary>The outcome; null where the boil has no end.</summary>
    public required Outcome? Outcome { get; init; }

    /// <summary>The debrief's headings with what stands beside each; empty where the boil has no end or no fire was lit.</summary>
    public required IReadOnlyList<(string Heading, string Text)> Debrief { get; init; }

    /// <summary>The numbers of the record's lines that could not be read.</summary>
    public required IReadOnlyList<int> Damaged { get; init; }

    /// <summary>The number of the first line that the assistant would say otherwise now; null where there is none.</summary>
    public required int? DiffersAt { get; init; }

    /// <summary>The rig's units.</summary>
    public UnitSystem Units => Setting.Units;

    /// <summary>Minutes from midnight before the boil.</summary>
    public double Minute(Moment at) => (at.Time - (Begin.Time - Begin.Time.TimeOfDay)).TotalMinutes;

    /// <summary>One kind of reading over time, in the unit that the rig shows.</summary>
    public IReadOnlyList<(Moment At, double Value)> Of(ReadingName name) =>
        [.. Facts.OfType<Reading>().Where(reading => reading.Name == name)
            .Select(reading => (reading.At, Units.Convert(reading.Measure, Units.Preferred(name.Kind)).Value))];
}
