using System.Globalization;
using System.Text;
using Panside.Guide.Hearing.Cries;

namespace Panside.Guide.Tests.Hearing;

/// <summary>Sentences that others say, with the danger that they mean; and what an ear makes of them, counted by habit of speech.</summary>
internal sealed class CryCorpus
{
    private static readonly Lazy<DangerWords> Known = new(() => DangerWords.Read("dangers.yaml", RepositoryFiles.Read("flows", "words", "dangers.yaml")));

    /// <summary>The sentences that the weights are fitted to.</summary>
    public const string Fitted = "dangers.en.tsv";

    private readonly List<Row> _rows;

    private readonly bool _mayBeRead;

    private CryCorpus(List<Row> rows, bool mayBeRead) => (_rows, _mayBeRead) = (rows, mayBeRead);

    /// <summary>The words of the repository.</summary>
    public static DangerWords Words => Known.Value;

    /// <summary>The ear that is built in, for a language and with what a flow adds.</summary>
    public static CryEar Ear(string language, params (string Hazard, string Cry)[] added) => new(Words, language, added, KnownCries.Fitted(language));

    public int Cries => _rows.Count(row => row.IsCry);

    public double Opened => Share(row => row.Heard is not null);

    public double Right => Share(row => row.First == row.Hazard);

    /// <summary>The everyday sentences that were taken for a cry, and as what.</summary>
    public IReadOnlyList<string> False =>
        [.. _rows.Where(row => !row.IsCry && row.Heard is not null).Select(row => $"{row.Sentence} -> {string.Join(", ", row.Heard!.Hazards)}")];

    public static bool IsThere(string name) => File.Exists(Where(name));

    /// <summary>
    /// Hears every sentence of a file: kind, hazard, habit and sentence, a tab between. Of those that the weights are fitted to every tenth
    /// shows as much: they are 45,600.
    /// </summary>
    public static CryCorpus Hear(string name, CryEar ear)
    {
        var every = name == Fitted ? 10 : 1;
        var rows = File.ReadLines(Where(name)).Where((_, number) => number % every == 0).Select(line => line.Split('\t')).Where(cells => cells[0] is "cry" or "everyday")
            .Select(cells => new Row(cells[0] == "cry", cells[1], cells[2], cells[3], ear.Hear(cells[3]))).ToList();
        return new(rows, name is Fitted or "cries-own.tsv" or "cries-french.tsv");
    }

    /// <summary>The sentences of <see cref="False"/> on lines of their own; of a file that nobody may read, how many they are.</summary>
    public string FalseTold => _mayBeRead ? string.Join('\n', False) : $"{False.Count} everyday sentences open the emergency.";

    /// <summary>The table by habit, and what went wrong below it, but of no file that nobody may read.</summary>
    public string Table()
    {
        var table = new StringBuilder("habit            cries opened  right everyday  false\n");
        foreach (var habit in _rows.GroupBy(row => row.Habit).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            table.AppendLine(Line(habit.Key, [.. habit]));
        }

        table.AppendLine(Line("all", _rows));
        foreach (var row in _rows.Where(row => _mayBeRead && (row.IsCry != row.Heard is not null || (row.IsCry && row.First != row.Hazard))))
        {
            table.AppendLine(CultureInfo.InvariantCulture, $"{row.Hazard} heard as {(row.Heard is null ? "nothing" : string.Join(", ", row.Heard.Hazards.DefaultIfEmpty("unsure")))}: {row.Sentence}");
        }

        return table.ToString();
    }

    private static string Line(string name, List<Row> rows)
    {
        var cries = rows.Where(row => row.IsCry).ToList();
        return string.Create(CultureInfo.InvariantCulture, $"{name,-16} {cries.Count,5} {cries.Count(row => row.Heard is not null),6} {cries.Count(row => row.First == row.Hazard && row.IsCry),6} {rows.Count - cries.Count,8} {rows.Count(row => !row.IsCry && row.Heard is not null),6}");
    }

    private double Share(Func<Row, bool> has) => (double)_rows.Count(row => row.IsCry && has(row)) / int.Max(1, Cries);

    private static string Where(string name) => name == Fitted
        ? Path.Combine(RepositoryFiles.Root, "flows", "words", "said", name)
        : Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Hearing", "corpus", name);

    private sealed record Row(bool IsCry, string Hazard, string Habit, string Sentence, Cry? Heard)
    {
        public string? First => Heard is { Hazards: [var first, ..] } ? first : null;
    }
}
