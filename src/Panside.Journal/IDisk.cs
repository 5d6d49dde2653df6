namespace Panside.Journal;

/// <summary>What a record needs of a disk, so that a test can let it fail at any point.</summary>
internal interface IDisk : IDisposable
{
    /// <summary>The bytes of the file.</summary>
    long Length { get; }

    /// <summary>Reads some of it; what is written stands behind its end all the same.</summary>
    /// <param name="at">From where.</param>
    /// <param name="to">Where to.</param>
    /// <returns>How many bytes were read; 0 at the end.</returns>
    int Read(long at, Span<byte> to);

    /// <summary>Writes at the end.</summary>
    /// <exception cref="ReplacedException">Another file has taken the place.</exception>
    void Write(ReadOnlySpan<byte> bytes);

    /// <summary>Returns when what was written is on the disk, where it can be found.</summary>
    /// <exception cref="ReplacedException">Another file has taken the place.</exception>
    void FlushThrough();

    /// <summary>Cuts the file to a length, and writes on from there.</summary>
    void CutTo(long length);

    /// <summary>Deletes the file and lets it go.</summary>
    void Discard();
}
