using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>An answer for programs: one JSON object.</summary>
internal static class ReckonJson
{
    private static readonly JsonWriterOptions Options = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The object, in one line.</summary>
    public static string Of(Answer answer)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Options))
        {
            json.WriteStartObject();
            json.WriteString("name", answer.Calculation.Name);
            WriteInputs(json, answer);
            WriteResults(json, answer);
            json.WriteStartArray("notes");
            foreach (var note in answer.Result.Notes)
            {
                json.WriteStringValue(note);
            }

            json.WriteEndArray();
            var basis = answer.Calculation.Basis;
            json.WriteString("method", basis.Method);
            json.WriteString("source", SourceNames.Spelled(basis.Sources));
            json.WriteString("range", basis.Range);
            json.WriteString("does-not-cover", basis.DoesNotCover);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    private static void WriteInputs(Utf8JsonWriter json, Answer answer)
    {
        json.WriteStartObject("inputs");
        foreach (var (name, value) in answer.Inputs)
        {
            json.WriteStartObject(name);
            if (value.Measure is { } measure)
            {
                json.WriteNumber("value", Math.Round(measure.Value, 9));
                json.WriteString("unit", measure.Unit.Code());
            }
            else if (value.Baume is { } baume)
            {
                json.WriteNumber("value", baume);
                json.WriteString("unit", "Baume");
            }
            else
            {
                json.WriteString("value", value.Word);
            }

            if (value.IsUsual)
            {
                json.WriteBoolean("usual", true);
            }

            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void WriteResults(Utf8JsonWriter json, Answer answer)
    {
        json.WriteStartArray("results");
        foreach (var figure in answer.Result.Figures)
        {
            json.WriteStartObject();
            json.WriteString("name", figure.Name);
            if (figure.Value is { } value)
            {
                json.WriteNumber("value", figure.Finer(value));
                if (figure.Code.Length > 0)
                {
                    json.WriteString("unit", figure.Code);
                }
            }
            else
            {
                json.WriteString("value", figure.Word);
            }

            if (figure.Band is { } band)
            {
                json.WriteNumber("low", figure.Finer(band.Low));
                json.WriteNumber("high", figure.Finer(band.High));
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
