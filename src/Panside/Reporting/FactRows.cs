using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Journal;

namespace Panside.Reporting;

/// <summary>
/// Readings, observations and deeds as rows: <c>at,what,name,value,unit</c>, and <c>is</c> where something was poured into the pan. The
/// same rows are read when a record is brought in.
/// </summary>
internal static class FactRows
{
    /// <summary>The names of the columns.</summary>
    public static IReadOnlyList<string> Columns { get; } = ["at", "what", "name", "value", "unit"];

    /// <summary>The same with what was poured into the pan.</summary>
    public static IReadOnlyList<string> PouredColumns { get; } = [.. Columns, "is"];

    /// <summary>The rows of a boil, the names of the columns first.</summary>
    public static string Of(BoilStory story) => story.Poured is null
        ? Csv.Of([Columns, .. story.Facts.Select(Row)])
        : Csv.Of([PouredColumns, .. story.Facts.Select(fact => (IReadOnlyList<string>)[.. Row(fact), fact is Did { Is: { } liquid, Pan: null, IsUnmeasured: false } ? liquid : ""])]);

    /// <summary>A row as the line in that it stands for; an <see cref="Unreadable"/> that says why where it stands for none.</summary>
    /// <param name="cells">As many as there are columns; the last ones may be missing.</param>
    /// <returns>The line, and its text as a record has it.</returns>
    public static (LineIn Line, string Raw) Line(IReadOnlyList<string> cells)
    {
        string Cell(int column) => column < cells.Count ? cells[column] : "";
        var raw = LineWriter.Write(Cell(0), Cell(1), Cell(2), Cell(3), Cell(4), Cell(5));
        return (LineReader.Read(raw), raw);
    }

    private static IReadOnlyList<string> Row(LineIn fact) => fact switch
    {
        // No column tells of two pans, or of a pour that nobody measured: they stand as they would be typed.
        Did { Pan: { } pan, Measure: { } poured, Is: { } liquid } => [fact.At.Written, "text", $"poured {poured} of {liquid} into the {pan} pan", "", ""],
        Did { IsUnmeasured: true, Is: { } some } did => [fact.At.Written, "text", $"poured some {some} into the {(did.Pan is { } one ? one + " " : "")}pan", "", ""],
        Reading reading => [fact.At.Written, "reading", reading.Name.Code, Csv.Number(reading.Measure.Value), reading.Measure.Unit.Code()],
        Observed observed => [fact.At.Written, "observed", observed.Name.Code, observed.Is, ""],
        Did { Measure: { } measure } did => [fact.At.Written, "did", did.Name.Code, Csv.Number(measure.Value), measure.Unit.Code()],
        Did did => [fact.At.Written, "did", did.Name.Code, "", ""],
        _ => [fact.At.Written, "", "", "", ""],
    };
}
