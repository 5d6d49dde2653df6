namespace Panside.Journal;

/// <summary>A record's file, read as a stream: however long it is, no more of it is in memory than one exchange.</summary>
/// <param name="path">The file.</param>
/// <param name="progress">Told, after each part that was read, how many of how many bytes were; null for nobody.</param>
public sealed class RecordFile(string path, Action<long, long>? progress = null)
{
    private const int Part = 64 * 1024;

    /// <summary>Its lines.</summary>
    /// <exception cref="IOException">It is not there, or a session is writing it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public IEnumerable<string> Lines()
    {
        PipeException.Demand(path);
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0, FileOptions.SequentialScan);
        foreach (var line in Lines((at, to) => RandomAccess.Read(file.SafeFileHandle, to.Span, at), 0, () => file.Length, progress))
        {
            yield return line;
        }
    }

    /// <summary>The first lines, in which the session line stands.</summary>
    /// <exception cref="IOException">It is not there, or a session is writing it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public IReadOnlyList<string> Head() => [.. Lines().Take(Exchanges.HeadLines)];

    /// <summary>The lines of whatever can be read from a place on.</summary>
    internal static IEnumerable<string> Lines(Func<long, Memory<byte>, int> read, long from, Func<long> length, Action<long, long>? progress)
    {
        var (splitter, buffer, at) = (new LineSplitter(), new byte[Part], from);
        while (read(at, buffer) is > 0 and var count)
        {
            at += count;
            foreach (var line in splitter.Take(buffer.AsSpan(0, count)))
            {
                yield return line.Text;
            }

            progress?.Invoke(at, length());
        }

        if (splitter.End() is { } last)
        {
            yield return last.Text;
        }
    }
}
