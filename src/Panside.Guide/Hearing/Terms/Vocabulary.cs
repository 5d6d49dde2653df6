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
        // Whoever is alone has not done what wants two; without these it is a slip of "done".
        ["no", "n", "nope", "not yet", "alone", "i am alone", "i'm alone", "im alone", "alone here", "i am alone here", "just me", "on my own", "by myself", "nobody here", "no one here", "nobody else"],
        ["skip", "s"],
        ["later", "wait"]);

    private static FrozenDictionary<string, string> Table(params string[][] rows) =>
        rows.SelectMany(row => row.Select(word => (word, means: row[0])))
            .ToFrozenDictionary(pair => pair.word, pair => pair.means, StringComparer.OrdinalIgnoreCase);
}
