using System.Buffers;
using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Journal;

/// <summary>Writes lines as JSON, one object a line, always the same bytes for the same line.</summary>
public static class LineWriter
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>A line out.</summary>
    public static string Write(LineOut line) => Object(json =>
    {
        At(json, line.At);
        json.WriteNumber("seq", line.Sequence);
        Body(json, line);
    });

    /// <summary>A line in.</summary>
    public static string Write(LineIn line) => Object(json =>
    {
        At(json, line.At);
        Body(json, line);
    });

    /// <summary>A line in by its parts as a table has them; whether it can be one, <see cref="LineReader"/> says.</summary>
    /// <param name="at">When.</param>
    /// <param name="what">reading, observed, did or text.</param>
    /// <param name="name">The name of what was read, seen or done; the words of a text.</param>
    /// <param name="value">The value; the state of what was seen; empty where there is none.</param>
    /// <param name="unit">The unit; empty where there is none.</param>
    /// <param name="liquid">What was poured; empty where nothing was.</param>
    public static string Write(string at, string what, string name, string value, string unit, string liquid = "") => Object(json =>
    {
        json.WriteString("at", at);
        json.WriteString(what, name);
        if (what == "observed")
        {
            json.WriteString("is", value);
        }
        else if (value.Length > 0 && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            json.WriteNumber("value", number);
        }
        else if (value.Length > 0)
        {
            json.WriteString("value", value);
        }

        if (unit.Length > 0)
        {
            json.WriteString("unit", unit);
        }

        if (liquid.Length > 0)
        {
            json.WriteString("is", liquid);
        }
    });

    /// <summary>A line in that was refused and would not be read as such again: what was wrong, and the line as it was said.</summary>
    internal static string Unread(Unreadable line, string said) => Object(json =>
    {
        At(json, line.At);
        json.WriteString(KeptLine.Unread, said);
        json.WriteString("why", line.Why);
        if (line.Field is { } field)
        {
            json.WriteString("field", field);
        }
    });

    /// <summary>The mark after the last answer to a line in.</summary>
    public static string Ready(Moment? at) => Object(json =>
    {
        At(json, at);
        json.WriteBoolean("ready", true);
    });

    private static string Object(Action<Utf8JsonWriter> body)
    {
        var buffer = new ArrayBufferWriter<byte>(256);
        using (var json = new Utf8JsonWriter(buffer, Options))
        {
            json.WriteStartObject();
            body(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(buffer.WrittenSpan);
    }

    private static void At(Utf8JsonWriter json, Moment? at)
    {
        if (at is { } known)
        {
            json.WriteString("at", known.Written);
        }
        else
        {
            json.WriteNull("at");
        }
    }

    private static void Body(Utf8JsonWriter json, LineIn line)
    {
        switch (line)
        {
            case Reading reading:
                json.WriteString("reading", reading.Name.Code);
                Amount(json, reading.Measure);
                break;
            case Observed observed:
                json.WriteString("observed", observed.Name.Code);
                json.WriteString("is", observed.Is);
                break;
            case Did did:
                json.WriteString("did", did.Name.Code);
                if (did.Measure is { } measure)
                {
                    Amount(json, measure);
                }

                if (did.Is is { } liquid)
                {
                    json.WriteString("is", liquid);
                }

                if (did.Pan is { } pan)
                {
                    json.WriteString("pan", pan);
                }

                break;
            case Answer answer:
                json.WriteString("answer", answer.Word);
                break;
            case Text text:
                json.WriteString("text", text.Words);
                break;
            case Resumed:
                json.WriteBoolean("resume", true);
                break;
            case Tick:
                json.WriteBoolean("tick", true);
                break;
        }
    }

    private static void Body(Utf8JsonWriter json, LineOut line)
    {
        switch (line)
        {
            case SessionLine(_, _, var header):
                json.WriteStartObject("session");
                json.WriteString("program", header.Program);
                json.WriteString("flow", header.Flow);
                if (header.FlowVersion is { } version)
                {
                    json.WriteNumber("flow-version", version);
                }

                json.WriteString("flow-hash", header.FlowHash);
                json.WriteString("guidance", header.Guidance);
                json.WriteBoolean("practice", header.Practice);
                json.WriteString("rig", header.Rig);
                json.WriteString("rig-file", header.RigText);
                if (header.Imported)
                {
                    json.WriteBoolean("imported", true);
                }

                if (header.LearnedText is { } learned)
                {
                    json.WriteString("learned-file", learned);
                }

                json.WriteEndObject();
                break;
            case PhaseLine phase:
                json.WriteString("phase", phase.Phase);
                break;
            case PromptLine(_, _, var prompt):
                Prompt(json, prompt);
                break;
            case AdviceLine(_, _, var advice):
                json.WriteStartObject("advice");
                json.WriteString("action", advice.Action);
                json.WriteString("urgency", advice.Urgency);
                json.WriteString("text", advice.Text);
                json.WriteString("because", advice.Because);
                if (advice.Prepare)
                {
                    json.WriteBoolean("prepare", true);
                }

                if (advice.Forecast is { } used)
                {
                    json.WriteStartObject("forecast");
                    Forecast(json, used);
                    json.WriteEndObject();
                }

                json.WriteEndObject();
                break;
            case CautionLine caution:
                Texts(json, "caution", ("text", caution.Text));
                break;
            case ForecastLine(_, _, var forecast):
                json.WriteStartObject("forecast");
                Forecast(json, forecast);
                json.WriteEndObject();
                break;
            case HeardLine heard:
                json.WriteStartObject("heard");
                Body(json, heard.As);
                json.WriteEndObject();
                break;
            case QuestionLine question:
                json.WriteStartObject("question");
                json.WriteString("text", question.Text);
                json.WriteString("would-take", question.WouldTake);
                Choices(json, question.Choices);
                json.WriteEndObject();
                break;
            case RefusedLine { Field: { } field } refused:
                Texts(json, "refused", ("why", refused.Why), ("field", field));
                break;
            case RefusedLine refused:
                Texts(json, "refused", ("why", refused.Why));
                break;
            case ToldLine told:
                Texts(json, "told", ("text", told.Text));
                break;
            case OverLine(_, _, var outcome):
                Outcome(json, outcome);
                break;
        }
    }

    private static void Prompt(Utf8JsonWriter json, Prompt prompt)
    {
        json.WriteStartObject("prompt");
        json.WriteString("step", prompt.Step);
        json.WriteString("ask", prompt.Ask);
        if (prompt.Unit is { } unit)
        {
            json.WriteString("unit", unit.Code());
        }

        json.WriteString("text", prompt.Text);
        if (prompt.Because is { } because)
        {
            json.WriteString("because", because);
        }

        if (prompt is { Low: { } low, High: { } high })
        {
            json.WriteNumber("low", low);
            json.WriteNumber("high", high);
        }

        if (prompt is { Last: { } last, LastMinutes: { } minutes })
        {
            json.WriteNumber("last", last);
            json.WriteNumber("last-minutes", minutes);
        }

        Choices(json, prompt.Choices);
        json.WriteEndObject();
    }

    private static void Choices(Utf8JsonWriter json, IReadOnlyList<string>? choices)
    {
        if (choices is null)
        {
            return;
        }

        json.WriteStartArray("choices");
        foreach (var choice in choices)
        {
            json.WriteStringValue(choice);
        }

        json.WriteEndArray();
    }

    private static void Forecast(Utf8JsonWriter json, Forecast forecast)
    {
        json.WriteString("name", forecast.Name);
        json.WriteString("unit", forecast.Unit.Code());
        Number(json, "p5", forecast.P5);
        Number(json, "p50", forecast.P50);
        Number(json, "p95", forecast.P95);
    }

    private static void Outcome(Utf8JsonWriter json, Outcome outcome)
    {
        json.WriteStartObject("over");
        foreach (var (name, measure) in new[]
                 {
                     ("sap-used", outcome.SapUsed), ("syrup-made", outcome.SyrupMade), ("syrup-brix", outcome.SyrupBrix),
                     ("wood", outcome.Wood), ("minutes", outcome.Minutes), ("pan-volume", outcome.PanVolume),
                     ("tank-volume", outcome.TankVolume), ("sap-brix", outcome.SapBrix), ("pan-brix", outcome.PanBrix),
                     ("water-boiled", outcome.WaterBoiled), ("fired-minutes", outcome.FiredMinutes),
                 })
        {
            if (measure is { } known)
            {
                json.WriteStartObject(name);
                Amount(json, known);
                json.WriteEndObject();
            }
            else
            {
                json.WriteNull(name);
            }
        }

        json.WriteBoolean("safe", outcome.Safe);
        if (!outcome.Judged)
        {
            json.WriteBoolean("judged", false);
        }

        json.WriteString("text", outcome.Text);
        json.WriteStartArray("skipped");
        foreach (var step in outcome.Skipped)
        {
            json.WriteStringValue(step);
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Amount(Utf8JsonWriter json, Measure measure)
    {
        json.WriteNumber("value", measure.Value);
        json.WriteString("unit", measure.Unit.Code());
    }

    private static void Number(Utf8JsonWriter json, string key, double? value)
    {
        if (value is { } known)
        {
            // Minus nothing is nothing.
            json.WriteNumber(key, known == 0 ? 0 : known);
        }
        else
        {
            json.WriteNull(key);
        }
    }

    private static void Texts(Utf8JsonWriter json, string key, params ReadOnlySpan<(string Key, string Value)> texts)
    {
        json.WriteStartObject(key);
        foreach (var (name, value) in texts)
        {
            json.WriteString(name, value);
        }

        json.WriteEndObject();
    }
}
