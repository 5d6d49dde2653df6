namespace Panside.Journal;

/// <summary>A file that nobody else may write. If it or its folder is deleted meanwhile, it is put back with all that was written.</summary>
internal sealed class FileDisk : IDisk
{
    private readonly string _path;
    private FileStream _stream;

    /// <summary>Opens the file, or makes it and its folder.</summary>
    /// <exception cref="IOException">Another program writes it, or the disk refuses.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public FileDisk(string path)
    {
        _path = Path.GetFullPath(path);
        _stream = Open(FileMode.OpenOrCreate);
    }

    /// <inheritdoc/>
    public long Length => _stream.Length;

    /// <inheritdoc/>
    public byte[] ReadAll()
    {
        _stream.Position = 0;
        var bytes = new byte[_stream.Length];
        _stream.ReadExactly(bytes);
        return bytes;
    }

    /// <inheritdoc/>
    public void Write(ReadOnlySpan<byte> bytes)
    {
        if (!File.Exists(_path))
        {
            PutBack();
        }

        _stream.Write(bytes);
    }

    /// <inheritdoc/>
    public void FlushThrough() => _stream.Flush(flushToDisk: true);

    /// <inheritdoc/>
    public void CutTo(long length)
    {
        _stream.SetLength(length);
        _stream.Position = length;
    }

    /// <inheritdoc/>
    public void Dispose() => _stream.Dispose();

    /// <summary>A deleted file is still there for who has it open, and for nobody after.</summary>
    private void PutBack()
    {
        var again = Open(FileMode.CreateNew);
        try
        {
            again.Write(ReadAll());
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
            Directory.CreateDirectory(folder);
        }

        // Only a file that is shared with nobody keeps a second writer out everywhere. Without a buffer, a write that the disk
        // refuses leaves nothing behind that would be written later.
        return new(_path, mode, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
    }
}
