using Panside.Guide.Lines;

namespace Panside.Journal;

/// <summary>
/// What a record tells of deeds, looks, phases and forecasts, taken straight off its lines: no boil is heard again for it, so that a season is
/// gone through in a breath. What was taken back later with <c>undo</c> is in it too.
/// </summary>
/// <param name="Said">Deeds and looks in order of time, said as such or understood from typed words; typed words that the flow itself knows.</param>
/// <param name="Answers">Phases and the forecasts of minutes in order of time.</param>
public sealed record RecordGlance(IReadOnlyList<LineIn> Said, IReadOnlyList<LineOut> Answers)
{
    /// <summary>What stands in the lines that count; the others are not even read as JSON. The program writes each of its own the same to the byte.</summary>
    private static readonly string[] Marks = ["\"did\"", "\"observed\"", "\"heard\":{\"text\"", "\"phase\":\"", "\"forecast\":{\"name\":\"minutes-"];

    /// <summary>Reads a record.</summary>
    /// <param name="path">Its file.</param>
    /// <exception cref="IOException">It is not there, or a session is writing it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static RecordGlance Read(string path) => Of(new RecordFile(path).Lines());

    /// <summary>The same of its lines.</summary>
    public static RecordGlance Of(IEnumerable<string> lines)
    {
        var (said, answers) = (new List<LineIn>(), new List<LineOut>());
        foreach (var line in lines.Where(line => Marks.Any(mark => line.Contains(mark, StringComparison.Ordinal))))
        {
            switch (AnswerReader.Read(line))
            {
                case HeardLine { As: Did or Observed or Text } heard:
                    said.Add(heard.As);
                    break;
                case { } answer when answer is PhaseLine or ForecastLine:
                    answers.Add(answer);
                    break;
                case null when LineReader.Read(line, passesOver: true) is { } fact && fact is (Did or Observed):
                    said.Add(fact);
                    break;
            }
        }

        return new(said, answers);
    }
}
