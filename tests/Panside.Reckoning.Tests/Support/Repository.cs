using System.Runtime.CompilerServices;

namespace Panside.Reckoning.Tests.Support;

/// <summary>The files of the checkout that the tests were built from.</summary>
public static class Repository
{
    public static string Root { get; } = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", ".."));

    public static string Text(string path) => File.ReadAllText(Path.Combine(Root, path));

    public static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(Path.Combine(Root, folder), pattern, SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)
                && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    private static string Here([CallerFilePath] string path = "") => path;
}
