namespace Panside.Tests.Screen.Support;

/// <summary>Pictures kept beside the tests, screens as text, and in the docs. With PANSIDE_WRITE_PICTURES=1 they are written anew instead of compared.</summary>
internal static class Pictures
{
    private static readonly bool Writes = Environment.GetEnvironmentVariable("PANSIDE_WRITE_PICTURES") == "1";

    /// <summary>Compares a screen with the picture kept of it.</summary>
    public static void Same(string name, string screen) =>
        SameFile(screen + "\n", "tests", "Panside.Tests", "Screen", "Pictures", name + ".txt");

    /// <summary>Compares what is drawn with a whole file of the repository.</summary>
    public static void SameFile(string drawn, params string[] file)
    {
        var path = Path.Combine([Root, .. file]);
        if (Writes)
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, drawn);
        }

        Assert.Equal(File.ReadAllText(path), drawn);
    }

    /// <summary>Compares the pictures that a page shows, each under a comment with its name, with the program's own.</summary>
    public static void SamePage(string page, Func<string, string> screen)
    {
        var path = Path.Combine(Root, "docs", page);
        var parts = File.ReadAllText(path).Split(Mark);
        for (var index = 1; index < parts.Length; index++)
        {
            var name = parts[index][..parts[index].IndexOf(" -->", StringComparison.Ordinal)];
            var begin = parts[index].IndexOf("```text\n", StringComparison.Ordinal) + "```text\n".Length;
            var end = parts[index].IndexOf("```", begin, StringComparison.Ordinal);
            var drawn = screen(name) + "\n";
            if (Writes)
            {
                parts[index] = parts[index][..begin] + drawn + parts[index][end..];
            }
            else
            {
                Assert.Equal(drawn, parts[index][begin..end]);
            }
        }

        Assert.True(parts.Length > 1, $"{page} shows no picture.");
        if (Writes)
        {
            File.WriteAllText(path, string.Join(Mark, parts));
        }
    }

    private const string Mark = "<!-- picture ";

    private static string Root
    {
        get
        {
            var folder = new DirectoryInfo(AppContext.BaseDirectory);
            while (!File.Exists(Path.Combine(folder.FullName, "Panside.slnx")))
            {
                folder = folder.Parent ?? throw new DirectoryNotFoundException("The solution's folder is not above the tests.");
            }

            return folder.FullName;
        }
    }
}
