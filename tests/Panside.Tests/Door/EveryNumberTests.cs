using CsCheck;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Laws;
using Panside.Plan;
using Panside.Reckon;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Door;

/// <summary>No number ends the program: what a quantity cannot hold or a formula cannot take is refused, by whatever door it comes.</summary>
public class EveryNumberTests
{
    private static readonly int Moments = Thorough.IsAsked ? 60 : 20;

    private static readonly string[] Rigs = ["two-by-four-forced.yaml", "two-by-four-natural.yaml"];

    /// <summary>Facts that nobody has, each with a yes after it, at any moment of a boil.</summary>
    [Fact]
    public void A_reading_or_a_deed_on_the_stream_is_answered_whatever_its_number_and_its_yes_too() =>
        Gen.Select(Gen.Int[0, WholeBoil.Lines.Count - 2], Gen.OneOf(Rigs), Said.Fact.Array[4, 10]).Holds(
            (begin, rig, facts) => Answers(rig, begin, facts), cases: Moments);

    [Fact]
    public void A_typed_text_is_answered_whatever_its_number_and_its_yes_too() =>
        Gen.Select(Gen.Int[0, WholeBoil.Lines.Count - 2], Gen.OneOf(Rigs), Said.Typed.Array[4, 10]).Holds(
            (begin, rig, texts) => Answers(rig, begin, [.. texts.Select(text => $"\"text\":{System.Text.Json.JsonSerializer.Serialize(text)}")]), cases: Moments);

    [Theory]
    [InlineData("\"reading\":\"barometer\",\"value\":-1,\"unit\":\"inHg\"", "a pressure is 0 inHg or more")]
    [InlineData("\"reading\":\"station-pressure\",\"value\":-0.001,\"unit\":\"kPa\"", "a pressure is 0 kPa or more")]
    [InlineData("\"reading\":\"draw-temperature\",\"value\":-500,\"unit\":\"degF\"", "a temperature is -459.4 °F or more")]
    [InlineData("\"reading\":\"air-temperature\",\"value\":-273.15,\"unit\":\"degC\"", "a temperature is -273 °C or more")]
    [InlineData("\"reading\":\"sap-brix\",\"value\":-1e-9,\"unit\":\"Brix\"", "sugar is 0 to 100 Brix")]
    [InlineData("\"reading\":\"barometer\",\"value\":27,\"unit\":\"inHg\"", "27.8 to 31.3 inHg")]
    [InlineData("\"reading\":\"tank-volume\",\"value\":-1e-10,\"unit\":\"gal\"", "0 to 35 gal")]
    [InlineData("\"text\":\"barometer -1\"", "a pressure is 0 inHg or more")]
    [InlineData("\"text\":\"draw -500 F\"", "a temperature is -459.4 °F or more")]
    [InlineData("\"text\":\"what if I fire until ٣\"", "is not understood")]
    public void What_a_quantity_cannot_hold_or_a_formula_cannot_take_is_refused_with_what_can_be(string said, string why)
    {
        var run = StreamRun.Of([StreamRun.Tick(0), StreamRun.At(1, said), StreamRun.At(2, "\"answer\":\"yes\"")]);
        Assert.Equal(3, run.Answers.Count);
        Assert.Contains(why, StreamRun.Refusal(run.Answers[1]).GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pressure_that_is_not_reduced_is_refused_as_a_barometer_with_what_to_say_instead()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["rig.yaml"], "rig: high\nunits: us\naltitude: 2200 ft\npan: { length: 48 in, width: 24 in }\nfire: { draft: forced }\n");
        var run = StreamRun.Of([StreamRun.Tick(0), StreamRun.At(1, "\"reading\":\"barometer\",\"value\":27.5,\"unit\":\"inHg\"")], rig: scratch["rig.yaml"]);
        Assert.Contains("say it as 'pressure here'", StreamRun.Refusal(run.Answers[1]).GetProperty("why").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_of_a_table_is_taken_or_left_out_whatever_its_number()
    {
        using var scratch = new Scratch();
        var number = 0;
        Said.Fact.Array[1, 8].Holds(
            facts =>
            {
                var rows = facts.Select((fact, row) => Row(row, fact)).Prepend("at,what,name,value,unit");
                File.WriteAllText(scratch["table.csv"], string.Join('\n', rows) + "\n");
                var ran = Captured.Run("import", scratch["table.csv"], "--home", scratch.Folder, "--journal", scratch[$"{number++}.jsonl"]);
                Assert.True(ran.Status is ExitStatus.Done or ExitStatus.Wrong or ExitStatus.Unusable, ran.Errors);
            },
            cases: 40);
    }

    [Fact]
    public void A_calculation_gives_its_result_or_a_sentence_whatever_its_numbers() =>
        Gen.OneOf(Calculations.All.ToArray()).SelectMany(calculation => Options(calculation.Inputs).Select(options => (calculation.Name, options))).Holds(
            (name, options) =>
            {
                var ran = Captured.Run(["reckon", name, .. options]);
                Assert.True(ran.Status is ExitStatus.Done or ExitStatus.Unusable && ran.Errors.Length > 0 == (ran.Status == ExitStatus.Unusable), ran.Errors);
            },
            cases: 400);

    [Fact]
    public void A_plan_gives_its_figures_or_a_sentence_whatever_its_numbers() =>
        Options(PlanTable.Inputs).Select(Said.Typed, (options, lit) => (string[])[.. options, "--lit=" + lit.Replace("what if I fire until ", "", StringComparison.Ordinal)]).Holds(
            options =>
            {
                var ran = Captured.Run(["plan", .. options]);
                Assert.True(ran.Status is ExitStatus.Done or ExitStatus.Unusable, ran.Errors);
            },
            cases: 40);

    [Fact]
    public void A_measure_that_its_quantity_cannot_hold_cannot_be_made() =>
        Gen.Select(Gen.OneOf(Said.Number, Gen.OneOf(double.NaN, double.PositiveInfinity, double.NegativeInfinity)), Gen.Enum<Unit>()).Holds(
            (value, unit) =>
            {
                if (Measure.Of(value, unit) is not { } measure)
                {
                    Assert.NotNull(Measure.Fault(value, unit));
                    Assert.True(double.Abs(value) is > 1e9 and < 1e18 || Xunit.Record.Exception(() => _ = new Measure(value, unit)) is ArgumentOutOfRangeException);
                    return;
                }

                foreach (var units in UnitSystem.All)
                {
                    foreach (var to in Enum.GetValues<Unit>().Where(to => to.Kind() == unit.Kind() && (to.Kind() < Dimension.Time || to == unit)))
                    {
                        Assert.True(double.IsFinite(units.Convert(units.Convert(measure, to), unit).Value));
                    }
                }
            },
            cases: 3000);

    /// <summary>No text of the program's own source can make a number of digits that the number's parser does not know.</summary>
    [Fact]
    public void Every_pattern_reads_the_ten_digits_and_no_others()
    {
        var sources = Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src"), "*.cs", SearchOption.AllDirectories)
            .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal));
        Assert.DoesNotContain(sources, path => File.ReadAllText(path) is var text
            && text.Contains("Regex(", StringComparison.Ordinal) && text.Contains("\\d", StringComparison.Ordinal));
    }

