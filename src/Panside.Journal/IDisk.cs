namespace Panside.Journal;

/// <summary>What a record needs of a disk, so that a test can let it fail at any point.</summary>
internal interface IDisk : IDisposable
{
    /// <summary>The bytes of the file.</summary>
    long Length { get; }

    /// <summary>All of it, from the beginning; what is written after stands behind it.</summary>
    byte[] ReadAll();

    /// <summary>Writes at the end.</summary>
    void Write(ReadOnlySpan<byte> bytes);

    /// <summary>Returns when what was written is on the disk.</summary>
    void FlushThrough();

    /// <summary>Cuts the file to a length, and writes on from there.</summary>
    void CutTo(long length);
}
