using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Tests.Reckon;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Panside.Tests.Checks;

/// <summary>
/// The schemas that editors get, judged by a library of its own: what the reader takes they take, and what breaks the form of a file they
/// refuse.
/// </summary>
public partial class SchemaTests
{
    /// <summary>What a schema cannot tell: a key that must stand beside one word only, a comma that may mean two things, how many pans there are.</summary>
    private static readonly string[] BeyondForm = ["Draft-MustStand", "Flues-MustSayHowMany", "Numbers-MustBeUnambiguous", "Pans-MustBeOneOrTwo", "Pans-MustBeSome"];

    private static readonly Dictionary<string, JsonSchema> Schemas = new[] { "flow", "rig" }
        .ToDictionary(kind => kind, kind => JsonSchema.FromText(Captured.Run("check", "--schema", kind).Out));

    public static IEnumerable<TheoryDataRow<string, string>> Shipped =>
        Files("flows").Select(file => new TheoryDataRow<string, string>("flow", file))
            .Concat(Files("flows", "rigs").Append(Path.Combine(RepositoryFiles.Root, "demo-sessions", "hand-fed.yaml")).Select(file => new TheoryDataRow<string, string>("rig", file)))
            .Append(new("flow", Path.Combine(RepositoryFiles.Root, "tests", "Panside.Guide.Tests", "Flows", "smallest.yaml")));

    public static IEnumerable<TheoryDataRow<string, string>> Rejected => new[] { ("flow", "Flows"), ("rig", "Rigs") }
        .SelectMany(kind => Files("tests", "Panside.Guide.Tests", kind.Item2, "rejected").Select(file => new TheoryDataRow<string, string>(kind.Item1, file)));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void Every_shipped_file_is_of_the_form(string kind, string file) => Assert.Equal("", Judged(kind, File.ReadAllText(file)));

    /// <summary>Quotes, fractions, feet with inches, capitals: the reader takes them.</summary>
    [Theory]
    [InlineData("units: us", "units: imperial")]
    [InlineData("channels: 3", "channels: '3'")]
    [InlineData("altitude: 900 ft", "altitude: 4' 2 1/2\"")]
    [InlineData("altitude: 900 ft", "altitude: −3 FEET 2 in")]
    [InlineData("tank: 35 gal", "tank: 35½ Gallons")]
    [InlineData("float: true", "float: 'true'")]
    [InlineData("rig: two by four, forced draft", "rig: 7")]
    [InlineData("interval: 8 min", "interval: 0.2 hours")]
    public void What_the_reader_takes_in_another_writing_is_of_the_form_too(string from, string to)
    {
        var text = RepositoryFiles.Read("flows", "rigs", "two-by-four-forced.yaml");
        Assert.Contains(from, text, StringComparison.Ordinal);
        text = text.Replace(from, to, StringComparison.Ordinal);
        if (!to.Contains('−', StringComparison.Ordinal))
        {
            RigFile.Read("r", text);
        }

        Assert.Equal("", Judged("rig", text));
    }

    [Theory]
    [MemberData(nameof(Rejected))]
    public void A_file_whose_form_is_broken_is_not_of_the_form(string kind, string file)
    {
        var text = File.ReadAllText(file);
        var faults = Assert.Throws<FaultyFileException>(() => Read(kind, text)).Faults;
        if (faults.Any(fault => FaultKind.OfForm.Contains(fault.Kind)) && !BeyondForm.Contains(Path.GetFileNameWithoutExtension(file)))
        {
            Assert.NotEqual("", Judged(kind, text));
        }
    }

    [Fact]
    public void Many_of_the_broken_files_are_broken_in_their_form()
    {
        var kinds = Rejected.Select(row => Assert.Throws<FaultyFileException>(() => Read(row.Data.Item1, File.ReadAllText(row.Data.Item2))).Faults[0].Kind).ToList();
        Assert.InRange(kinds.Count(FaultKind.OfForm.Contains), 40, kinds.Count);
        Assert.All(FaultKind.OfForm, kind => Assert.Contains(kind, kinds));
    }

    /// <summary>Every key that the page names is in the schema, so that it was asked for while the built-in files were read.</summary>
    [Theory]
    [InlineData("flow", "flows.md")]
    public void Every_key_that_the_page_tells_of_is_known(string kind, string page)
    {
        var schema = Captured.Run("check", "--schema", kind).Out;
        var part = RepositoryFiles.Read("docs", page).Split("### Advice that makes ready")[0];
        var keys = KeyRow().Matches(part).SelectMany(row => InTicks().Matches(row.Groups["keys"].Value)).Select(key => key.Groups["key"].Value).Distinct().ToList();
        Assert.InRange(keys.Count, 35, 90);
        Assert.All(keys, key => Assert.Contains($"\"{key}\": {{", schema, StringComparison.Ordinal));
    }

