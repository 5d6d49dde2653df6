using System.Text;
using Panside.Guide.Lines;
using Panside.Reporting;

namespace Panside.Fuzz.Targets;

/// <summary>A table that is brought in: its rows, their lines, and what a session makes of them.</summary>
internal sealed class TableTrial(int seed, long number) : ITrial
{
    private const int RowsAtMost = 12;

    private readonly SessionTrial _session = new(SessionTrial.Line, seed, number);

    /// <inheritdoc/>
    public void Try(byte[] input)
    {
        var rows = Csv.Rows(Encoding.UTF8.GetString(input).ReplaceLineEndings("\n")).ToList();
        var again = Csv.Rows(Csv.Of(rows.Select(row => row.Cells))).Select(row => row.Cells).ToList();
        if (!rows.Select(row => row.Cells).Zip(again).All(pair => pair.First.SequenceEqual(pair.Second)) || rows.Count != again.Count)
        {
            throw new InvalidOperationException("A table that was written is read otherwise.");
        }

        foreach (var (_, cells) in rows.Skip(1).Take(RowsAtMost))
        {
            var (line, _) = FactRows.Line(cells);
            _session.Hear(line is Unreadable { Stated: not null } or not Unreadable ? line : new Unreadable(null, "x", null));
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _session.Dispose();
}
