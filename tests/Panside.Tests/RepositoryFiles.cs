using System.Runtime.CompilerServices;

namespace Panside.Tests;

/// <summary>The repository's own files, found from where this source stands.</summary>
internal static class RepositoryFiles
{
    public static string Root { get; } = Find();

    public static string Read(params string[] path) => File.ReadAllText(Path.Combine([Root, .. path]));

    private static string Find([CallerFilePath] string here = "")
    {
        var folder = File.Exists(here) ? Path.GetDirectoryName(here) : AppContext.BaseDirectory;
        while (folder is not null && !File.Exists(Path.Combine(folder, "Panside.slnx")))
        {
            folder = Path.GetDirectoryName(folder);
        }

        return folder ?? throw new InvalidOperationException("Panside.slnx was not found above the tests.");
    }
}
