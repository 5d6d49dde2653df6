using System.Text;

namespace Panside.Journal;

/// <summary>Files that only their owner reads, whatever the umask: what the program keeps of a person's boils is nobody else's.</summary>
public static class PrivateFile
{
    /// <summary>Makes a folder and those above it that are missing.</summary>
    public static void Folder(string path)
    {
        var full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            return;
        }

        if (Path.GetDirectoryName(full) is { } above)
        {
            Folder(above);
        }

        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(full);
        }
        else
        {
            Directory.CreateDirectory(full, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Opens a file that nobody else may write meanwhile, without a buffer; a new one is its owner's alone.</summary>
    /// <param name="path">The file.</param>
    /// <param name="mode">One that can make it.</param>
    /// <param name="access">What is done with it.</param>
    public static FileStream Open(string path, FileMode mode, FileAccess access)
    {
        var options = new FileStreamOptions { Mode = mode, Access = access, Share = FileShare.None, BufferSize = 0 };
        if (!OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return new(path, options);
    }

    /// <summary>Makes a file that is not there yet, and writes it through to the disk; no link is followed.</summary>
    /// <exception cref="IOException">There is one of that name, or the disk refuses.</exception>
    public static void New(string path, string text)
    {
        using var file = Open(path, FileMode.CreateNew, FileAccess.Write);
        file.Write(Encoding.UTF8.GetBytes(text));
        file.Flush(flushToDisk: true);
    }

    /// <summary>Writes a file whole or not at all: a power cut leaves the old one or the new one, never half of one.</summary>
    public static void Replace(string path, string text)
    {
        var full = Path.GetFullPath(path);
        Folder(Path.GetDirectoryName(full)!);
        var written = full + ".new";
        File.Delete(written);
        New(written, text);
        File.Move(written, full, overwrite: true);
    }
}
