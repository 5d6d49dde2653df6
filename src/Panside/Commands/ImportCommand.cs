using System.CommandLine;
using System.Text;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Reporting;

namespace Panside.Commands;

/// <summary><c>panside import</c>: makes a record from readings in a table, so that a logger's or a notebook's boil is in the book.</summary>
internal static class ImportCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "Rows of at,what,name,value,unit (and is, for what was poured), as 'panside report --format csv' writes them; the first row names the columns." };
        var command = new Command("import", "Makes a session's record from readings, observations and deeds in a CSV file.") { file };
        var guided = new GuidedOptions().AddTo(command);
        command.SetAction(parsed => Run(parsed.GetValue(file)!, guided.Read(parsed)));
        return command;
    }

    private static int Run(string path, GuidedArguments arguments)
    {
        if (arguments.Journal is { } journal && File.Exists(journal))
        {
            throw new UnusableException($"{journal}: exists. Name a new record: what is brought in is never mixed with what was said.");
        }

        // Every row is read before the first one is taken: a faulty table leaves nothing behind.
        var lines = Lines(path);
        using var session = Opening.Open(arguments with { Imported = true });
        var told = 0;
        foreach (var (line, raw, number) in lines)
        {
            told += Hear(session, line, raw, $"{path}:{number}") ? 1 : 0;
        }

        End(session, lines[^1].Line.At);
        if (session.Trouble is { } trouble)
        {
            throw new UnusableException(trouble);
        }

        Console.Out.WriteLine($"{told} of {lines.Count} rows taken into {session.Path}");
        return told == lines.Count ? ExitStatus.Done : ExitStatus.Wrong;
    }

    /// <summary>Who wrote a value down has seen it: a question is answered with yes. What no rig could have is left out and told.</summary>
    private static bool Hear(RecordedSession session, LineIn line, string raw, string place)
    {
        var answers = session.Hear(line, raw);
        if (answers.OfType<QuestionLine>().Any())
        {
            answers = session.Hear(new Answer(line.At, AnswerWords.Yes));
        }

        if (answers.OfType<RefusedLine>().FirstOrDefault() is { } refused)
        {
            Console.Error.WriteLine($"{place}:1: {Describe.Line(line)}: {refused.Why} The row is left out.");
            return false;
        }

        return true;
    }

    /// <summary>A table that ends ends the boil; whether it was left safe, no table can say, and the outcome says that it was not judged.</summary>
    private static void End(RecordedSession session, Moment at)
    {
        if (!session.State.IsOver)
        {
            session.Hear(new Text(at, "note brought in from a table"));
            session.Hear(new Did(at, DeedName.Leave, null));
        }

        if (!session.State.IsOver)
        {
            session.Hear(new Answer(at, AnswerWords.Yes));
        }
    }

    private static List<(LineIn Line, string Raw, int Number)> Lines(string path)
    {
        var bytes = GivenFile.Read(path);
        if (!System.Text.Unicode.Utf8.IsValid(bytes))
        {
            throw new UnusableException($"{path}: is no UTF-8 text. Save it as CSV in UTF-8.");
        }

        var rows = Csv.Rows(Encoding.UTF8.GetString(bytes).TrimStart('\uFEFF').ReplaceLineEndings("\n")).ToList();
        var columns = rows.Count > 0 && rows[0].Cells.SequenceEqual(FactRows.PouredColumns) ? FactRows.PouredColumns : FactRows.Columns;
        if (rows.Count == 0 || !rows[0].Cells.SequenceEqual(columns))
        {
            throw new UnusableException($"{path}:1:1: the first row does not name the columns, expected {string.Join(',', FactRows.Columns)}");
        }

        var faults = new List<Fault>();
        var lines = new List<(LineIn Line, string Raw, int Number)>();
        foreach (var (number, cells) in rows.Skip(1))
        {
            var (line, raw) = FactRows.Line(cells);
            if (cells.Count > columns.Count)
            {
                faults.Add(new(path, number, 1, $"the row has {cells.Count} cells", $"{columns.Count} at most; quote a cell with a comma in it"));
            }
            else if (line is Unreadable unreadable)
            {
                faults.Add(new(path, number, 1, unreadable.Why.Split(". Expected")[0].TrimEnd('.'), Expected(unreadable.Why)));
            }
            else if (lines.Count > 0 && line.At.Time < lines[^1].Line.At.Time)
            {
                faults.Add(new(path, number, 1, $"the time goes back, from {lines[^1].Line.At.Written} to {line.At.Written}", "rows in order of time"));
            }
            else
            {
                lines.Add((line, raw, number));
            }
        }

        if (faults.Count == 0 && lines.Count == 0)
        {
            faults.Add(new(path, 1, 1, "there is no row under the names", "at least one reading"));
        }

        return faults.Count == 0 ? lines : throw new FaultyFileException(faults);
    }

    private static string Expected(string why) =>
        why.Split(". Expected ") is [_, var expected] ? expected.TrimEnd('.') : $"a row of {string.Join(',', FactRows.Columns)} with the names and units of the stream";
}
