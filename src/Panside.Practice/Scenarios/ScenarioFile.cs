using Panside.Guide.Measures;
using Panside.Guide.Yaml;
using Panside.Practice.Mishaps;
using Panside.Reckoning.Quantities;

namespace Panside.Practice.Scenarios;

/// <summary>Reads a scenario file. What stands in it is described in docs/scenarios.md.</summary>
public static class ScenarioFile
{
    /// <summary>The area that amounts in a file are meant for: a pan of 2 ft by 4 ft. They go with the pan's area.</summary>
    private static readonly double AreaMeant = Area.FromSquareMeters(0.7432).SquareMeters;

    private static readonly (string Word, Begins Begins)[] Beginnings =
    [
        ("cold", Begins.Cold), ("mid-boil", Begins.MidBoil), ("draw-due", Begins.DrawDue), ("last-charge", Begins.LastCharge),
        ("power-cut", Begins.PowerCut),
    ];

    private static readonly (string Word, Awaits Awaits)[] Conditions =
    [
        ("begun", Awaits.Beginning), ("fire-lit", Awaits.FireLit), ("boiling", Awaits.Boiling), ("first-draw", Awaits.FirstDraw),
        ("tank-half", Awaits.TankHalf), ("tank-low", Awaits.TankLow), ("fire-dying", Awaits.FireDying),
    ];

    /// <summary>Names and summaries of every fault that a scenario can have.</summary>
    public static IReadOnlyList<(string Name, string Summary)> Faults { get; } =
        [.. MishapKinds.All.Select(kind => (kind.Name, kind.Summary))];

    /// <summary>Reads the text of a scenario file.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <param name="rigs">The names of the rigs that it may want.</param>
    /// <exception cref="FaultyFileException">With every fault in it, each with its place.</exception>
    public static Scenario Read(string file, string text, IReadOnlyList<string> rigs)
    {
        var root = YamlMap.Read(file, text, "the scenario");
        var name = root.Text("scenario", required: true) ?? "";
        var summary = root.Text("summary", required: true) ?? "";
        var start = root.Map("start", required: true);
        var tank = Within(start, "tank", Dimension.Volume, "24 gal", UnitSystem.Us.Volume, 1, 400, required: true) ?? 10;
        var pan = Within(start, "pan", Dimension.Sugar, "18 Brix", measure => measure.Value, 1, 60);
        var depth = Within(start, "depth", Dimension.Share, "120 %", measure => measure.Value, 100, 250) ?? 100;
        var begins = start?.Word("begin", [.. Beginnings.Select(one => one.Word)]) ?? "cold";
        var weather = root.Map("weather");
        var read = new Scenario(name, summary, tank / AreaMeant, pan, depth / 100)
        {
            Begins = Beginnings.First(one => one.Word == begins).Begins,
            RigName = root.Word("rig", rigs),
            Weather = weather is null ? Weather.Steady : WeatherOf(weather),
            IsDangerous = root.Flag("dangerous") ?? false,
            Mishaps = [.. root.Maps("faults").Select(Planned)],
            Checks = [.. root.Maps("checks").Select(CheckOf)],
        };
        start?.Finish();
        root.Finish();
        root.Demand();
        return read;
    }

    private static Weather WeatherOf(YamlMap map)
    {
        double? Celsius(string key, double low) =>
            Within(map, key, Dimension.Temperature, "28 degF", measure => UnitSystem.Temperature(measure).Celsius, low, 25);
        var weather = new Weather(
            Celsius("air", -25), Celsius("sap", 0), Celsius("air-later", -25),
            Within(map, "barometer-falls", Dimension.Pressure, "0.4 inHg", measure => UnitSystem.Pressure(measure).Kilopascals, -4, 4) ?? 0,
            Within(map, "over", Dimension.Time, "3 h", Minutes, 10, 1440) / 60 ?? 3);
        map.Finish();
        return weather;
    }

    private static PlannedMishap Planned(YamlMap map)
    {
        var kind = map.Word("fault", ["any", .. MishapKinds.All.Select(one => one.Name)], required: true) ?? "any";
        var when = map.Word("when", [.. Conditions.Select(one => one.Word)]) ?? "begun";
        var after = Within(map, "after", Dimension.Time, "20 min", Minutes, 0, 1440) ?? 0;
        var until = Within(map, "until", Dimension.Time, "50 min", Minutes, 0, 1440) ?? after;
        if (until < after)
        {
            map.Add("until", $"until is {until:0.#} min, before after", "a time no earlier than after", FaultKind.Together);
        }

        var planned = new PlannedMishap(
            kind == "any" ? null : kind,
            Conditions.First(one => one.Word == when).Awaits,
            after,
            until,
            (Within(map, "chance", Dimension.Share, "50 %", measure => measure.Value, 0, 100) ?? 100) / 100,
            Within(map, "for", Dimension.Time, "15 min", Minutes, 1, 1440),
            (Within(map, "strength", Dimension.Share, "150 %", measure => measure.Value, 10, 300) ?? 100) / 100);
        map.Finish();
        return planned;
    }

    private static Check CheckOf(YamlMap map)
    {
        var check = new Check(map.Text("check", required: true) ?? "", map.Text("text", required: true) ?? "", map.Text("when", required: true) ?? "");
        if (check.When.Length > 0 && !check.IsKnown)
        {
            map.Add("when", $"'{check.When}' cannot be seen", "reading, observed, did or phase, and a name, like 'reading pan-depth'", FaultKind.Trigger);
        }

        map.Finish();
        return check;
    }

    private static double Minutes(Measure measure) => measure.Value * (measure.Unit == Unit.Hour ? 60 : 1);

    private static double? Within(
        YamlMap? map, string key, Dimension dimension, string example, Func<Measure, Volume> to, double low, double high, bool required) =>
        Within(map, key, dimension, example, measure => to(measure).Liters, low, high, required);

    private static double? Within(
        YamlMap? map, string key, Dimension dimension, string example, Func<Measure, double> to, double low, double high, bool required = false)
    {
        if (map?.Measure(key, dimension, example, required) is not { } measure)
        {
            return null;
        }

        var value = double.Abs(measure.Value) < 1e9 ? to(measure) : double.PositiveInfinity;
        if (value >= low && value <= high)
        {
            return value;
        }

        map.Add(key, $"{key} is {measure}, which no evening has", $"a usual value, like {example}", FaultKind.Range);
        return null;
    }
}
