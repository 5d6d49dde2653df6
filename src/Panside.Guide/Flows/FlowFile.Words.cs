using Panside.Guide.Hearing.Terms;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <content>The words that may stand in a flow: triggers, facts, and the thresholds under <c>values</c>.</content>
public sealed partial class FlowFile
{
    /// <summary>The thresholds that the file sets otherwise than usual.</summary>
    private static FlowValues Values(YamlMap root)
    {
        var said = new Dictionary<FlowValue, double>();
        if (root.Map("values") is not { } map)
        {
            return FlowValues.Usual;
        }

        foreach (var value in FlowValue.All)
        {
            if (Number(map, value) is not { } number)
            {
                continue;
            }

            said[value] = number;
            if (number < value.Least || number > value.Most)
            {
                var unit = value.Unit.Shown();
                map.Add(
                    value.Name, $"{value.Name} is {number:0.##} {unit}",
                    $"{value.Least:0.##} to {value.Most:0.##} {unit}; {value.Usual:0.##} {unit} is usual", FaultKind.Range);
            }
        }

        map.Finish();
        return new(said);
    }

    /// <summary>What the file says of one of them, in its unit; null where it says nothing, or what is no such thing.</summary>
    private static double? Number(YamlMap map, FlowValue value)
    {
        switch (value.Unit)
        {
            case Unit.Minute:
                return Time(map, value.Name)?.TotalMinutes;
            case Unit.DegreeFahrenheit:
                // Degrees over or under something, so that only the size of a degree counts.
                return map.Measure(value.Name, Dimension.Temperature, "2 °F") is { } degrees
                    ? degrees.Value * (degrees.Unit == Unit.DegreeCelsius ? 1.8 : 1)
                    : null;
            default:
                return map.Measure(value.Name, Dimension.Share, "90 %")?.Value;
        }
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