    private static void Answers(string rig, int begin, string[] facts)
    {
        var setting = new Setting(Library.Flow(null), RigFile.Read(rig, Library.BuiltIn("rigs/" + rig)), Guidance.Beginner, "panside test");
        var session = new Session(setting);
        foreach (var line in WholeBoil.Lines.Take(begin))
        {
            session.Hear(LineReader.Read(line));
        }

        foreach (var line in facts.SelectMany((fact, number) => new[] { StreamRun.At(106 + number, fact), StreamRun.At(106 + number, "\"answer\":\"yes\"") }).Append(StreamRun.Tick(130)))
        {
            Assert.All(session.Hear(LineReader.Read(line)), answer => Assert.NotEmpty(LineWriter.Write(answer)));
        }
    }

    private static Gen<string[]> Options(IReadOnlyList<Input> inputs) => inputs
        .Select(input => Gen.Frequency((4, Said.Option(input).Select(value => $"{input.Option}={value}")), (1, Gen.Const(""))))
        .Aggregate(Gen.Const(Array.Empty<string>()), (all, next) => all.Select(next, (before, one) => one.Length > 0 ? [.. before, one] : before));

    private static string Row(int number, string fact)
    {
        using var json = System.Text.Json.JsonDocument.Parse("{" + fact + "}");
        var root = json.RootElement;
        var kind = root.TryGetProperty("reading", out var name) ? "reading" : "did";
        name = root.GetProperty(kind);
        return $"2031-03-08T17:{number:00}:00-05:00,{kind},{name.GetString()},{root.GetProperty("value").GetRawText()},{root.GetProperty("unit").GetString()}";
    }
}