    /// <summary>What no built-in rig has would be missing: then one more of them is to be read for the schema.</summary>
    [Fact]
    public void Every_key_of_a_rig_that_the_page_tells_of_is_known_at_its_place()
    {
        using var schema = JsonDocument.Parse(Captured.Run("check", "--schema", "rig").Out);
        var keys = RigKeyRow().Matches(RepositoryFiles.Read("docs", "rigs.md").Split("## Made by questions")[0]).Select(row => row.Groups["key"].Value).ToList();
        Assert.InRange(keys.Count, 25, 60);
        foreach (var key in keys)
        {
            var at = schema.RootElement;
            foreach (var part in key.Split('.'))
            {
                at = at.TryGetProperty("items", out var items) ? items : at;
                Assert.True(at.TryGetProperty("properties", out var properties) && properties.TryGetProperty(part, out at), $"'{key}' is not in the schema.");
            }
        }
    }

    [Fact]
    public void The_words_that_an_editor_completes_are_the_programs()
    {
        using var schema = JsonDocument.Parse(Captured.Run("check", "--schema", "flow").Out);
        var facts = schema.RootElement.GetProperty("$defs").GetProperty("fact").GetProperty("anyOf")[0].GetProperty("enum").EnumerateArray().Select(fact => fact.GetString()!).ToList();
        Assert.Equal(Vocabularies.Flow.Facts.Order(StringComparer.Ordinal), facts.Where(fact => !fact.StartsWith("not ", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Contains("not draw-due", facts);
    }

    private static string Judged(string kind, string text)
    {
        JsonNode? node;
        try
        {
            var stream = new YamlStream();
            stream.Load(new StringReader(text));
            node = Json(stream.Documents[0].RootNode);
        }
        catch (YamlException fault)
        {
            return fault.Message;
        }

        using var document = JsonDocument.Parse(node?.ToJsonString() ?? "null");
        var result = Schemas[kind].Evaluate(document.RootElement, new() { OutputFormat = OutputFormat.List });
        return result.IsValid ? "" : string.Join('\n', (result.Details ?? []).Where(detail => detail.Errors is not null).Select(detail => $"{detail.InstanceLocation}: {string.Join("; ", detail.Errors!.Values)}").Append("not valid"));
    }

    private static void Read(string kind, string text)
    {
        if (kind == "flow")
        {
            FlowFile.Read("f", text, Vocabularies.Flow);
        }
        else
        {
            RigFile.Read("r", text);
        }
    }

    /// <summary>As an editor takes it: the core schema of YAML 1.2.</summary>
    private static JsonNode? Json(YamlNode node) => node switch
    {
        YamlMappingNode map => new JsonObject(map.Children.Select(pair => KeyValuePair.Create(((YamlScalarNode)pair.Key).Value ?? "", Json(pair.Value)))),
        YamlSequenceNode list => new JsonArray([.. list.Children.Select(Json)]),
        YamlScalarNode { Style: ScalarStyle.Plain, Value: var plain } => plain switch
        {
            null or "" or "null" or "~" => null,
            "true" or "True" or "TRUE" => JsonValue.Create(true),
            "false" or "False" or "FALSE" => JsonValue.Create(false),
            _ when Number().IsMatch(plain) => JsonValue.Create(double.Parse(plain, CultureInfo.InvariantCulture)),
            _ => JsonValue.Create(plain),
        },
        YamlScalarNode scalar => JsonValue.Create(scalar.Value),
        _ => null,
    };

    private static IEnumerable<string> Files(params string[] folder) =>
        Directory.EnumerateFiles(Path.Combine([RepositoryFiles.Root, .. folder]), "*.yaml").Order(StringComparer.Ordinal);

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Number();

    [GeneratedRegex(@"^\| (?<keys>`[a-z-]+`(, `[a-z-]+`)*) \| ", RegexOptions.Multiline)]
    private static partial Regex KeyRow();

    [GeneratedRegex("^\\| `(?<key>[a-z. ]+)` \\| ", RegexOptions.Multiline)]
    private static partial Regex RigKeyRow();

    [GeneratedRegex("`(?<key>[a-z-]+)`")]
    private static partial Regex InTicks();
}
