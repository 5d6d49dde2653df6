using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Panside.Guide.Measures;
using Panside.Reckon;

namespace Panside.Commands;

/// <summary><c>panside reckon NAME</c>: one calculation with its inputs, result, method and source.</summary>
internal static class ReckonCommand
{
    /// <summary>The command, with a command of its own for each calculation.</summary>
    public static Command Create()
    {
        var command = new Command("reckon", "One calculation: the draw point, a hydrometer's reading, a yield and the rest.");
        foreach (var calculation in Calculations.All)
        {
            command.Subcommands.Add(Of(calculation));
        }

        command.Options.Add(new HelpOption { Action = new Saying(ReckonHelp.List) });
        command.SetAction(_ => Say(ReckonHelp.List()));
        return command;
    }

    private static Command Of(Calculation calculation)
    {
        var units = new Option<string>("--units") { Description = "us, metric or imperial.", DefaultValueFactory = _ => "us" };
        units.AcceptOnlyFromAmong([.. UnitSystem.All.Select(system => system.Code)]);
        var json = new Option<bool>("--json") { Description = "One JSON object, for programs." };
        (Input Input, Option<string?> Option)[] inputs =
        [
            .. calculation.Inputs.Select(input => (input, new Option<string?>(input.Option) { Description = input.What, HelpName = input.Example })),
        ];
        var command = new Command(calculation.Name, calculation.Help) { units, json };
        foreach (var (_, option) in inputs)
        {
            command.Options.Add(option);
        }

        command.Options.Add(new HelpOption { Action = new Saying(() => ReckonHelp.Of(calculation)) });
        command.SetAction(parsed =>
        {
            var system = UnitSystem.All.First(one => one.Code == parsed.GetValue(units));
            var typed = inputs.Where(pair => parsed.GetValue(pair.Option) is not null)
                .ToDictionary(pair => pair.Input.Name, pair => parsed.GetValue(pair.Option)!);
            var given = new Questions(calculation, system, Console.IsInputRedirected ? null : Ask).Gather(typed);
            var answer = Answer.To(calculation, system, given);
            return Say(parsed.GetValue(json) ? ReckonJson.Of(answer) : ReckonText.Of(answer));
        });
        return command;
    }

    private static int Say(string text)
    {
        Console.Out.Write(text);
        return ExitStatus.Done;
    }

    /// <remarks>Questions are words, so standard output stays free for the values.</remarks>
    private static string? Ask(string question)
    {
        Console.Error.Write(question);
        return Console.In.ReadLine();
    }

    private sealed class Saying(Func<string> text) : SynchronousCommandLineAction
    {
        public override int Invoke(ParseResult parseResult) => Say(text());
    }
}
