using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <content>What is read well and is meant otherwise. It is refused with the ways, so that a record made with such a flow stays good.</content>
public sealed partial class FlowFile
{
    private static readonly TimeSpan LongestUnread = TimeSpan.FromMinutes(60);

    private readonly List<Fault> _traps = [];
    private readonly List<(string Danger, string Text, (int Line, int Column) Place)> _cries = [];

    /// <summary>A pan that is told of less often than this can be dry before.</summary>
    private void Seldom(YamlMap map, string key, TimeSpan? time)
    {
        if (time > LongestUnread)
        {
            Trap(map.Place(key), $"{key} is {time.Value.TotalMinutes:0.##} min", $"1 s to {LongestUnread.TotalMinutes:0} min", FaultKind.Range, "A pan can run dry in half an hour: what asks about it, or warns, comes again within the hour.");
        }
    }

    /// <summary>What tells of a graver danger, whatever else holds, never comes to this one.</summary>
    private void Overtaken(YamlMap when, string danger, Passage way, IReadOnlyList<Danger> graver)
    {
        if (graver.FirstOrDefault(other => other.Ways.Any(over => over.When == way.When && over.Given.All(way.Given.Contains))) is { } first)
        {
            Trap(
                when.Place("when"), $"'{way.When}' never tells of '{danger}': '{first.Code}' stands above it and takes that first", $"something that does not tell of '{first.Code}' too", FaultKind.Danger,
                "Of several dangers that one thing tells of, the first whose facts hold comes. Leave it to that one, or give that one a fact more.");
        }
    }

    /// <summary>A cry that is heard as something else is no cry any more, or takes that from whoever says it.</summary>
    private void Cries(Dictionary<string, string> words)
    {
        foreach (var (danger, text, place) in _cries)
        {
            var cry = text.Trim();
            var meaning = WordsHeardFirst.Meaning(cry) ?? Counted(cry) ?? (words.TryGetValue(cry, out var word) && word != danger ? $"the word '{word}'" : null);
            if (meaning is not null)
            {
                Trap(place, $"'{text}' is heard as {meaning}, never as a cry of '{danger}'", "a sentence that says what is wrong", FaultKind.Wording);
            }
        }
    }

    /// <summary>A reading or a deed, with a number behind it or without; null for anything else.</summary>
    private string? Counted(string said)
    {
        var number = said.AsSpan().IndexOfAnyInRange('0', '9');
        var name = number < 0 ? said : said[..number].Trim();
        return _vocabulary.Readings.Words.ContainsKey(name) ? "a reading" : DeedName.Said.ContainsKey(name) ? "something done" : null;
    }

    private void Trap((int Line, int Column) place, string wrong, string expected, FaultKind kind, string? help = null) =>
        _traps.Add(new(_file, place.Line, place.Column, wrong, expected) { Kind = kind, Help = help });
}
