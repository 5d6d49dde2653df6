using System.Security.Cryptography;
using System.Text;

namespace Panside.Journal;

/// <summary>
/// A session's record on disk: one JSON object a line, appended and flushed through to the disk. One writer only; a torn last
/// line is sealed before the next one, so that nothing is glued to it.
/// </summary>
public sealed class JournalFile : IDisposable
{
    private readonly IDisk _disk;
    private readonly long _opened;
    private long _whole;
    private IncrementalHash? _hash;

    private bool _isTorn;

    private JournalFile(string path, IDisk disk, bool torn) =>
        (Path, _disk, _whole, _opened, WasTorn, _isTorn) = (path, disk, disk.Length, disk.Length, torn, torn);

    /// <summary>Its path.</summary>
    public string Path { get; }

    /// <summary>Whether its last line had been cut off.</summary>
    public bool WasTorn { get; }

    /// <summary>Whether it held nothing when it was opened.</summary>
    public bool WasEmpty => _opened == 0;

    /// <summary>The bytes in it.</summary>
    public long Length => _whole;

    /// <summary>The lines that it held when it was opened.</summary>
    public IReadOnlyList<string> Lines => [.. ReadLines()];

    /// <summary>Opens a record for appending, or makes it.</summary>
    /// <exception cref="IOException">Another program writes it, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static JournalFile Open(string path) => Open(path, disk => disk);

    /// <summary>The same through a disk of a test's own.</summary>
    internal static JournalFile Open(string path, Func<IDisk, IDisk> through) => On(path, through(new FileDisk(path)));

    /// <summary>A record on a disk.</summary>
    internal static JournalFile On(string path, IDisk disk)
    {
        try
        {
            Span<byte> last = stackalloc byte[1];
            return new(path, disk, disk.Length > 0 && disk.Read(disk.Length - 1, last) == 1 && last[0] != (byte)'\n');
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

    /// <summary>The lines that it held when it was opened, one after the other.</summary>
    /// <param name="from">The byte of the first one.</param>
    /// <param name="progress">Told how many of how many bytes were read; null for nobody.</param>
    public IEnumerable<string> ReadLines(long from = 0, Action<long, long>? progress = null) =>
        RecordFile.Lines((at, to) => ReadBytes(at, to.Span[..(int)long.Min(to.Length, long.Max(_opened - at, 0))]), from, () => _opened, progress);

    /// <summary>Appends whole lines, and returns when they are on the disk.</summary>
    /// <exception cref="IOException">The disk refuses; what was written of these lines is taken back as far as it can be.</exception>
    public void Append(IEnumerable<string> lines)
    {
        // What was cut off ends here. Not before there is something to say: nothing is written into a file that is only looked at.
        var text = new StringBuilder(_isTorn ? "\n" : "");
        foreach (var line in lines)
        {
            text.Append(line).Append('\n');
        }

        Append(Encoding.UTF8.GetBytes(text.ToString()));
        _isTorn = false;
    }

    /// <summary>Appends the whole lines of another record, with whatever is damaged in it.</summary>
    /// <exception cref="IOException">The disk refuses, or the other cannot be read.</exception>
    public void Append(JournalFile other)
    {
        var (buffer, at) = (new byte[64 * 1024], 0L);
        while (other.ReadBytes(at, buffer.AsSpan(0, (int)long.Min(buffer.Length, other._whole - at))) is > 0 and var count)
        {
            Append(buffer.AsSpan(0, count));
            at += count;
        }

        _isTorn = other._isTorn;
    }

    /// <summary>Reads some of its bytes.</summary>
    /// <returns>How many; 0 at the end.</returns>
    internal int ReadBytes(long at, Span<byte> to) => to.IsEmpty ? 0 : _disk.Read(at, to);

    /// <summary>The SHA-256 of its first bytes; only those of all of it are at hand at once.</summary>
    /// <param name="length">How many; no more than stand in it.</param>
    /// <exception cref="IOException">It cannot be read.</exception>
    internal byte[] HashOf(long length)
    {
        if (_hash is not null && length == _whole)
        {
            return _hash.GetCurrentHash();
        }

        var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        Feed(hash, 0, length);
        var asked = hash.GetCurrentHash();
        Feed(hash, length, _whole);
        _hash?.Dispose();
        _hash = hash;
        return asked;
    }

    /// <summary>Deletes it: what it holds stands elsewhere.</summary>
    public void Discard() => _disk.Discard();

    /// <inheritdoc/>
    public void Dispose()
    {
        _hash?.Dispose();
        _disk.Dispose();
    }

    private void Feed(IncrementalHash hash, long from, long to)
    {
        var buffer = new byte[256 * 1024];
        while (from < to)
        {
            var count = ReadBytes(from, buffer.AsSpan(0, (int)long.Min(buffer.Length, to - from)));
            hash.AppendData(count > 0 ? buffer.AsSpan(0, count) : throw new IOException("it is shorter than it was"));
            from += count;
        }
    }

    private void Append(ReadOnlySpan<byte> bytes)
    {
        try
        {
            if (_disk.Length != _whole)
            {
                // A write failed half way, and its half could not be taken back then: nothing may be glued to it.
                _disk.CutTo(_whole);
            }

            _disk.Write(bytes);
            _disk.FlushThrough();
            _whole = _disk.Length;
            _hash?.AppendData(bytes);
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

    private void TakeBack()
    {
        try
        {
            _disk.CutTo(_whole);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A disk that refuses even this keeps a torn line until the next line, which seals it.
        }
    }
}
