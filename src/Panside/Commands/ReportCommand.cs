using System.CommandLine;
using Panside.Reporting;

namespace Panside.Commands;

/// <summary><c>panside report</c>: tells one session as a document.</summary>
internal static class ReportCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The session's record." };
        var format = new Option<string>("--format") { Description = "md (Markdown), html (one file with charts, to print), csv (readings, one a line).", DefaultValueFactory = _ => "md", HelpName = "FORM" };
        var flow = new Option<string?>("--flow") { Description = "The flow that it was made with. Without it: the built-in flow for a divided pan.", HelpName = "FILE" };
        format.AcceptOnlyFromAmong("md", "html", "csv");
        var command = new Command("report", "Tells one session as a document: batch sheet, charts, what happened; or its readings as CSV.") { file, format, flow };
        command.SetAction(parsed =>
        {
            var path = parsed.GetValue(file)!;
            GivenFile.DemandToHear(path);
            using var progress = new Progress("Reading the record", Console.Error, TimeProvider.System);
            var story = StoryTeller.Of(RecordSetting.Told(path, parsed.GetValue(flow), Console.Error), GivenFile.Lines(path, progress.Tell))
                ?? throw new UnusableException($"{path}: holds no line with a time; there is nothing to tell.");
            Console.Out.Write(parsed.GetValue(format) switch
            {
                "html" => HtmlPages.Of(BoilReport.Of(story)),
                "csv" => FactRows.Of(story),
                _ => MarkdownPages.Of(BoilReport.Of(story)),
            });
            return ExitStatus.Done;
        });
        return command;
    }
}
