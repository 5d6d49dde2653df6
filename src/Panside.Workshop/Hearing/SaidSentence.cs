using System.Text;

namespace Panside.Workshop.Hearing;

/// <summary>A sentence that somebody says, and what is meant by it.</summary>
/// <param name="Hazard">The danger that is cried; null where it is everyday talk.</param>
/// <param name="Habit">How its writer speaks.</param>
/// <param name="Text">The sentence.</param>
internal sealed record SaidSentence(string? Hazard, string Habit, string Text)
{
    /// <summary>
    /// The sentences of files: kind (<c>cry</c>, <c>everyday</c>), hazard, habit and sentence, a tab between; or meaning, habit and sentence, which
    /// are everyday talk, but for foam that rises: that may be either. Other lines are passed over.
    /// </summary>
    /// <exception cref="UnusableException">A file cannot be read.</exception>
    public static List<SaidSentence> Read(IEnumerable<string> files) =>
    [
        .. files.SelectMany(file => Encoding.UTF8.GetString(GivenFile.Read(file)).Split('\n')).Select(line => line.TrimEnd('\r').Split('\t'))
            .Where(cells => (cells.Length == 4 && cells[0] is "cry" or "everyday") || (cells.Length == 3 && cells[0] != "meaning" && !cells[0].Contains("foam:rising", StringComparison.Ordinal)))
            .Select(cells => new SaidSentence(cells[0] == "cry" ? cells[1] : null, cells[^2], cells[^1])),
    ];
}
