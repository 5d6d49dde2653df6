using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Plans;

/// <summary>A boil before it is lit: figures that hang together, and what is not believed.</summary>
public sealed partial class PlanTests : IDisposable
{
    private readonly Scratch _scratch = new();

    [Fact]
    public void The_page_shows_what_the_program_prints()
    {
        var blocks = Block().Matches(RepositoryFiles.Read("docs/plan.md"));
        Assert.NotEmpty(blocks);
        Assert.All(blocks, block =>
        {
            var ran = Run(block.Groups["command"].Value);
            Assert.Equal(block.Groups["prints"].Value, ran.Out + ran.Errors);
        });
    }

    [Fact]
    public void More_sap_gives_more_syrup_takes_more_wood_and_ends_later()
    {
        var (less, more) = (Planned("--sap 45gal --sugar 2 --lit 12:00"), Planned("--sap 55gal --sugar 2 --lit 12:00"));
        Assert.All(["syrup", "hours", "wood", "last-charge-after"], name => Assert.True(less[name].Value < more[name].Value, name));
        Assert.True(Minutes(less["still"]) < Minutes(more["still"]));
    }

    [Fact]
    public void Sweeter_sap_gives_more_syrup_in_the_same_time()
    {
        var (thin, sweet) = (Planned("--sap 90gal --sugar 2 --pan-sugar 20"), Planned("--sap 90gal --sugar 3 --pan-sugar 20"));
        Assert.True(thin["syrup"].Value < sweet["syrup"].Value);
        Assert.True(thin["of-it-drawn"].Value < sweet["of-it-drawn"].Value);

        // Syrup that is drawn is sap that need not be boiled away.
        Assert.InRange(sweet["hours"].Value, thin["hours"].Value - 0.2, thin["hours"].Value);
    }

    [Fact]
    public void The_syrup_is_what_is_drawn_and_what_stays_and_closes_on_the_sugar_of_the_sap()
    {
        var plan = Planned("--sap 60gal --sugar 2");
        Assert.Equal(plan["syrup"].Value, plan["of-it-drawn"].Value + plan["of-it-in-the-pan"].Value, 0.1);

        // A pan of 7.5 gal and the sap less what stays in the tank, at 86 parts of sap for one of syrup and each Brix.
        Assert.InRange(plan["syrup"].Value, (60 + 7.5 - 5) * 2 / 86 * 0.95, (60 + 7.5) * 2 / 86 * 1.05);
    }

    [Fact]
    public void The_latest_lighting_and_the_longest_hours_make_the_wanted_end()
    {
        var plan = Planned("--sap 60gal --sugar 2 --end 21:00");
        var end = Minutes(plan["light-by"]) + (plan["hours"].High * 60);
        Assert.InRange(end, (21 * 60) - 5.01, 21 * 60);
        Assert.Contains(plan["still-latest"].Word, new[] { "20:55", "21:00" });
    }

    [Fact]
    public void A_lighting_and_the_hours_make_the_end()
    {
        var plan = Planned("--sap 60gal --sugar 2 --lit 10:00");
        Assert.Equal(600 + (plan["hours"].Value * 60), Minutes(plan["still"]), 2.6);
        Assert.Equal(600 + plan["last-charge-after"].Value, Minutes(plan["last-charge"]), 0.01);
        Assert.True(Minutes(plan["last-charge"]) < Minutes(plan["still"]));
    }

    [Theory]
    [InlineData("08:00", "ends in time")]
    [InlineData("12:00", "can end too late")]
    [InlineData("19:00", "too late for 20:00")]
    public void A_lighting_is_held_against_the_wanted_end(string lit, string said) =>
        Assert.Contains(said, Run($"panside plan --sap 60gal --sugar 2 --lit {lit} --end 20:00").Out, StringComparison.Ordinal);

    [Fact]
    public void A_lighting_on_the_day_before_is_said() =>
        Assert.Contains("the day before, 95 of 100", Run("panside plan --sap 60gal --sugar 2 --end '1 am'").Out, StringComparison.Ordinal);

