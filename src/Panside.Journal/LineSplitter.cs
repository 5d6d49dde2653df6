namespace Panside.Journal;

/// <summary>A line as the disk has it.</summary>
/// <param name="Bytes">Its bytes, without the line break.</param>
/// <param name="Text">What can be read of them.</param>
/// <param name="HasEnd">Whether a line break follows.</param>
public readonly record struct SplitLine(byte[] Bytes, string Text, bool HasEnd);

/// <summary>Makes lines of a record's bytes as they come, with no more than one line in memory.</summary>
internal sealed class LineSplitter
{
    /// <summary>Of a longer line only the beginning is kept, which is then no whole one: no line of a session is so long.</summary>
    private const int LongestKept = 4 * 1024 * 1024;

    private readonly List<byte> _open = [];
    private bool _isBegun;
    private bool _hasByte;

    /// <summary>Takes bytes.</summary>
    /// <returns>The lines that end in them.</returns>
    public IReadOnlyList<SplitLine> Take(ReadOnlySpan<byte> bytes)
    {
        var lines = new List<SplitLine>();
        while (!bytes.IsEmpty)
        {
            var end = bytes.IndexOf((byte)'\n');
            var part = end < 0 ? bytes : bytes[..end];
            _open.AddRange(part[..int.Min(part.Length, LongestKept - _open.Count)]);
            _hasByte = end < 0;
            if (end < 0)
            {
                break;
            }

            lines.Add(Close(hasEnd: true));
            bytes = bytes[(end + 1)..];
        }

        return lines;
    }

    /// <summary>What stands behind the last line break; null where nothing does.</summary>
    public SplitLine? End() => _hasByte ? Close(hasEnd: false) : null;

    private SplitLine Close(bool hasEnd)
    {
        var all = _open.ToArray();
        var bytes = !_isBegun && all.AsSpan().StartsWith("\uFEFF"u8) ? all[3..] : all;
        (_isBegun, _hasByte) = (true, false);
        _open.Clear();
        return new(bytes, RecordBytes.Line(bytes), hasEnd);
    }
}
