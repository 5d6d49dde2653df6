using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;
using Panside.Guide.Yaml;

namespace Panside.Guide.Plans;

/// <summary>Reads a plan file; its form is described in docs/plans.md.</summary>
public static class PlanFile
{
    private static readonly string[] Guidances = ["beginner", "practised"];
    private static readonly string[] Endings = ["safe", "unsafe", "open"];

    /// <summary>Reads the text of a plan file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <param name="flow">The flow that it is walked with, whose steps, watches and phases it names; null where it is only read.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static Plan Read(string file, string text, Flow? flow = null)
    {
        var root = YamlMap.Read(file, text, "the plan");
        var plan = new Plan(
            root.Text("plan", required: true) ?? "",
            root.Word("guidance", Guidances) == "practised" ? Guidance.Practised : Guidance.Beginner,
            [.. root.Maps("lines", required: true).Select(map => Line(map, flow))],
            root.Word("ends", Endings))
        { EndsPlace = root.Place("ends"), NotTold = Placed(root, "not-told") };
        root.Finish();
        root.Demand();
        return plan;
    }

    private static PlanLine Line(YamlMap map, Flow? flow)
    {
        var line = new PlanLine(
            At(map),
            map.Text("say"),
            Named(map, "asks", flow is null ? null : [.. flow.Steps.Keys, .. flow.Watches.Select(watch => watch.Id), PlanLine.Nothing]),
            Named(map, "phase", flow is null ? null : [.. flow.Phases.Select(phase => phase.Code).Distinct(), Flow.End]),
            Placed(map, "told"),
            Placed(map, "not-told"),
            map.Word("taken", PlanLine.Takings) ?? PlanLine.Takings[0])
        { Places = (map.Place("say"), map.Place("asks"), map.Place("phase"), map.Place()) };
        map.Finish();
        return line;
    }

    private static List<PlacedText> Placed(YamlMap map, string key) => [.. map.PlacedTexts(key).Select(told => new PlacedText(told.Text, told.Place))];

    private static ClockTime? At(YamlMap map)
    {
        if (map.Text("at") is not { } written)
        {
            return null;
        }

        if (ClockTime.Read(written, ofDay: true) is { IsEither: false } time)
        {
            return time;
        }

        map.Add("at", $"at is '{written}'", "a time of day, like 17:05", FaultKind.Measure);
        return null;
    }

    private static string? Named(YamlMap map, string key, IReadOnlyList<string>? names)
    {
        var name = map.Text(key);
        if (name is not null && names?.Contains(name) == false)
        {
            map.Add(key, $"'{name}' is nothing of this flow", "a name that stands in it", FaultKind.Name, Fault.Nearest(name, names));
        }

        return name;
    }
}
