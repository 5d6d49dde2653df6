using System.CommandLine;
using System.Text.Json;
using Panside.Commands;
using Panside.Reckon;
using Panside.Tests.Reckon;

namespace Panside.Tests.CommandLines;

/// <summary>T13: what the command line promises to people, scripts and shells.</summary>
public class CommandLineTests
{
    public static TheoryData<string> Names => [.. CommandLine.Root().Subcommands.Select(command => command.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void T13_the_help_of_a_command_shows_examples_before_anything_that_it_takes(string command)
    {
        var help = Captured.Run(command, "--help");
        Assert.Equal((ExitStatus.Done, ""), (help.Status, help.Errors));
        var examples = help.Out.IndexOf("Example", StringComparison.Ordinal);
        Assert.True(command == "reckon" ? help.Out[..examples].Count(letter => letter == '\n') == 2 : examples == 0, help.Out);
        Assert.Contains($"\n  panside {command}", help.Out.Replace("source <(", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.True(help.Out.Length > 300, help.Out);
    }

    [Fact]
    public void T13_each_example_is_one_that_the_program_takes()
    {
        Assert.Equal(
            CommandLine.Root().Subcommands.Select(command => command.Name).Where(name => name != "reckon").Append(CommandExamples.Alone).Order(),
            CommandExamples.All.Keys.Order());
        foreach (var (command, examples) in CommandExamples.All)
        {
            Assert.NotEmpty(examples);
            foreach (var line in examples.Select(example => example.Line))
            {
                // What the shell does with it stands around it.
                var words = Examples.Words(line.Replace("source <(", "", StringComparison.Ordinal).TrimEnd(')').Split(['>', '|'])[0].Trim());
                Assert.Equal("panside", words[0]);
                Assert.True(command == CommandExamples.Alone || words[1] == command, line);
                Assert.Empty(CommandLine.Root().Parse([.. words[1..]]).Errors);
            }
        }

        Assert.All(Calculations.All, calculation => Assert.Contains("Example:\n  panside reckon " + calculation.Name, ReckonHelp.Of(calculation), StringComparison.Ordinal));
    }

    [Fact]
    public void T13_the_version_is_one_line_on_standard_output()
    {
        var told = Captured.Run("--version");
        Assert.Equal((ExitStatus.Done, ""), (told.Status, told.Errors));
        Assert.Matches("^[0-9]+\\.[0-9]+[^\n]*\n$", told.Out);
    }

    [Fact]
    public void T13_every_exit_status_is_in_the_help_and_on_the_page()
    {
        var help = Captured.Run("--help").Out;
        var page = RepositoryFiles.Read("docs", "command-line.md");
        var named = typeof(ExitStatus).GetFields().Where(field => field.IsLiteral).Select(field => (int)field.GetRawConstantValue()!);
        Assert.Equal(named.Order(), ExitStatus.All.Select(one => one.Code));
        Assert.All(ExitStatus.All, one =>
        {
            Assert.Contains($"  {one.Code,-4} {one.Means}\n", help, StringComparison.Ordinal);
            Assert.Contains($"| {one.Code} | {one.Means} |\n", page, StringComparison.Ordinal);
        });
    }

    [Theory]
    [InlineData("boil", "--plain", "--stream")]
    [InlineData("boil", "--rig", "no-such-rig.yaml")]
    [InlineData("practice", "--speed", "900")]
    [InlineData("check", "no-such-file")]
    [InlineData("replay", "no-such-file")]
    [InlineData("report", "no-such-file")]
    [InlineData("season", "no-such-folder")]
    [InlineData("import", "no-such-file")]
    [InlineData("plan", "--sap", "much")]
    [InlineData("reckon", "draw-point")]
    [InlineData("rig", "--theme", "purple")]
    [InlineData("completion", "no-such-shell")]
    [InlineData("frobnicate")]
    public void T13_what_cannot_be_used_is_told_in_words_on_standard_error_and_nothing_on_standard_output(params string[] arguments)
    {
        var told = Captured.Run(arguments);
        Assert.Equal((ExitStatus.Unusable, ""), (told.Status, told.Out));
        Assert.NotEmpty(told.Errors);
    }

    [Fact]
    public void T13_values_are_on_standard_output_and_nothing_else_is()
    {
        using var scratch = new Scratch();
        var demo = Path.Combine(RepositoryFiles.Root, "demo-sessions", "first-shutdown.jsonl");
        string[][] asked = [["plan", "--sap", "60 gal", "--json", "--home", scratch.Folder], ["reckon", "yield", "--volume", "60 gal", "--brix", "2.1", "--json"]];
        foreach (var told in asked.Select(arguments => Captured.Run(arguments)))
        {
            Assert.Equal((ExitStatus.Done, ""), (told.Status, told.Errors));
            using var value = JsonDocument.Parse(told.Out);
            Assert.Equal(JsonValueKind.Object, value.RootElement.ValueKind);
        }

        var rows = Captured.Run("report", demo, "--format", "csv");
        Assert.Equal(ExitStatus.Done, rows.Status);
        Assert.StartsWith("at,what,name,value,unit", rows.Out, StringComparison.Ordinal);
        Assert.All(rows.Out.TrimEnd('\n').Split('\n'), row => Assert.Equal(4, row.Count(letter => letter == ',')));
    }
}
