using Panside.Journal;

namespace Panside.Arguments;

/// <summary>A file that was named on the command line.</summary>
public static class GivenFile
{
    /// <summary>Larger is no file of ours: a record of a boil of a week is a tenth of it.</summary>
    private const int Largest = 64 * 1024 * 1024;

    /// <summary>Its bytes.</summary>
    /// <exception cref="UnusableException">It cannot be read; the sentence says why and what to do.</exception>
    public static byte[] Read(string path) => Try(path, () => ReadAll(path));

    /// <summary>It opened, to be read as a stream.</summary>
    /// <exception cref="UnusableException">It cannot be read; the sentence says why and what to do.</exception>
    public static FileStream Open(string path) => Try(path, () =>
    {
        PipeException.Demand(path);
        return new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
    });

    /// <summary>Refuses a record that would have to be heard again for longer than anybody waits.</summary>
    /// <param name="path">The record.</param>
    /// <exception cref="UnusableException">It is one.</exception>
    public static void DemandToHear(string path)
    {
        if (File.Exists(path) && new FileInfo(path).Length is > LongRecordException.Most and var bytes)
        {
            throw new UnusableException($"{path}: is {bytes >> 20} MB long; no boil is, and hearing it again would take too long. 'panside replay {path} --plain' shows what it holds, 'panside check {path}' what is wrong with it.");
        }
    }

    /// <summary>The first lines of a record.</summary>
    /// <exception cref="UnusableException">It cannot be read; the sentence says why and what to do.</exception>
    public static IReadOnlyList<string> Head(string path) => Try(path, () => new RecordFile(path).Head());

    /// <summary>The lines of a record, one after the other, however many there are.</summary>
    /// <param name="path">The record.</param>
    /// <param name="progress">Told how many of how many bytes were read; null for nobody.</param>
    /// <exception cref="UnusableException">It cannot be read; the sentence says why and what to do.</exception>
    public static IEnumerable<string> Lines(string path, Action<long, long>? progress = null)
    {
        using var lines = new RecordFile(path, progress).Lines().GetEnumerator();
        while (Try(path, lines.MoveNext))
        {
            yield return lines.Current;
        }
    }

    private static T Try<T>(string path, Func<T> read)
    {
        if (Directory.Exists(path))
        {
            throw new UnusableException($"{path}: is a folder. Name the files in it.");
        }

        try
        {
            return read();
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new UnusableException($"{path}: there is no such file. Check the name.");
        }
        catch (UnauthorizedAccessException)
        {
            throw new UnusableException($"{path}: may not be read. Check its permissions.");
        }
        catch (PipeException)
        {
            throw new UnusableException($"{path}: is a pipe, and only files are read here; write it into a file first, and name that.");
        }
        catch (IOException fault)
        {
            throw new UnusableException($"{path}: cannot be read ({fault.Message.TrimEnd('.')}). If a boil is writing it, wait until it ends, or copy it.");
        }
    }

    /// <summary>Its text, which is UTF-8.</summary>
    /// <exception cref="UnusableException">It cannot be read.</exception>
    /// <exception cref="Guide.Yaml.FaultyFileException">It is no text.</exception>
    public static string Text(string path) => FileText.Of(path, Read(path));

    /// <summary>Refuses to write into what is no file: a folder, a pipe, a device.</summary>
    /// <exception cref="UnusableException">It is none.</exception>
    public static void DemandToWrite(string path)
    {
        if (Directory.Exists(path))
        {
            throw new UnusableException($"{path}: is a folder. Name a file in it.");
        }

        if (File.Exists(path) && new FileInfo(path).Length == 0 && !CanBeCut(path))
        {
            throw new UnusableException($"{path}: is a pipe or a device, and only a file can be written. Name a new file.");
        }
    }

    /// <summary>Files can be cut to a length, their own as well; pipes and devices refuse it. One that another program holds is a file.</summary>
    private static bool CanBeCut(string path)
    {
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.None, bufferSize: 0);
            if (!file.CanSeek)
            {
                return false;
            }

            try
            {
                file.SetLength(file.Length);
                return true;
            }
            catch (Exception fault) when (fault is IOException or ArgumentException or NotSupportedException)
            {
                return false;
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return true;
        }
    }

    private static byte[] ReadAll(string path)
    {
        PipeException.Demand(path);
        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.Read, bufferSize: 0);
        using var bytes = new MemoryStream();
        var chunk = new byte[64 * 1024];
        for (var read = file.Read(chunk); read > 0; read = file.Read(chunk))
        {
            bytes.Write(chunk, 0, read);
            if (bytes.Length > Largest)
            {
                throw new UnusableException($"{path}: is larger than {Largest >> 20} MB, and so no file of ours. Check the name.");
            }
        }

        return bytes.ToArray();
    }
}
