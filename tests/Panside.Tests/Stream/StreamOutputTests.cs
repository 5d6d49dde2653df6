using System.Text.Json;
using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Stream;

/// <summary>Every line out of the stream: its keys, its order, its time.</summary>
public class StreamOutputTests
{
    private static readonly string[] Kinds =
        ["session", "phase", "prompt", "advice", "caution", "forecast", "heard", "question", "refused", "told", "over"];

    private static readonly Lazy<StreamRun> Whole = new(() => Of(WholeBoil.Lines));

    [Fact]
    public void A_whole_boil_ends_safe_with_exit_0()
    {
        Assert.Equal(0, Whole.Value.Exit);
        var over = Assert.Single(Whole.Value.All, line => Is(line, "over")).GetProperty("over");
        Assert.True(over.GetProperty("safe").GetBoolean());
        foreach (var key in new[] { "sap-used", "syrup-made", "syrup-brix", "wood", "minutes", "pan-volume", "tank-volume" })
        {
            var value = over.GetProperty(key);
            Assert.True(value.ValueKind == JsonValueKind.Null
                || (value.GetProperty("value").ValueKind == JsonValueKind.Number && UnitNames.FromCode(value.GetProperty("unit").GetString()!) is not null));
        }
    }

    [Fact]
    public void Every_line_has_a_time_a_number_and_exactly_one_key()
    {
        var number = 0;
        foreach (var line in Whole.Value.All)
        {
            Assert.Equal(++number, line.GetProperty("seq").GetInt32());
            Assert.NotNull(Moment.Read(line.GetProperty("at").GetString()!));
            Assert.Single(line.EnumerateObject(), key => key.Name is not ("at" or "seq"));
            Assert.Contains(Kinds, kind => Is(line, kind));
        }
    }

    [Fact]
    public void Every_kind_of_line_comes_in_a_whole_boil() =>
        Assert.All(Kinds, kind => Assert.Contains(Whole.Value.All, line => Is(line, kind)));

    [Fact]
    public void Every_answer_is_closed_by_ready_at_its_own_time()
    {
        Assert.Equal(WholeBoil.Lines.Count, Whole.Value.Ready.Count);
        foreach (var (answer, ready) in Whole.Value.Answers.Zip(Whole.Value.Ready))
        {
            Assert.All(answer, line => Assert.Equal(ready.GetProperty("at").GetString(), line.GetProperty("at").GetString()));
        }
    }

    [Fact]
    public void The_phases_come_in_the_order_of_a_boil()
    {
        var phases = Whole.Value.All.Where(line => Is(line, "phase")).Select(line => line.GetProperty("phase").GetString()).ToList();
        Assert.Equal(
            ["start-up", "steady-boil", "draw-off", "steady-boil", "emergency", "steady-boil", "shutdown", "after", "over"],
            phases);
    }

    [Fact]
    public void Prompts_ask_for_something_that_can_be_said()
    {
        foreach (var prompt in Whole.Value.All.Where(line => Is(line, "prompt")).Select(line => line.GetProperty("prompt")))
        {
            var ask = prompt.GetProperty("ask").GetString()!;
            Assert.True(ask == "confirm" || KnownReadings.BuiltIn.Find(ask) is not null || ObservationName.FromCode(ask) is not null);
            Assert.Equal(KnownReadings.BuiltIn.Find(ask) is not null, prompt.TryGetProperty("unit", out _));
            Assert.NotEmpty(prompt.GetProperty("step").GetString()!);
            Assert.NotEmpty(prompt.GetProperty("text").GetString()!);
        }
    }

    [Fact]
    public void Advice_names_an_action_and_an_urgency_and_says_why()
    {
        foreach (var advice in Whole.Value.All.Where(line => Is(line, "advice")).Select(line => line.GetProperty("advice")))
        {
            Assert.Contains(advice.GetProperty("action").GetString(), Actions.All);
            Assert.Contains(advice.GetProperty("urgency").GetString(), Urgencies.All);
            Assert.NotEmpty(advice.GetProperty("text").GetString()!);
            Assert.NotEmpty(advice.GetProperty("because").GetString()!);
        }
    }

