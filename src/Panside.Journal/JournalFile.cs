using System.Text;

namespace Panside.Journal;

/// <summary>
/// A session's record on disk: one JSON object a line, appended and flushed through to the disk. One writer only; a torn last
/// line is sealed, so that nothing is glued to it.
/// </summary>
public sealed class JournalFile : IDisposable
{
    private readonly IDisk _disk;
    private long _whole;

    private JournalFile(string path, IDisk disk, IReadOnlyList<string> lines, bool torn) =>
        (Path, _disk, _whole, Lines, WasTorn) = (path, disk, disk.Length, lines, torn);

    /// <summary>Its path.</summary>
    public string Path { get; }

    /// <summary>The lines that it held when it was opened.</summary>
    public IReadOnlyList<string> Lines { get; }

    /// <summary>Whether its last line had been cut off.</summary>
    public bool WasTorn { get; }

    /// <summary>Opens a record for appending, or makes it.</summary>
    /// <exception cref="IOException">Another program writes it, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static JournalFile Open(string path) => Open(path, disk => disk);

    /// <summary>The same through a disk of a test's own.</summary>
    internal static JournalFile Open(string path, Func<IDisk, IDisk> through)
    {
        var disk = through(new FileDisk(path));
        try
        {
            var bytes = disk.ReadAll();
            var torn = bytes.Length > 0 && bytes[^1] != (byte)'\n';
            if (torn)
            {
                disk.Write("\n"u8);
                disk.FlushThrough();
            }

            return new(path, disk, RecordBytes.Lines(bytes), torn);
        }
        catch
        {
            disk.Dispose();
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
        var text = new StringBuilder();
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }

        try
        {
            if (_disk.Length != _whole)
            {
                // A write failed half way, and its half could not be taken back then: nothing may be glued to it.
                _disk.CutTo(_whole);
            }

            _disk.Write(Encoding.UTF8.GetBytes(text.ToString()));
            _disk.FlushThrough();
            _whole = _disk.Length;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            TakeBack();
            throw;
        }
        catch (ArgumentOutOfRangeException fault)
        {
            // So the runtime tells a file that is larger than the disk or its owner's limit lets it be.
            TakeBack();
            throw new IOException("The file is as large as this disk or this user may make it.", fault);
        }
    }

    /// <inheritdoc/>
    public void Dispose() => _disk.Dispose();

    private void TakeBack()
    {
        try
        {
            _disk.CutTo(_whole);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A disk that refuses even this keeps a torn line until the next line, or the next opening, which seals it.
        }
    }
}
