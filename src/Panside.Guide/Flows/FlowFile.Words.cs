using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <content>The words that may stand in a flow: triggers, facts, and the times under <c>values</c>.</content>
public sealed partial class FlowFile
{
    /// <summary>The times that the file sets otherwise than usual.</summary>
    private static FlowValues Values(YamlMap root)
    {
        var said = new Dictionary<FlowValue, TimeSpan>();
        if (root.Map("values") is not { } map)
        {
            return FlowValues.Usual;
        }

        foreach (var value in FlowValue.All)
        {
            if (Time(map, value.Name) is not { } time)
            {
                continue;
            }

            said[value] = time;
            if (time < value.Least || time > value.Most)
            {
                map.Add(
                    value.Name, $"{value.Name} is {time.TotalMinutes:0.##} min",
                    $"{value.Least.TotalMinutes:0.##} to {value.Most.TotalMinutes:0.##} min; {value.Usual.TotalMinutes:0.##} min is usual", FaultKind.Range);
            }
        }

        map.Finish();
        return new(said);
    }

    /// <summary>All triggers but those of facts and words.</summary>
    private List<string> Triggers() =>
    [
        .. AnswerWords.All.Select(word => "answer " + word),
        .. DeedName.All.Select(deed => "did " + deed.Code),
        .. _vocabulary.Readings.All.Select(reading => "reading " + reading.Code),
        .. ObservationName.All.SelectMany(seen => seen.States.Select(state => $"observed {seen.Code} {state}").Prepend("observed " + seen.Code)),
    ];

    private ShapedWords FactWords() => new("fact", Turned(_vocabulary.Facts), $"^(not )?{FlowCheck.MarkedPrefix}.");

    /// <summary>Facts, and each turned round.</summary>
    private static List<string> Turned(IEnumerable<string> facts) => [.. facts.Order(StringComparer.Ordinal).SelectMany(fact => new[] { fact, "not " + fact })];

    private static string Bare(string fact) => fact.StartsWith("not ", StringComparison.Ordinal) ? fact[4..] : fact;
}
