using System.Collections.Frozen;

namespace Panside.Commands;

/// <summary>The keys that stand below each key of a line out.</summary>
internal static class RecordKeys
{
    private static readonly string[] Forecast = ["name", "unit", "p5", "p50", "p95"];

    private static readonly FrozenDictionary<string, string[]> Below = new Dictionary<string, string[]>
    {
        ["session"] = ["program", "flow", "flow-version", "flow-hash", "guidance", "practice", "rig", "rig-file", "learned-file", "imported"],
        ["prompt"] = ["step", "ask", "unit", "text", "because", "low", "high", "last", "last-minutes", "choices"],
        ["advice"] = ["action", "urgency", "text", "because", "prepare", "forecast"],
        ["advice forecast"] = Forecast,
        ["caution"] = ["text"],
        ["forecast"] = Forecast,
        ["heard"] = ["reading", "observed", "did", "answer", "text", "tick", "resume", "value", "unit", "is", "pan"],
        ["question"] = ["text", "would-take", "choices"],
        ["refused"] = ["why", "field"],
        ["told"] = ["text"],
        ["over"] =
        [
            "sap-used", "syrup-made", "syrup-brix", "wood", "minutes", "pan-volume", "tank-volume", "sap-brix", "pan-brix",
            "water-boiled", "fired-minutes", "safe", "judged", "text", "skipped",
        ],
    }.ToFrozenDictionary();

    /// <summary>The keys below one; null where none stand there.</summary>
    public static IReadOnlyList<string>? Of(string key) => Below.GetValueOrDefault(key);
}
