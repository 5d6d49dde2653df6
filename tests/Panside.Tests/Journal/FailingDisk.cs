using Panside.Journal;

namespace Panside.Tests.Records;

/// <summary>How a disk fails.</summary>
public enum Failing
{
    /// <summary>The operation does nothing and says so.</summary>
    Refused,

    /// <summary>A write is refused half way.</summary>
    Half,

    /// <summary>A write is refused half way, and so is taking the half back.</summary>
    HalfAndStuck,

    /// <summary>From the operation on the disk refuses everything for good, the first write half way.</summary>
    ForGood,
}

/// <summary>A disk that fails at its operation number so many (writes and flushes are counted), or at each that is named, and keeps account of what it did.</summary>
internal sealed class FailingDisk(IDisk disk, int at, Failing failing, Func<int, bool>? also = null) : IDisk
{
    private bool _isStuck;

    /// <summary>Writes and flushes so far.</summary>
    public int Operations { get; private set; }

    /// <summary>How often it has failed.</summary>
    public int Failures { get; private set; }

    /// <summary>Bytes that are known to be on the disk.</summary>
    public long Flushed { get; private set; }

    public long Length => disk.Length;

    public int Read(long at, Span<byte> to) => disk.Read(at, to);

    public void Write(ReadOnlySpan<byte> bytes)
    {
        if (Fails())
        {
            if (failing != Failing.Refused)
            {
                disk.Write(bytes[..(bytes.Length / 2)]);
            }

            throw new IOException("No space left on device");
        }

        disk.Write(bytes);
    }

    public void FlushThrough()
    {
        if (Fails())
        {
            throw new IOException("Input/output error");
        }

        disk.FlushThrough();
        Flushed = disk.Length;
    }

    public void CutTo(long length)
    {
        if (_isStuck || (failing == Failing.ForGood && Operations >= at))
        {
            _isStuck = false;
            throw new IOException("Input/output error");
        }

        disk.CutTo(length);
    }

    public void Discard() => disk.Discard();

    public void Dispose() => disk.Dispose();

    private bool Fails()
    {
        Operations++;
        var fails = (failing == Failing.ForGood ? Operations >= at : Operations == at) || also?.Invoke(Operations) == true;
        Failures += fails ? 1 : 0;
        _isStuck |= fails && failing == Failing.HalfAndStuck;
        return fails;
    }
}
