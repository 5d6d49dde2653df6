namespace Panside.Workshop.Commands;

/// <summary>Writes a table.</summary>
internal static class Rows
{
    /// <summary>Each row as a line on standard output.</summary>
    public static int Tell(IEnumerable<string> rows)
    {
        foreach (var row in rows)
        {
            Console.Out.WriteLine(row);
        }

        return ExitStatus.Done;
    }
}
