using System.Text.Json;
using Panside.Reckon;

namespace Panside.Tests.Reckon;

/// <summary>The object that programs get.</summary>
public class JsonTests
{
    public static TheoryData<string> Names => [.. Calculations.All.Select(calculation => calculation.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void It_holds_the_name_the_inputs_the_results_and_what_they_stand_on(string name)
    {
        var calculation = Calculations.All.Single(one => one.Name == name);
        var ran = Captured.Run(["reckon", name, .. Examples.Words(calculation.Example), "--json"]);
        using var document = JsonDocument.Parse(ran.Out);
        var root = document.RootElement;
        Assert.Equal(name, root.GetProperty("name").GetString());
        Assert.All(root.GetProperty("inputs").EnumerateObject(), input => Assert.True(
            input.Value.GetProperty("value").ValueKind == JsonValueKind.String || input.Value.TryGetProperty("unit", out _)));
        Assert.NotEqual(0, root.GetProperty("results").GetArrayLength());
        Assert.All(root.GetProperty("results").EnumerateArray(), result =>
        {
            Assert.NotEqual("", result.GetProperty("name").GetString());
            if (result.TryGetProperty("low", out var low))
            {
                Assert.InRange(result.GetProperty("value").GetDouble(), low.GetDouble(), result.GetProperty("high").GetDouble());
            }
        });
        Assert.All(["method", "source", "range", "does-not-cover"], part => Assert.NotEqual("", root.GetProperty(part).GetString()));
        Assert.Single(ran.Out.TrimEnd('\n').Split('\n'));
    }

    [Fact]
    public void Units_are_those_of_the_stream()
    {
        var ran = Captured.Run("reckon", "draw-point", "--boiling-water", "99.5", "--units", "metric", "--json");
        using var document = JsonDocument.Parse(ran.Out);
        Assert.Equal("degC", document.RootElement.GetProperty("results")[0].GetProperty("unit").GetString());
        Assert.Equal("Brix", document.RootElement.GetProperty("inputs").GetProperty("target").GetProperty("unit").GetString());
    }

    [Fact]
    public void Numbers_are_fine_enough_to_reckon_on()
    {
        var ran = Captured.Run("reckon", "boiling-water", "--pressure", "101.325 kPa", "--units", "metric", "--json");
        using var document = JsonDocument.Parse(ran.Out);
        Assert.Equal(99.9743, document.RootElement.GetProperty("results")[0].GetProperty("value").GetDouble(), 4);
    }
}
