using System.CommandLine;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;
using Panside.Plan;
using Panside.Reckon;

namespace Panside.Commands;

/// <summary><c>panside plan</c>: before lighting, what a tank of sap asks for and gives.</summary>
internal static class PlanCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var command = new Command("plan", "Before lighting: syrup, hours, wood, when to light, when the last charge goes in.");
        (Input Input, Option<string?> Option)[] inputs = [.. PlanTable.Inputs.Select(input => (input, Of(input.Option, input.What + PlanTable.Without(input), input.Example)))];
        var lit = Of("--lit", "the time of lighting, when it is settled", "13:00");
        var end = Of("--end", "the time by which the boil is to be still", "'9 pm'");
        var json = new Option<bool>("--json") { Description = "One JSON object, for programs." };
        foreach (var option in inputs.Select(pair => pair.Option).Concat([lit, end]).Append<Option>(json))
        {
            command.Options.Add(option);
        }

        var rigOptions = new RigOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            var (rigFile, guidance, home) = rigOptions.Read(parsed);
            var rig = Library.Rig(rigFile, Home.Of(home));
            var setting = new Setting(Library.Flow(null), rig, RigOptions.Meant(guidance), Product.Name);
            var typed = inputs.Where(pair => parsed.GetValue(pair.Option) is not null)
                .ToDictionary(pair => pair.Input.Name, pair => parsed.GetValue(pair.Option)!);
            var table = new PlanTable(setting, Clock(lit), Clock(end));
            var given = new Questions(table.Calculation, rig.Units, ask: null).Gather(typed);
            var answer = table.With(Answer.To(table.Calculation, rig.Units, given));
            Console.Out.Write(parsed.GetValue(json) ? ReckonJson.Of(answer) : ReckonText.Of(answer));
            if (!Console.IsOutputRedirected && Clock(lit) is null && Clock(end) is { } by && Past(answer, by) is { } past)
            {
                Console.Out.WriteLine(past);
            }

            return ExitStatus.Done;

            ClockTime? Clock(Option<string?> option) => parsed.GetValue(option) is { } text ? Told(option.Name, text) : null;
        });
        return command;
    }

    /// <summary>To a person at a terminal it is told that the hour is past; what goes into a file is the same at any hour.</summary>
    private static string? Past(Answer answer, ClockTime end)
    {
        var now = TimeProvider.System.GetLocalNow();
        return answer.Result.Figures.FirstOrDefault(figure => figure.Name == "light-by") is { Word: { } word } && ClockTime.Read(word, ofDay: true) is { } light
            ? PlanClock.Past(light, end, new((int)now.TimeOfDay.TotalMinutes, false))
            : null;
    }

    private static Option<string?> Of(string name, string what, string example) => new(name) { Description = what, HelpName = example };

    /// <remarks>There is no clock here that could tell morning from evening.</remarks>
    private static ClockTime Told(string option, string text)
    {
        var time = ClockTime.Read(text, ofDay: true)
            ?? throw new UnusableException($"{option}: '{text}' is no time of day; write it like 21:30, 08:30 or '9:30 pm'.");
        return time.IsEither
            ? throw new UnusableException($"{option}: '{text}' can be in the morning or in the evening; write {time} or {time with { Minutes = time.Minutes + (12 * 60) }}.")
            : time;
    }
}
