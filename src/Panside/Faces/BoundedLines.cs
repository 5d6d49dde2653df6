using System.Buffers;
using System.Text;
using Panside.Journal;

namespace Panside.Faces;

/// <summary>
/// Lines of UTF-8, whatever the first bytes look like. A line may be as long as it likes: no more of it is kept than shows that it
/// is too long, so memory does not grow, and who hears it refuses it.
/// </summary>
/// <param name="input">The bytes.</param>
internal sealed class BoundedLines(Stream input) : TextReader
{
    /// <summary>No character takes more bytes for each unit that a text counts.</summary>
    private const int BytesKept = 3 * (LineReader.LongestLine + 1);

    private readonly byte[] _chunk = new byte[16 * 1024];
    private readonly ArrayBufferWriter<byte> _line = new();
    private int _at;
    private int _end;
    private bool _isFirst = true;

    /// <summary>The next line without its end; null where there is none.</summary>
    public override string? ReadLine()
    {
        _line.ResetWrittenCount();
        var isBegun = false;
        while (true)
        {
            if (_at == _end)
            {
                (_at, _end) = (0, input.Read(_chunk));
                if (_end == 0)
                {
                    return isBegun ? Text() : null;
                }
            }

            isBegun = true;
            var rest = _chunk.AsSpan(_at, _end - _at);
            var length = rest.IndexOf((byte)'\n');
            Keep(length < 0 ? rest : rest[..length]);
            _at += length < 0 ? rest.Length : length + 1;
            if (length >= 0)
            {
                return Text();
            }
        }
    }

    private void Keep(ReadOnlySpan<byte> part) => _line.Write(part[..int.Min(part.Length, BytesKept - _line.WrittenCount)]);

    private string Text()
    {
        var bytes = _line.WrittenSpan;
        bytes = _isFirst && bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        _isFirst = false;
        var text = Encoding.UTF8.GetString(bytes.TrimEnd((byte)'\r'));
        return text.Length > LineReader.LongestLine ? text[..(LineReader.LongestLine + 1)] : text;
    }
}
