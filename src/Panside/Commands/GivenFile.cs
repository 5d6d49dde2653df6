namespace Panside.Commands;

/// <summary>A file that was named on the command line.</summary>
internal static class GivenFile
{
    /// <summary>Its bytes.</summary>
    /// <exception cref="UnusableException">It cannot be read; the sentence says why and what to do.</exception>
    public static byte[] Read(string path)
    {
        if (Directory.Exists(path))
        {
            throw new UnusableException($"{path}: is a folder. Name the files in it.");
        }

        try
        {
            return File.ReadAllBytes(path);
        }
        catch (Exception fault) when (fault is FileNotFoundException or DirectoryNotFoundException)
        {
            throw new UnusableException($"{path}: there is no such file. Check the name.");
        }
        catch (UnauthorizedAccessException)
        {
            throw new UnusableException($"{path}: may not be read. Check its permissions.");
        }
        catch (IOException fault)
        {
            throw new UnusableException($"{path}: cannot be read ({fault.Message.TrimEnd('.')}). If a boil is writing it, wait until it ends, or copy it.");
        }
    }
}
