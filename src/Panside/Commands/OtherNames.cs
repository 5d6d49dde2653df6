using Panside.Journal;

namespace Panside.Commands;

/// <summary>Where a record goes when it cannot go where it should: under another name beside it, else to another folder. Nothing that was said is dropped.</summary>
/// <param name="exists">Whether a file of a name is there.</param>
/// <param name="open">Opens a record, or makes it.</param>
internal sealed class OtherNames(Func<string, bool> exists, Func<string, JournalFile> open)
{
    /// <summary>On the real disks.</summary>
    public static OtherNames OnDisk { get; } = new(File.Exists, JournalFile.Open);

    /// <summary>So many names are tried in a folder.</summary>
    private const int Most = 100;

    /// <summary>Begins a record; where somebody else has begun one of this name meanwhile, under the next free name.</summary>
    /// <param name="path">The name that is wanted.</param>
    /// <exception cref="IOException">The folder is none, or the disk refuses.</exception>
    public JournalFile Begin(string path)
    {
        try
        {
            if (Empty(path) is { } journal)
            {
                return journal;
            }
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException && exists(path))
        {
            // Another program is writing it, or it may not be written: it is left as it is.
        }

        return Beside(path) ?? throw new IOException($"no name beside {path} is free");
    }

    /// <summary>An empty record near one that cannot be written: beside it, in the folder of the sessions, or in the system's folder for temporary files.</summary>
    /// <param name="near">The record; null where it has no name yet.</param>
    /// <param name="folder">The folder of the sessions.</param>
    /// <returns>The record; null where nothing can be written anywhere.</returns>
    public JournalFile? Spare(string? near, string folder)
    {
        var name = Path.GetFileName(near ?? "boil.jsonl");
        string[] places = [.. near is null ? [] : new[] { near }, Path.Combine(folder, name), Path.Combine(Path.GetTempPath(), name)];
        foreach (var place in places.Select(Path.GetFullPath).Distinct(StringComparer.Ordinal))
        {
            try
            {
                if (Beside(place) is { } spare)
                {
                    return spare;
                }
            }
            catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
            {
                // The next place may do.
            }
        }

        return null;
    }

    /// <summary>Opens a record to go on with; one that may not be written is gone on with in a copy.</summary>
    /// <param name="path">The record.</param>
    /// <param name="folder">The folder of the sessions.</param>
    /// <param name="told">What to tell of it; null for nothing.</param>
    /// <exception cref="UnusableException">Another program writes it.</exception>
    public JournalFile GoOn(string path, string folder, out string? told)
    {
        told = null;
        try
        {
            return open(path);
        }
        catch (UnauthorizedAccessException) when (Spare(path, folder) is { } copy)
        {
            foreach (var some in GivenFile.Lines(path).Chunk(256))
            {
                copy.Append(some);
            }

            told = $"{path} may not be written. The session goes on in a copy: {copy.Path}.";
            copy.Dispose();
            return open(copy.Path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            throw new UnusableException($"{path}: cannot be opened for writing ({fault.Message.TrimEnd('.')}). Is another panside going on with it?");
        }
    }

    /// <summary>The first free name of the form <c>boil-2.jsonl</c> beside a file, as an empty record; null where none is free.</summary>
    private JournalFile? Beside(string path)
    {
        var (folder, name, ending) = (Path.GetDirectoryName(path), Path.GetFileNameWithoutExtension(path), Path.GetExtension(path));
        for (var number = 2; number <= Most; number++)
        {
            var other = Path.Combine(folder ?? "", $"{name}-{number}{ending}");
            if (exists(other))
            {
                continue;
            }

            try
            {
                if (Empty(other) is { } journal)
                {
                    return journal;
                }
            }
            catch (IOException) when (exists(other))
            {
                // Another program took this name between the look and the opening.
            }
        }

        return null;
    }

    /// <summary>An empty record of a name; null where something stands in it.</summary>
    private JournalFile? Empty(string path)
    {
        var journal = open(path);
        if (journal.WasEmpty)
        {
            return journal;
        }

        journal.Dispose();
        return null;
    }
}
