using System.Text;
using System.Text.Unicode;
using Panside.Guide.Yaml;
using Panside.Journal;

namespace Panside.Arguments;

/// <summary>The bytes of a file as text. Every door reads them here, so that what a check refuses guides nobody.</summary>
public static class FileText
{
    /// <summary>Among so many first bytes it shows whether each letter has two.</summary>
    private const int Shown = 256;

    /// <summary>The text.</summary>
    /// <param name="path">The file's name, for the fault.</param>
    /// <param name="bytes">What stands in it.</param>
    /// <exception cref="FaultyFileException">It is no UTF-8; with the place of the first byte that is none.</exception>
    public static string Of(string path, ReadOnlySpan<byte> bytes)
    {
        if (IsUtf16(bytes))
        {
            throw Faulty(path, 1, 1, "the file is UTF-16", "UTF-8 text; save it as UTF-8", "Editors offer it where a file is saved, as the encoding.");
        }

        bytes = bytes.StartsWith("\uFEFF"u8) ? bytes[3..] : bytes;
        if (Utf8.IsValid(bytes))
        {
            return Encoding.UTF8.GetString(bytes);
        }

        var good = RecordBytes.ValidPart(bytes);
        throw Faulty(path, good.Count(c => c == '\n') + 1, good.Length - good.LastIndexOf('\n'), "a byte that is no UTF-8", "UTF-8 text", "Type the letter there anew, and save the file as UTF-8.");
    }

    /// <summary>The same where only a look at it is wanted: what can be read of it.</summary>
    /// <param name="bytes">What stands in it.</param>
    public static string Readable(ReadOnlySpan<byte> bytes) => IsUtf16(bytes) ? "" : Encoding.UTF8.GetString(bytes);

    private static bool IsUtf16(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return true;
        }

        // Without a mark: every other byte of plain letters is a NUL.
        var first = bytes[..int.Min(bytes.Length, Shown)];
        return first.Length >= 8 && first.Count((byte)0) * 3 >= first.Length;
    }

    private static FaultyFileException Faulty(string path, int line, int column, string wrong, string expected, string help) =>
        new([new(path, line, column, wrong, expected) { Kind = FaultKind.Yaml, Help = help }]);
}