    [Theory]
    [InlineData("beginner", 5, "common practice")]
    [InlineData("practised", 3, "On the season's first shutdown keep 5.0 gal")]
    public void S5_the_reserve_is_never_less_than_common_practice(string guidance, double gallons, string said)
    {
        var command = $"--sap 60gal --sugar 2 --guidance {guidance}";
        Assert.True(Planned(command)["reserve"].Value >= gallons);
        Assert.Contains(said, Run("panside plan " + command).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Sugar_that_nobody_measured_is_assumed_and_widens_the_syrup()
    {
        var ran = Run("panside plan --sap 60gal");
        Assert.Contains("about 2 Brix is assumed", ran.Out, StringComparison.Ordinal);
        Assert.Contains("sugar 2 Brix (usual)", ran.Out, StringComparison.Ordinal);
        var (measured, assumed) = (Planned("--sap 60gal --sugar 2")["syrup"], Planned("--sap 60gal")["syrup"]);
        Assert.True(assumed.High - assumed.Low > 1.5 * (measured.High - measured.Low));
    }

    [Fact]
    public void A_rig_of_ones_own_speaks_its_own_units()
    {
        File.WriteAllText(
            _scratch["rig.yaml"],
            RepositoryFiles.Read("flows/rigs/two-by-four-natural.yaml").Replace("units: us", "units: metric", StringComparison.Ordinal));
        var plan = Planned($"--sap 200 --sugar 2 --home {_scratch.Folder}");
        Assert.Equal(("L", "kg"), (plan["syrup"].Unit, plan["wood"].Unit));
        Assert.InRange(plan["syrup"].Value, 4, 6);
    }

    [Fact]
    public void The_same_question_has_the_same_answer() => Assert.Equal(Run("panside plan --sap 60gal"), Run("panside plan --sap 60gal"));

    [Theory]
    [InlineData("", "--sap is missing")]
    [InlineData("--sap warm", "'60 gal'")]
    [InlineData("--sap 60lb", "no unit of volume")]
    [InlineData("--sap 0", "outside")]
    [InlineData("--sap=-5gal", "Take the dash away")]
    [InlineData("--sap 3gal", "5 gal that the shutdown of this rig wants")]
    [InlineData("--sap 2500gal", "more than 48 hours")]
    [InlineData("--sap 60gal --sugar 66", "0.5 to 20 Brix")]
    [InlineData("--sap 60gal --sugar 2gal", "'gal'")]
    [InlineData("--sap 60gal --pan-sugar 90", "0 to 66 Brix")]
    [InlineData("--sap 60gal --end 25:00", "no time of day")]
    [InlineData("--sap 60gal --end nine", "write 09:00 or 21:00")]
    [InlineData("--sap 60gal --lit noonish", "no time of day")]
    [InlineData("--sap 60gal --rig nowhere.yaml", "nowhere.yaml")]
    [InlineData("--sap 60gal --guidance reckless", "beginner")]
    [InlineData("--sap 60gal --until 9", "--until")]
    public void What_cannot_be_planned_is_refused_in_a_sentence(string arguments, string said)
    {
        var ran = Run("panside plan " + arguments);
        Assert.Equal((ExitStatus.Unusable, ""), (ran.Status, ran.Out));
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ran.Errors, StringComparison.Ordinal);
    }

    public void Dispose() => _scratch.Dispose();

    /// <remarks>A home folder of its own, so that no rig of whoever runs the tests comes into it.</remarks>
    private Captured Run(string command)
    {
        string[] words = Examples.Words(command)[1..];
        return Captured.Run(words.Contains("--home") ? words : [.. words, "--home", _scratch["none"]]);
    }

    private Dictionary<string, Row> Planned(string arguments)
    {
        var ran = Run($"panside plan {arguments} --json");
        Assert.Equal((ExitStatus.Done, ""), (ran.Status, ran.Errors));
        using var document = JsonDocument.Parse(ran.Out);
        Assert.Equal("plan", document.RootElement.GetProperty("name").GetString());
        return document.RootElement.GetProperty("results").EnumerateArray()
            .ToDictionary(result => result.GetProperty("name").GetString()!, Row.Of);
    }

    private static double Minutes(Row row) => TimeSpan.Parse(row.Word!, CultureInfo.InvariantCulture).TotalMinutes;

    [GeneratedRegex(@"^```console\n\$ (?<command>panside .*)\n(?<prints>(?:(?!```).*\n)*)```$", RegexOptions.Multiline)]
    private static partial Regex Block();

    private sealed record Row(double Value, double Low, double High, string? Unit, string? Word)
    {
        public static Row Of(JsonElement result)
        {
            double Number(string name) => result.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : double.NaN;
            var value = result.GetProperty("value");
            var row = new Row(
                Number("value"), Number("low"), Number("high"),
                result.TryGetProperty("unit", out var unit) ? unit.GetString() : null,
                value.ValueKind == JsonValueKind.String ? value.GetString() : null);
            Assert.True(double.IsNaN(row.Low) || (row.Low <= row.Value && row.Value <= row.High));
            return row;
        }
    }
}
