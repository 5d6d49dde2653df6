using Panside.Commands;
using Panside.Reckon;

namespace Panside.Tests.Reckon;

public class ExampleTests
{
    public static TheoryData<string> Commands => [.. Examples.All.Select(example => example.Command)];

    [Theory]
    [MemberData(nameof(Commands))]
    public void An_example_prints_what_the_page_shows_to_the_letter(string command)
    {
        var shown = Examples.All.Single(example => example.Command == command).Prints;
        var ran = Captured.Run(Examples.Words(command)[1..]);
        Assert.Equal(shown, ran.Out + ran.Errors);
        Assert.Equal(ran.Errors.Length == 0 ? ExitStatus.Done : ExitStatus.Unusable, ran.Status);
        Assert.True(ran.Out.Length == 0 || ran.Errors.Length == 0);
    }

    [Fact]
    public void Every_calculation_has_a_section_with_an_example_that_succeeds() =>
        Assert.All(Calculations.All, calculation =>
        {
            Assert.Contains($"\n### {calculation.Name}\n", Examples.Page, StringComparison.Ordinal);
            Assert.Contains(Examples.All, example =>
                example.Command.StartsWith($"panside reckon {calculation.Name} ", StringComparison.Ordinal)
                && example.Prints.Contains("does not cover", StringComparison.Ordinal));
        });

    [Fact]
    public void No_code_block_of_the_pages_goes_unrun() =>
        Assert.Equal(Examples.Page.Split("```").Length / 2, Examples.All.Count);
}
