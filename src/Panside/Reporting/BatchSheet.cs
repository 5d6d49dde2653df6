using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Reporting;

/// <summary>
/// The batch sheet: what went in, what came out and how it was measured, and lines to fill in by hand for what no instrument
/// told. A note that begins with a line's word fills it: <c>note lot 7</c>, <c>note color amber</c>.
/// </summary>
internal static class BatchSheet
{
    private const string Blank = "__________";

    private static readonly (string Line, string[] Words)[] ByHand =
    [
        ("Color class", ["color", "colour"]),
        ("Filter", ["filter", "filtered"]),
        ("Packed at", ["pack", "packed"]),
        ("Containers", ["containers", "jars", "bottles"]),
        ("Lot number", ["lot"]),
    ];

    /// <summary>The sheet.</summary>
    public static Table Of(BoilStory story)
    {
        var outcome = story.Outcome;
        var sapSugar = story.Of(ReadingName.SapBrix);
        List<IReadOnlyList<string>> rows =
        [
            ["Sap in", Shown(outcome?.SapUsed)],
            ["Sap sugar", sapSugar.Count > 0 ? Amount.Shown(new(sapSugar[^1].Value, Unit.Brix)) : "not read"],
            ["Syrup out", outcome?.SyrupMade is { } made ? Syrup(story, made) : "not known"],
            ["Density", outcome?.SyrupBrix is { } brix ? $"{Amount.Shown(brix)}; target {Amount.Shown(new(story.Setting.Rig.Target.Brix, Unit.Brix))}" : "not measured"],
            ["Measured by", Measured(story)],
            ["Sugar of that sap as syrup", Balance(story)],
        ];
        if (story.Poured is { } poured)
        {
            rows.Insert(1, ["Poured in by hand", poured]);
        }

        rows.AddRange(ByHand.Select(one => (IReadOnlyList<string>)[one.Line, FromNotes(story, one.Words) ?? Blank]));
        return new(["Batch", story.Begin.Time.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)], rows);
    }

    private static string Syrup(BoilStory story, Measure made)
    {
        var draws = story.Draws.Count switch { 0 => "no draw", 1 => "1 draw", var many => $"{many} draws" };
        return $"{Shown(story.Units, story.Units.Volume(made))} in {draws}";
    }

    private static string Shown(UnitSystem units, Volume volume) =>
        Amount.Shown(units.From(volume, units.From(volume).Value < 1 ? units.SmallVolume : null));

    /// <summary>Each sample with its temperature, and what it truly was.</summary>
    private static string Measured(BoilStory story)
    {
        var samples = story.Facts.OfType<Reading>().Where(reading => reading.Name == ReadingName.SampleTemperature).ToList();
        var told = new List<string>();
        foreach (var shown in story.Facts.OfType<Reading>().Where(reading => reading.Name == ReadingName.HydrometerBrix))
        {
            // The temperature may be told before or after the glass is read, within the same minutes.
            var sample = samples.LastOrDefault(one => one.At.Time <= shown.At.Time) ?? samples.FirstOrDefault();
            var at = sample is null ? "temperature not read" : $"at {Amount.Shown(story.Units.Convert(sample.Measure, story.Units.Preferred(Dimension.Temperature)))}";
            told.Add($"hydrometer {Amount.Shown(shown.Measure)} {at}{(sample is null ? "" : TrueSugar(shown, sample))}");
        }

        return told.Count == 0 ? "no hydrometer reading" : string.Join("; ", told);
    }

    private static string TrueSugar(Reading shown, Reading sample)
    {
        try
        {
            var sugar = SyrupHydrometer.TrueSugarContent(UnitSystem.Sugar(shown.Measure), UnitSystem.Temperature(sample.Measure));
            return $" = {Amount.Shown(new(sugar.Brix, Unit.Brix))}";
        }
        catch (ArgumentOutOfRangeException)
        {
            return " (outside the glass's table)";
        }
    }

    private static string Balance(BoilStory story) =>
        MassBalance.Syrup(story.Outcome, story.Units, story.Setting.Rig.Target) is { } syrup
            ? $"{Shown(story.Units, syrup)}, by a balance of sugar"
            : "not known";

    private static string? FromNotes(BoilStory story, string[] words) => story.Notes
        .Select(note => note.Words.Trim())
        .Where(note => words.Any(word => note.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase)))
        .Select(note => note[(note.IndexOf(' ', StringComparison.Ordinal) + 1)..].Trim())
        .LastOrDefault();

    private static string Shown(Measure? measure) => measure is { } known ? Amount.Shown(known) : "not known";
}
