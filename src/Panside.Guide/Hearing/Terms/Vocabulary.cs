using System.Collections.Frozen;

namespace Panside.Guide.Hearing.Terms;

/// <summary>The words that people type to the program itself; those of a thing that can be told stand in its row.</summary>
internal static class Vocabulary
{
    /// <summary>Words of the assistant's own.</summary>
    public static readonly FrozenDictionary<string, string> Own = Table(
        ["why", "why?", "because", "reason"],
        ["undo", "take back", "wrong", "oops"],
        ["help", "?", "h", "words"],
        ["status", "now", "figures", "forecast", "how long", "what now"],
        ["skipped", "left out"],
        ["exit", "quit", "bye", "close program"]);

    /// <summary>Answers.</summary>
    public static readonly FrozenDictionary<string, string> Answers = Table(
        ["yes", "y", "ok", "done", "yep", "yeah", "aye"],
        ["no", "n", "nope", "not yet"],
        ["skip", "s"],
        ["later", "wait"]);

    private static FrozenDictionary<string, string> Table(params string[][] rows) =>
        rows.SelectMany(row => row.Select(word => (word, means: row[0])))
            .ToFrozenDictionary(pair => pair.word, pair => pair.means, StringComparer.OrdinalIgnoreCase);
}
