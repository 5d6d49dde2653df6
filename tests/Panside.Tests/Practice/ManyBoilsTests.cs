using System.Text.Json;
using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

/// <summary>Many boils without a person, as a table and as one JSON object.</summary>
public class ManyBoilsTests
{
    private static readonly string[] Counts = ["boils", "scorched", "near-misses", "clear-too-early", "not-ended"];

    private static readonly Lazy<JsonElement> Schema = new(() => Parsed(RepositoryFiles.Read("docs", "assurance.schema.json")));

    [Fact]
    public void The_object_has_the_shape_that_the_schema_tells_and_its_figures_add_up()
    {
        using var scratch = new Scratch();
        var run = Captured.Run("practice", "--unattended", "--count", "5", "--seed", "3", "--json", "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.Single(run.Out.TrimEnd('\n').Split('\n'));
        var told = Parsed(run.Out);
        Conforms(told, Schema.Value, "$");

        Assert.Equal((5, 3, "advice"), (told.GetProperty("boils").GetInt32(), told.GetProperty("seed").GetInt32(), told.GetProperty("operator").GetString()));
        Assert.Equal(ScenarioLibrary.WithoutPerson.Count, told.GetProperty("scenarios-taken-in-turn").GetInt32());
        var rows = told.GetProperty("scenarios").EnumerateArray().ToList();
        Assert.Equal([.. ScenarioLibrary.WithoutPerson.Take(5).Select(one => one.Name), "all"], rows.Select(row => row.GetProperty("scenario").GetString()!));
        foreach (var count in Counts)
        {
            Assert.Equal(rows[..^1].Sum(row => row.GetProperty(count).GetInt32()), rows[^1].GetProperty(count).GetInt32());
        }

        Assert.Equal(5, rows[^1].GetProperty("boils").GetInt32());
        Assert.Equal(rows[..^1].Max(row => row.GetProperty("alarms-peak").GetInt32()), rows[^1].GetProperty("alarms-peak").GetInt32());
        foreach (var coverage in new[] { "residual-coverage", "still-coverage" })
        {
            // Of single boils each share is 0 or 1, and that of all is their mean.
            var known = rows[..^1].Where(row => row.GetProperty(coverage).ValueKind == JsonValueKind.Number).Select(row => row.GetProperty(coverage).GetDouble()).ToList();
            Assert.All(known, share => Assert.True(share is 0 or 1));
            Assert.Equal(known.Average(), rows[^1].GetProperty(coverage).GetDouble(), 0.001);
        }

        // What single boils tell lies around what all tell.
        foreach (var figure in new[] { "sap-left", "minutes-waited", "alarms-per-ten-minutes" })
        {
            var each = rows[..^1].Select(row => row.GetProperty(figure).GetDouble()).ToList();
            Assert.InRange(rows[^1].GetProperty(figure).GetDouble(), each.Min(), each.Max());
        }
    }

    [Fact]
    public void One_boil_of_it_is_the_boil_that_is_practised_alone()
    {
        using var scratch = new Scratch();
        var rig = Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-forced.yaml");
        var many = Captured.Run("practice", "--unattended", "--count", "1", "--scenario", "last-charge", "--seed", "2", "--json", "--rig", rig, "--home", scratch.Folder);
        var alone = Captured.Run("practice", "--unattended", "--scenario", "last-charge", "--seed", "2", "--rig", rig, "--home", scratch.Folder);
        var row = Parsed(many.Out).GetProperty("scenarios")[0];
        Assert.Equal("last-charge", row.GetProperty("scenario").GetString());
        Assert.Contains($"{double.Round(row.GetProperty("sap-left").GetDouble(), 1):0.#} gal left in the tank", alone.Out, StringComparison.Ordinal);
        Assert.Contains($"safe to leave {double.Round(row.GetProperty("minutes-waited").GetDouble()):0} minutes earlier", alone.Out, StringComparison.Ordinal);
        Assert.Equal(0, row.GetProperty("scorched").GetInt32());
        Assert.Equal(JsonValueKind.Null, row.GetProperty("syrup-error").ValueKind);
    }

    [Fact]
    public void The_table_says_where_there_are_fewer_boils_than_scenarios()
    {
        using var scratch = new Scratch();
        var all = ScenarioLibrary.WithoutPerson.Count;
        var few = Captured.Run("practice", "--unattended", "--count", "1", "--seed", "2", "--home", scratch.Folder).Out;
        Assert.Contains($"Only the first 1 of {all} scenarios were practised", few, StringComparison.Ordinal);
        var one = Captured.Run("practice", "--unattended", "--count", "1", "--scenario", "last-charge", "--home", scratch.Folder).Out;
        Assert.DoesNotContain("Only the first", one, StringComparison.Ordinal);
    }

    private static JsonElement Parsed(string text)
    {
        using var document = JsonDocument.Parse(text);
        return document.RootElement.Clone();
    }

    /// <summary>As much of the schema's language as the schema uses.</summary>
    private static void Conforms(JsonElement value, JsonElement schema, string place)
    {
        if (schema.TryGetProperty("enum", out var words))
        {
            Assert.Contains(words.EnumerateArray(), word => word.ValueEquals(value.GetString()));
            return;
        }

        var types = schema.GetProperty("type") is { ValueKind: JsonValueKind.Array } several
            ? several.EnumerateArray().Select(one => one.GetString()!).ToList()
            : [schema.GetProperty("type").GetString()!];
        Assert.True(types.Any(type => IsOf(value, type)), $"{place} is {value}, expected {string.Join(" or ", types)}");
        switch (value.ValueKind)
        {
            case JsonValueKind.Number:
                Assert.True(!schema.TryGetProperty("minimum", out var low) || value.GetDouble() >= low.GetDouble(), $"{place} is {value}");
                Assert.True(!schema.TryGetProperty("maximum", out var high) || value.GetDouble() <= high.GetDouble(), $"{place} is {value}");
                break;
            case JsonValueKind.Object:
                var names = value.EnumerateObject().Select(one => one.Name).ToList();
                Assert.Equal(schema.GetProperty("required").EnumerateArray().Select(one => one.GetString()!).Order(), names.Order());
                foreach (var one in value.EnumerateObject())
                {
                    Conforms(one.Value, schema.GetProperty("properties").GetProperty(one.Name), $"{place}.{one.Name}");
                }

                break;
            case JsonValueKind.Array:
                Assert.True(value.GetArrayLength() >= schema.GetProperty("minItems").GetInt32(), place);
                foreach (var (index, one) in value.EnumerateArray().Index())
                {
                    Conforms(one, schema.GetProperty("items"), $"{place}[{index}]");
                }

                break;
        }
    }

    private static bool IsOf(JsonElement value, string type) => (type, value.ValueKind) switch
    {
        ("integer", JsonValueKind.Number) => value.TryGetInt64(out _),
        ("number", JsonValueKind.Number) or ("string", JsonValueKind.String) or ("null", JsonValueKind.Null) => true,
        ("object", JsonValueKind.Object) or ("array", JsonValueKind.Array) => true,
        _ => false,
    };
}
