using System.Text;

namespace Panside.Journal;

/// <summary>
/// A session's record on disk: one JSON object a line, appended and flushed through to the disk. One writer only; a torn last
/// line is sealed, so that nothing is glued to it.
/// </summary>
public sealed class JournalFile : IDisposable
{
    private readonly FileStream _stream;

    private JournalFile(string path, FileStream stream, IReadOnlyList<string> lines, bool torn) =>
        (Path, _stream, Lines, WasTorn) = (path, stream, lines, torn);

    /// <summary>Its path.</summary>
    public string Path { get; }

    /// <summary>The lines that it held when it was opened.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Whether its last line had been cut off.</summary>
    public bool WasTorn { get; }

    /// <summary>Opens a record for appending, or makes it.</summary>
    /// <exception cref="IOException">Another program writes it, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static JournalFile Open(string path)
    {
        var folder = System.IO.Path.GetDirectoryName(System.IO.Path.GetFullPath(path));
        if (folder is not null)
        {
            Directory.CreateDirectory(folder);
        }

        // Only a file that is shared with nobody keeps a second writer out everywhere. Without a buffer, a write that the disk
        // refuses leaves nothing behind that would be written later.
        var stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
        try
        {
            var bytes = new byte[stream.Length];
            stream.ReadExactly(bytes);
            var torn = bytes.Length > 0 && bytes[^1] != (byte)'\n';
            if (torn)
            {
                stream.WriteByte((byte)'\n');
                stream.Flush(flushToDisk: true);
            }

            return new(path, stream, RecordBytes.Lines(bytes), torn);
        }
        catch
        {
            stream.Dispose();
            throw;
        }
    }

    /// <summary>Reads a record without writing to it.</summary>
    /// <exception cref="IOException">It is not there, or a session is writing it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static IReadOnlyList<string> Read(string path) => RecordBytes.Lines(File.ReadAllBytes(path));

    /// <summary>Appends whole lines, and returns when they are on the disk.</summary>
    /// <exception cref="IOException">The disk refuses; what was written of these lines is taken back as far as it can be.</exception>
    public void Append(IEnumerable<string> lines)
    {
        var before = _stream.Length;
        var text = new StringBuilder();
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }

        try
        {
            _stream.Write(Encoding.UTF8.GetBytes(text.ToString()));
            _stream.Flush(flushToDisk: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            TakeBack(before);
            throw;
        }
        catch (ArgumentOutOfRangeException fault)
        {
            // So the runtime tells a file that is larger than the disk or its owner's limit lets it be.
            TakeBack(before);
            throw new IOException("The file is as large as this disk or this user may make it.", fault);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _stream.Dispose();

    private void TakeBack(long length)
    {
        try
        {
            _stream.SetLength(length);
            _stream.Position = length;
        }
        catch (IOException)
        {
            // A disk that refuses even this keeps a torn line; the next opening seals it.
        }
    }
}
