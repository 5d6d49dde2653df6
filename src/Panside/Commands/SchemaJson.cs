using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;

namespace Panside.Commands;

/// <summary>
/// The form of flow and rig files as a JSON Schema (draft 2020-12), for editors that complete keys and words and mark slips. It is taken down
/// from the readers while they read the built-in files, so it knows what they ask for: keys, words, units. What hangs together is left to
/// <c>panside check</c>.
/// </summary>
internal static class SchemaJson
{
    /// <summary>Kinds of files that there is a schema of.</summary>
    public static IReadOnlyList<string> Kinds { get; } = ["flow", "rig"];

    private static readonly JsonWriterOptions Readable = new() { Indented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, NewLine = "\n" };

    private const string FluesByFactor =
        "rig: r\nunits: us\npans:\n  - { length: 4 ft, width: 2 ft, flues: { area factor: 4 } }\n  - { length: 2 ft, width: 2 ft }\nfire: { draft: forced }\n";

    /// <summary>The schema of a kind of file.</summary>
    /// <param name="kind">One of <see cref="Kinds"/>.</param>
    public static string Of(string kind)
    {
        var shape = new Shape();
        if (kind == "flow")
        {
            // The built-in flow leaves out 'language' and 'values'. They are put in here, so that the schema has them.
            FlowFile.Read(Library.BuiltInFlow, Library.BuiltIn("flows/" + Library.BuiltInFlow) + "\nlanguage: en\nvalues: { put-off: 5 min }\n", Vocabularies.Flow, shape);
        }
        else
        {
            foreach (var name in ScenarioLibrary.Rigs)
            {
                RigFile.Read(name, Library.BuiltIn($"rigs/{name}.yaml"), passesOver: false, shape);
            }

            // No built-in rig tells its flues by the factor alone, and a file may: without this depth and number would be required.
            RigFile.Read("factor", FluesByFactor, passesOver: false, shape);
        }

        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Readable))
        {
            new Writer(json).Root($"A {kind} file of panside", shape);
        }

        return Encoding.UTF8.GetString(stream.ToArray()) + "\n";
    }

    /// <summary>Any letter, big or small: a schema's patterns know no other way.</summary>
    private static string EitherCase(string word) => string.Concat(word.Select(letter =>
        char.IsAsciiLetter(letter) ? $"[{char.ToLowerInvariant(letter)}{char.ToUpperInvariant(letter)}]"
        : letter is '/' or '\'' or '"' or '%' or '°' or '”' or '″' or '′' or ' ' ? letter.ToString()
        : throw new InvalidOperationException($"'{letter}' in a unit is not written into patterns yet.")));

    /// <summary>What a number with a unit looks like; feet may have inches behind them.</summary>
    private static string Pattern(Dimension dimension)
    {
        const string Number = "[-−+]?[0-9.¼½¾⅛⅜⅝⅞⅓⅔][0-9.,/¼½¾⅛⅜⅝⅞⅓⅔\\s-]*";
        var units = string.Join('|', UnitNames.WordsOf(dimension).OrderByDescending(word => word.Length).Select(EitherCase));
        return $"^\\s*{Number}({units})\\s*({(dimension == Dimension.Length ? "[0-9.¼½¾⅛⅜⅝⅞⅓⅔].*" : "")})?$";
    }

    private sealed class Writer(Utf8JsonWriter json)
    {
        private readonly SortedDictionary<string, ShapedWords> _shared = new(StringComparer.Ordinal);

        public void Root(string title, Shape shape)
        {
            json.WriteStartObject();
            json.WriteString("$schema", "https://json-schema.org/draft/2020-12/schema");
            json.WriteString("title", title);
            Mapping(shape);
            json.WriteStartObject("$defs");
            Text();
            foreach (var (name, words) in _shared)
            {
                json.WriteStartObject(name);
                Words(words);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }

        /// <summary>Whatever stands behind a key on one line is a text to the reader, a number as well.</summary>
        private void Text()
        {
            json.WriteStartObject("text");
            json.WriteStartArray("type");
            json.WriteStringValue("string");
            json.WriteStringValue("number");
            json.WriteStringValue("boolean");
            json.WriteEndArray();
            json.WriteNumber("minLength", 1);
            json.WriteEndObject();
        }

        private void Mapping(Shape shape)
        {
            json.WriteString("type", "object");
            if (shape.IsOpen)
            {
                json.WriteStartObject("additionalProperties");
                Either([.. shape.Keys.SelectMany(key => key.Values).DistinctBy(value => value.As)]);
                json.WriteEndObject();
                return;
            }

            json.WriteStartObject("properties");
            foreach (var (key, values) in shape.Keys)
            {
                json.WriteStartObject(key);
                Either(values);
                json.WriteEndObject();
            }

            json.WriteEndObject();
            json.WriteStartArray("required");
            foreach (var key in shape.Required)
            {
                json.WriteStringValue(key);
            }

            json.WriteEndArray();
            json.WriteBoolean("additionalProperties", false);
        }

        private void Either(IReadOnlyList<ShapedValue> values)
        {
            if (values.Count <= 1)
            {
                // None: nothing of this form was read, and anything is of it.
                foreach (var value in values)
                {
                    Value(value);
                }

                return;
            }

            json.WriteStartArray("anyOf");
            foreach (var value in values)
            {
                json.WriteStartObject();
                Value(value);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        private void Value(ShapedValue value)
        {
            switch (value.As)
            {
                case Shaped.Map:
                    Mapping(value.Below!);
                    break;
                case Shaped.Maps:
                    json.WriteString("type", "array");
                    json.WriteStartObject("items");
                    Mapping(value.Below!);
                    json.WriteEndObject();
                    break;
                case Shaped.Texts:
                    json.WriteStartArray("anyOf");
                    json.WriteStartObject();
                    OneText(value.Words);
                    json.WriteEndObject();
                    json.WriteStartObject();
                    json.WriteString("type", "array");
                    json.WriteStartObject("items");
                    OneText(value.Words);
                    json.WriteEndObject();
                    json.WriteEndObject();
                    json.WriteEndArray();
                    break;
                case Shaped.Measure:
                    json.WriteString("type", "string");
                    json.WriteString("pattern", Pattern(value.Dimension));
                    json.WriteString("description", $"{UnitNames.Spoken(value.Dimension)} with its unit, like {value.Example}");
                    break;
                case Shaped.Whole:
                    // A number in quotes is one to the reader too.
                    json.WriteStartArray("type");
                    json.WriteStringValue("integer");
                    json.WriteStringValue("string");
                    json.WriteEndArray();
                    json.WriteNumber("minimum", value.Range.Low);
                    json.WriteNumber("maximum", value.Range.High);
                    json.WriteString("pattern", "^[0-9]+$");
                    break;
                case Shaped.Flag:
                    json.WriteStartArray("enum");
                    json.WriteBooleanValue(true);
                    json.WriteBooleanValue(false);
                    json.WriteStringValue("true");
                    json.WriteStringValue("false");
                    json.WriteEndArray();
                    break;
                default:
                    OneText(value.Words);
                    break;
            }
        }

        private void OneText(ShapedWords? words)
        {
            if (words?.Name is { } name)
            {
                _shared[name] = words;
                json.WriteString("$ref", "#/$defs/" + name);
            }
            else if (words is not null)
            {
                Words(words);
            }
            else
            {
                json.WriteString("$ref", "#/$defs/text");
            }
        }

        private void Words(ShapedWords words)
        {
            if (words.Pattern is { } pattern)
            {
                json.WriteStartArray("anyOf");
                json.WriteStartObject();
                Enum(words.Words);
                json.WriteEndObject();
                json.WriteStartObject();
                json.WriteString("type", "string");
                json.WriteString("pattern", pattern);
                json.WriteEndObject();
                json.WriteEndArray();
            }
            else
            {
                Enum(words.Words);
            }
        }

        private void Enum(IReadOnlyList<string> words)
        {
            json.WriteStartArray("enum");
            foreach (var word in words)
            {
                json.WriteStringValue(word);
            }

            json.WriteEndArray();
        }
    }
}
