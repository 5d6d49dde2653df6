using Panside.Tests.Reckon;
using Panside.Workshop.Commands;

namespace Panside.Tests.Workshop;

/// <summary>What the workshop's command line promises.</summary>
public class WorkshopLineTests
{
    public static TheoryData<string> Names => [.. WorkshopLine.Root().Subcommands.Select(command => command.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void The_help_of_a_command_shows_examples_first(string command)
    {
        var help = Captured.Workshop(command, "--help");
        Assert.Equal((ExitStatus.Done, ""), (help.Status, help.Errors));
        Assert.StartsWith($"Examples:\n  panside-workshop {command}", help.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_example_is_one_that_the_program_takes()
    {
        Assert.Equal(WorkshopLine.Root().Subcommands.Select(command => command.Name).Append(WorkshopLine.Name).Order(), WorkshopExamples.All.Keys.Order());
        foreach (var line in WorkshopExamples.All.Values.SelectMany(examples => examples).Select(example => example.Line))
        {
            var words = Examples.Words(line);
            Assert.Equal(WorkshopLine.Name, words[0]);
            Assert.Empty(WorkshopLine.Root().Parse([.. words[1..]]).Errors);
        }
    }

    [Theory]
    [InlineData("--count 0: expected how many boils", "judge", "--count", "0")]
    [InlineData("no-such-rig.yaml", "judge", "--count", "1", "--rig", "no-such-rig.yaml")]
    [InlineData("no-such-rig.yaml", "learned", "--count", "1", "--rig", "no-such-rig.yaml")]
    [InlineData("--count 0: expected how many slips", "mistype", "--count", "0")]
    [InlineData("--scenario nowhere", "assure", "--count", "1", "--scenario", "nowhere")]
    [InlineData("no-such-flow.yaml", "lint", "no-such-flow.yaml")]
    [InlineData("'panside-workshop --help' shows the commands", "frobnicate")]
    public void What_cannot_be_used_is_told_in_words(string words, params string[] arguments)
    {
        var told = Captured.Workshop(arguments);
        Assert.Equal((ExitStatus.Unusable, ""), (told.Status, told.Out));
        Assert.Contains(words, told.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void Who_goes_by_habit_burns_what_who_heeds_the_advice_does_not()
    {
        var rig = Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-forced.yaml");
        string[] boil = ["assure", "--count", "1", "--scenario", "float-stuck", "--seed", "1", "--rig", rig];
        var heeded = Captured.Workshop(boil);
        var habit = Captured.Workshop([.. boil, "--habit"]);
        Assert.Equal((ExitStatus.Done, ExitStatus.Done), (heeded.Status, habit.Status));
        Assert.Contains("| float-stuck | 1 | 0 |", heeded.Out, StringComparison.Ordinal);
        Assert.Contains("| float-stuck | 1 | 1 |", habit.Out, StringComparison.Ordinal);
    }
}
