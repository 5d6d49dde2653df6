using System.Security.Cryptography;

namespace Panside.Journal;

/// <summary>
/// A file that nobody else may write. If it or its folder is deleted meanwhile, it is put back with all that was written; a file
/// that has taken its place is left alone.
/// </summary>
internal sealed class FileDisk : IDisk
{
    private readonly string _path;
    private FileStream _stream;

    /// <summary>Opens the file, or makes it and its folder.</summary>
    /// <exception cref="IOException">Another program writes it, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public FileDisk(string path)
    {
        var link = new FileInfo(path);
        _path = (link.LinkTarget is null ? null : link.ResolveLinkTarget(returnFinalTarget: true)?.FullName) ?? link.FullName;
        _stream = Open(FileMode.OpenOrCreate);
        _stream.Position = _stream.Length;
    }

    /// <inheritdoc/>
    public long Length => _stream.Length;

    /// <inheritdoc/>
    public int Read(long at, Span<byte> to) => RandomAccess.Read(_stream.SafeFileHandle, to, at);

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        DemandPlace();
        _stream.Write(bytes);
    }

    /// <inheritdoc/>
    public void FlushThrough()
    {
        _stream.Flush(flushToDisk: true);

        // What is written into a file that nobody can find is lost: the look before the write may have been a moment too early.
        DemandPlace();
    }

    /// <inheritdoc/>
    public void CutTo(long length)
    {
        _stream.SetLength(length);
        _stream.Position = length;
    }

    /// <inheritdoc/>
    public void Dispose() => _stream.Dispose();

    /// <inheritdoc/>
    public void Discard()
    {
        byte[] ours;
        using (_stream)
        {
            _stream.Position = 0;
            ours = SHA256.HashData(_stream);
        }

        if (IsThere(ours))
        {
            File.Delete(_path);
        }
    }

    /// <summary>
    /// Whether the very bytes stand under the name. After ours was deleted another program may have begun a record of the same name,
    /// and that is not ours to delete; one that another has open cannot be read, and is left alone as well.
    /// </summary>
    private bool IsThere(byte[] hash)
    {
        try
        {
            using var there = new FileStream(_path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            return SHA256.HashData(there).AsSpan().SequenceEqual(hash);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return false;
        }
    }

    /// <summary>
    /// A deleted file is put back. One of another length than what is open here is another file: two files that are both written to
    /// do not stay equally long.
    /// </summary>
    private void DemandPlace()
    {
        var there = new FileInfo(_path);
        if (!there.Exists)
        {
            PutBack();
        }
        else if (there.Length != _stream.Length)
        {
            throw new ReplacedException();
        }
    }

    /// <summary>A deleted file is still there for who has it open, and for nobody after.</summary>
    private void PutBack()
    {
        var again = Open(FileMode.CreateNew);
        try
        {
            var (buffer, at) = (new byte[64 * 1024], 0L);
            while (Read(at, buffer) is > 0 and var count)
            {
                again.Write(buffer.AsSpan(0, count));
                at += count;
            }

            again.Flush(flushToDisk: true);
        }
        catch
        {
            again.Dispose();
            File.Delete(_path);
            throw;
        }

        _stream.Dispose();
        _stream = again;
    }

    private FileStream Open(FileMode mode)
    {
        if (Path.GetDirectoryName(_path) is { } folder)
        {
            PrivateFile.Folder(folder);
        }

        // Only a file that is shared with nobody keeps a second writer out everywhere. Without a buffer, a write that the disk
        // refuses leaves nothing behind that would be written later.
        return PrivateFile.Open(_path, mode, FileAccess.ReadWrite);
    }
}
