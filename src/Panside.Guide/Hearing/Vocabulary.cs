using System.Collections.Frozen;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>The words that people type, and what they mean.</summary>
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

    /// <summary>Deeds; the amount may follow.</summary>
    public static readonly FrozenDictionary<string, string> Deeds = Table(
        ["lit-fire", "lit", "lit fire", "lit the fire", "fire lit", "fire is lit", "lit it"],
        ["add-wood", "wood", "wood in", "added wood", "add wood", "fired", "charge", "charge in", "wood on"],
        ["open-draw", "open", "open draw", "opened", "draw open", "drawing", "opened draw", "draw-off open"],
        ["close-draw", "drew", "close draw", "closed", "draw closed", "shut", "close", "draw shut", "drawn off"],
        ["spread-coals", "spread", "spread coals", "coals spread", "raked", "raked coals", "coals raked"],
        ["flood-pan", "flood", "flooded", "flood pan", "pan flooded", "flooded pan"],
        ["add-defoamer", "defoamer", "added defoamer", "defoamed", "defoamer in"],
        ["cover-pan", "cover", "covered", "lid on", "pan covered", "lid", "covered pan"],
        ["refill-tank", "refill", "refilled", "added", "add", "refill tank", "tank refilled", "poured in"],
        ["leave", "left", "leaving", "i leave", "i am leaving", "gone home"]);

    /// <summary>Readings; the number follows.</summary>
    public static readonly FrozenDictionary<string, string> Readings = Table(
        ["tank-volume", "tank", "sap in tank", "head tank"],
        ["pan-depth", "depth", "pan depth", "level", "pan level", "pan"],
        ["draw-temperature", "draw", "draw temp", "draw temperature", "draw-off", "temp", "temperature"],
        ["boiling-water-temperature", "water", "boiling water", "boiling", "water temp"],
        ["sap-brix", "sap", "sap brix", "sap sugar", "raw sap"],
        ["draw-brix", "draw brix", "draw sugar", "draw-off sugar", "draw-off brix"],
        ["pan-brix", "pan sugar", "pan brix"],
        ["hydrometer-brix", "hydrometer", "hydro", "glass", "syrup"],
        ["sample-temperature", "sample", "sample temp", "sample temperature", "cup"],
        ["barometer", "baro", "weather"],
        ["station-pressure", "pressure here", "station", "local pressure"],
        ["drawn-volume", "drawn", "syrup drawn"],
        ["air-temperature", "air", "air temp", "outside"]);

    /// <summary>States that an observation can have, by their own word or with the thing before it.</summary>
    public static readonly FrozenDictionary<string, (ObservationName Name, string State)> States =
        ObservationName.All
            .SelectMany(name => name.States.SelectMany(state => new[]
            {
                (state, name, state), ($"{name.Code} {state}", name, state), ($"{state} {name.Code}", name, state),
                ($"{name.Code} is {state}", name, state),
            }))
            .Concat(
            [
                ("scorching", ObservationName.Smell, "scorched"), ("burning smell", ObservationName.Smell, "scorched"),
                ("foaming over", ObservationName.Foam, "over"), ("foam up", ObservationName.Foam, "rising"),
                ("mixed", ObservationName.Gradient, "gone"), ("channels gone", ObservationName.Gradient, "gone"),
                ("no boil", ObservationName.Boil, "still"), ("stopped boiling", ObservationName.Boil, "still"),
                ("no coals", ObservationName.Coals, "spent"), ("simmer", ObservationName.Boil, "simmering"),
                ("first boil", ObservationName.Boil, "simmering"),
            ])
            .ToFrozenDictionary(row => row.Item1, row => (row.Item2, row.Item3), StringComparer.OrdinalIgnoreCase);

    private static FrozenDictionary<string, string> Table(params string[][] rows) =>
        rows.SelectMany(row => row.Select(word => (word, row[0])))
            .Concat(rows.Select(row => (word: row[0].Replace('-', ' '), row[0])))
            .DistinctBy(pair => pair.word)
            .ToFrozenDictionary(pair => pair.word, pair => pair.Item2, StringComparer.OrdinalIgnoreCase);
}