    [Fact]
    public void The_advice_of_a_whole_boil_is_there()
    {
        var actions = Whole.Value.All.Where(line => Is(line, "advice")).Select(line => line.GetProperty("advice").GetProperty("action").GetString());
        foreach (var action in new[]
                 {
                     "light-fire", "add-wood", "hold-wood", "open-draw", "close-draw", "flood-pan", "spread-coals", "cool-pan", "cover-pan", "stay",
                     "clear-to-leave",
                 })
        {
            Assert.Contains(action, actions);
        }
    }

    [Fact]
    public void Every_forecast_comes_with_its_band_in_order_or_with_nulls()
    {
        var forecasts = Whole.Value.All.Where(line => Is(line, "forecast")).Select(line => line.GetProperty("forecast")).ToList();
        foreach (var name in Forecasts.Names)
        {
            var one = forecasts.Where(forecast => forecast.GetProperty("name").GetString() == name).ToList();
            Assert.Equal(JsonValueKind.Null, one[0].GetProperty("p50").ValueKind);
            Assert.Contains(one, forecast => forecast.GetProperty("p50").ValueKind == JsonValueKind.Number);
            foreach (var band in one.Where(forecast => forecast.GetProperty("p50").ValueKind == JsonValueKind.Number))
            {
                Assert.True(band.GetProperty("p5").GetDouble() <= band.GetProperty("p50").GetDouble());
                Assert.True(band.GetProperty("p50").GetDouble() <= band.GetProperty("p95").GetDouble());
            }
        }
    }

    [Fact]
    public void A_caution_stands_before_the_prompt_that_it_belongs_to()
    {
        var lines = Whole.Value.All.ToList();
        var caution = lines.FindIndex(line => Is(line, "caution") && line.GetRawText().Contains("Carbon monoxide", StringComparison.Ordinal));
        Assert.Contains("Light the fire", lines[caution + 1].GetRawText(), StringComparison.Ordinal);
        Assert.Equal("light-fire", lines[caution + 2].GetProperty("prompt").GetProperty("step").GetString());
    }

    [Fact]
    public void Heard_has_the_keys_of_a_line_in()
    {
        var heard = Assert.Single(Of([Tick(0), Text(1, "tank 12 1/2")]).Answers[1], line => Is(line, "heard")).GetProperty("heard");
        Assert.Equal("""{"reading":"tank-volume","value":12.5,"unit":"gal"}""", heard.GetRawText());
    }

    [Fact]
    public void The_same_input_twice_gives_the_same_bytes() =>
        Assert.Equal(Whole.Value.Output, Of(WholeBoil.Lines).Output);

    [Fact]
    public void Nothing_is_written_before_the_first_line()
    {
        var run = Of([]);
        Assert.Equal("", run.Output);
        Assert.Equal(130, run.Exit);
    }

    [Fact]
    public void End_of_input_is_an_interruption() => Assert.Equal(130, Of(WholeBoil.Lines.Take(10)).Exit);

    [Fact]
    public void A_metric_rig_is_answered_in_metric_units()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["rig.yaml"], """
            rig: metric
            units: metric
            pan: { length: 120 cm, width: 60 cm }
            fire: { draft: forced }
            """);
        var run = Of([Tick(0), At(1, "\"did\":\"lit-fire\"")], rig: scratch["rig.yaml"]);
        Assert.Contains(run.All, line => Is(line, "forecast") && line.GetProperty("forecast").GetProperty("unit").GetString() == "L");
        Assert.DoesNotContain(run.All, line => Is(line, "forecast") && line.GetProperty("forecast").GetProperty("unit").GetString() == "gal");
    }
}
