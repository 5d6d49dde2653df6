using Panside.Commands;
using Panside.Guide.Yaml;
using Panside.Practice.Scenarios;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

public class ScenarioFileTests
{
    private const string Good = "scenario: one\nsummary: two\nstart:\n  tank: 20 gal\n";

    [Fact]
    public void P_six_starts_and_twenty_five_faults_are_there()
    {
        Assert.True(ScenarioLibrary.All.Select(one => (one.Begins, one.PanBrix, one.TankLiters)).Distinct().Count() >= 6);
        Assert.Equal(Enum.GetValues<Begins>().Length, ScenarioLibrary.All.Select(one => one.Begins).Distinct().Count());
        Assert.True(ScenarioFile.Faults.Count >= 25);
        Assert.Equal(ScenarioLibrary.All.Count, ScenarioLibrary.All.Select(one => one.Name).Distinct().Count());
    }

    [Fact]
    public void Check_finds_nothing_wrong_with_the_built_in_ones()
    {
        var files = Directory.GetFiles(Path.Combine(RepositoryFiles.Root, "flows", "scenarios"), "*.yaml");
        var run = Captured.Run(["check", .. files]);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Out));
        Assert.All(files, file => Assert.Contains(ScenarioLibrary.All, one => one.Name == Path.GetFileNameWithoutExtension(file)));
    }

    [Fact]
    public void The_list_tells_each_scenario_with_its_summary()
    {
        var run = Captured.Run("practice", "--list");
        Assert.Equal(ExitStatus.Done, run.Status);
        Assert.All(ScenarioLibrary.All, one => Assert.Contains(one.Summary, run.Out, StringComparison.Ordinal));
    }

    [Fact]
    public void The_page_on_scenarios_tells_each_fault()
    {
        var page = RepositoryFiles.Read("docs", "scenarios.md");
        Assert.All(ScenarioFile.Faults, fault => Assert.Contains($"| `{fault.Name}` | {fault.Summary} |", page, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(Good + "faults:\n  - { fault: float-stuk }\n", 6, 14)]
    [InlineData(Good + "faults:\n  - { fault: any, after: 40 min, until: 20 min }\n", 6, 41)]
    [InlineData(Good + "rig: big-one\n", 5, 6)]
    [InlineData(Good + "weather:\n  air: 300 degF\n", 6, 8)]
    [InlineData(Good + "danger: true\n", 5, 1)]
    [InlineData("scenario: one\nsummary: two\nstart:\n  tank: 20 lb\n", 4, 9)]
    [InlineData("scenario: one\nsummary: two\nstart:\n  pan: 8 Brix\n", 4, 3)]
    public void A_fault_is_told_with_its_place(string text, int line, int column)
    {
        var faulty = Assert.Throws<FaultyFileException>(() => ScenarioFile.Read("one.yaml", text, ScenarioLibrary.Rigs));
        Assert.Contains($"one.yaml:{line}:{column}: ", faulty.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_scenario_that_is_neither_built_in_nor_a_file_is_refused() =>
        Assert.Equal(ExitStatus.Unusable, Captured.Run("practice", "--unattended", "--scenario", "nowhere").Status);
}
