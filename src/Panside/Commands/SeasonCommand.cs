using System.CommandLine;
using Panside.Reporting;

namespace Panside.Commands;

/// <summary><c>panside season</c>: the book over all sessions of a folder.</summary>
internal static class SeasonCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var folder = new Argument<string?>("FOLDER") { Description = "The folder with the records. Without it: the sessions in the home folder.", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "As JSON, for programs." };
        var csv = new Option<bool>("--csv") { Description = "As CSV, one boil a row." };
        var html = new Option<bool>("--html") { Description = "As one HTML file with charts, to look at and to print." };
        var practice = new Option<bool>("--practice") { Description = "Practice instead of boils: one is never summed with the other." };
        var home = new Option<string?>("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };
        var command = new Command("season", "Sums all sessions of a folder: sap, syrup, yield, hours, wood, rates.") { folder, json, csv, html, practice, home };
        command.SetAction(parsed =>
        {
            if (new[] { json, csv, html }.Where(parsed.GetValue).ToList() is { Count: > 1 } chosen)
            {
                throw new UnusableException($"{string.Join(" and ", chosen.Select(option => option.Name))}: one form at a time.");
            }

            var isPractice = parsed.GetValue(practice);
            var places = Home.Of(parsed.GetValue(home));
            var path = parsed.GetValue(folder) ?? (isPractice ? places.Practice : places.Sessions);
            if (!Directory.Exists(path))
            {
                throw new UnusableException($"{path}: there is no such folder. Name the one with the records, or boil first.");
            }

            var book = SeasonBook.Of(path, isPractice);
            foreach (var fault in book.Unreadable)
            {
                Console.Error.WriteLine(fault);
            }

            Console.Out.Write(parsed.GetValue(json) ? SeasonReport.JsonOf(book, isPractice)
                : parsed.GetValue(csv) ? SeasonReport.CsvOf(book)
                : parsed.GetValue(html) ? HtmlPages.Of(SeasonReport.Of(book.WithTold(path), isPractice))
                : MarkdownPages.Of(SeasonReport.Of(book.WithTold(path), isPractice)));
            return ExitStatus.Done;
        });
        return command;
    }
}
