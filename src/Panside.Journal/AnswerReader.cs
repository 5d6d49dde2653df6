using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Journal;

/// <summary>
/// Reads a line out as a record has it: what was said, and not what would be said now. What a newer version wrote beside is passed over.
/// </summary>
public static class AnswerReader
{
    /// <summary>The line out; null where it is none, is not whole, or says something for which this version has no word.</summary>
    /// <param name="line">The line as written.</param>
    public static LineOut? Read(string line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return document.RootElement is { ValueKind: JsonValueKind.Object } root && LineShape.Of(root) is { Kind: LineKind.Out } shape ? Read(root, shape) : null;
        }
        catch (Exception fault) when (LineReader.IsNoJson(fault))
        {
            return null;
        }
    }

    private static LineOut? Read(JsonElement root, LineShape shape)
    {
        var (said, number) = (root.GetProperty(shape.Key), shape.Sequence);
        var at = Text(root, "at") is { } written ? Moment.Read(written) : null;
        if (shape.Key == "phase")
        {
            return said.ValueKind == JsonValueKind.String ? new PhaseLine(at, number, said.GetString()!) : null;
        }

        return said.ValueKind != JsonValueKind.Object ? null : shape.Key switch
        {
            "session" => shape.Header is { } header ? new SessionLine(at, number, header) : null,
            "prompt" => Prompt(said) is { } prompt ? new PromptLine(at, number, prompt) : null,
            "advice" => Advice(said) is { } advice ? new AdviceLine(at, number, advice) : null,
            "caution" => Text(said, "text") is { } text ? new CautionLine(at, number, text) : null,
            "forecast" => Forecast(said) is { } forecast ? new ForecastLine(at, number, forecast) : null,
            "heard" => at is { } time && LineReader.Heard(said, time) is { } heard ? new HeardLine(at, number, heard) : null,
            "question" => Text(said, "text") is { } asked
                ? new QuestionLine(at, number, asked, Text(said, "would-take") ?? "") { Choices = Texts(said, "choices") }
                : null,
            "refused" => Text(said, "why") is { } why ? new RefusedLine(at, number, why, Text(said, "field")) : null,
            "told" => Text(said, "text") is { } told ? new ToldLine(at, number, told) : null,
            "over" => new OverLine(at, number, Outcome(said)),
            _ => null,
        };
    }

    /// <summary>How a boil ended, as an end tells it.</summary>
    internal static Outcome Outcome(JsonElement over) => new(
        Amount(over, "sap-used", Dimension.Volume), Amount(over, "syrup-made", Dimension.Volume), Amount(over, "syrup-brix", Dimension.Sugar),
        Amount(over, "wood", Dimension.Mass), Amount(over, "minutes", Dimension.Time),
        Amount(over, "pan-volume", Dimension.Volume), Amount(over, "tank-volume", Dimension.Volume),
        over.TryGetProperty("safe", out var safe) && safe.ValueKind == JsonValueKind.True,
        Texts(over, "skipped") ?? [],
        Text(over, "text") ?? "")
    {
        SapBrix = Amount(over, "sap-brix", Dimension.Sugar),
        PanBrix = Amount(over, "pan-brix", Dimension.Sugar),
        WaterBoiled = Amount(over, "water-boiled", Dimension.Volume),
        FiredMinutes = Amount(over, "fired-minutes", Dimension.Time),
        Judged = !(over.TryGetProperty("judged", out var judged) && judged.ValueKind == JsonValueKind.False),
    };

    private static Prompt? Prompt(JsonElement said) =>
        Text(said, "step") is { } step && Text(said, "ask") is { } ask && Text(said, "text") is { } text
            ? new(step, ask, Unit(said), text, Text(said, "because"))
            {
                Low = Number(said, "low"),
                High = Number(said, "high"),
                Last = Number(said, "last"),
                LastMinutes = said.TryGetProperty("last-minutes", out var minutes) && minutes.ValueKind == JsonValueKind.Number && minutes.TryGetInt32(out var age) ? age : null,
                Choices = Texts(said, "choices"),
            }
            : null;

    private static Advice? Advice(JsonElement said) =>
        Text(said, "action") is { } action && Text(said, "urgency") is { } urgency && Text(said, "text") is { } text
            ? new(action, urgency, text, Text(said, "because") ?? "", said.TryGetProperty("forecast", out var used) && used.ValueKind == JsonValueKind.Object ? Forecast(used) : null)
            {
                Prepare = said.TryGetProperty("prepare", out var prepare) && prepare.ValueKind == JsonValueKind.True,
            }
            : null;

    private static Forecast? Forecast(JsonElement said) =>
        Text(said, "name") is { } name && Unit(said) is { } unit ? new(name, unit, Number(said, "p5"), Number(said, "p50"), Number(said, "p95")) : null;

    private static Measure? Amount(JsonElement over, string key, Dimension kind) =>
        over.TryGetProperty(key, out var amount) && amount.ValueKind == JsonValueKind.Object
        && Number(amount, "value") is { } number && Unit(amount) is { } unit && unit.Kind() == kind
            ? Measure.Of(number, unit)
            : null;

    private static Unit? Unit(JsonElement said) => Text(said, "unit") is { } code ? UnitNames.FromCode(code) : null;

    private static double? Number(JsonElement said, string key) =>
        said.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.Number && value.TryGetDouble(out var number) && double.IsFinite(number) ? number : null;

    private static string? Text(JsonElement said, string key) =>
        said.TryGetProperty(key, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString() : null;

    private static IReadOnlyList<string>? Texts(JsonElement said, string key) =>
        said.TryGetProperty(key, out var list) && list.ValueKind == JsonValueKind.Array
            ? [.. list.EnumerateArray().Where(one => one.ValueKind == JsonValueKind.String).Select(one => one.GetString()!)]
            : null;
}
