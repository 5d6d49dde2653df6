namespace Panside.Tests.Architecture;

/// <summary>Folders name each other one way only, by the types that their files name.</summary>
public class FoldersTests
{
    private const string Title = "## Which folder may name which\n";

    [Fact]
    public void No_folder_lies_in_a_circle() =>
        Assert.Empty(Folders.OfSource().Heights().Where(folder => folder.Value is null).Select(folder => folder.Key));

    [Fact]
    public void A_circle_is_found()
    {
        var folders = Folders.Of(
            ("Top", "using Low;\nnamespace Top;\nclass Roof { Cellar _under; }"),
            ("Low", "using Top;\nnamespace Low;\nclass Cellar { Roof _over; } // Wall"),
            ("Alone", "namespace Alone;\nclass Wall { string _words = \"Roof\"; }"));
        Assert.Equal(["Low", "Top"], folders.Heights().Where(folder => folder.Value is null).Select(folder => folder.Key).Order());
        Assert.Equal(0, folders.Heights()["Alone"]);
    }

    /// <summary><c>PANSIDE_WRITE_PICTURES=1</c> draws it anew.</summary>
    [Fact]
    public void The_guide_for_contributors_draws_the_folders_as_they_stand()
    {
        var rows = Folders.OfSource().Heights().GroupBy(folder => folder.Value!.Value).OrderBy(height => height.Key)
            .Select(height => $"| {height.Key} | {string.Join(", ", height.Select(folder => folder.Key).Order(StringComparer.Ordinal).Select(folder => $"`{folder}`"))} |");
        var drawn = string.Join('\n', rows.Prepend("| --- | --- |").Prepend("| height | folders of `src` |")) + "\n";
        var guide = RepositoryFiles.Read("DEVELOPERS.md");
        var begins = guide.IndexOf("| height | folders", StringComparison.Ordinal);
        var ends = guide.IndexOf("\n\n", begins, StringComparison.Ordinal) + 1;
        if (Environment.GetEnvironmentVariable("PANSIDE_WRITE_PICTURES") == "1")
        {
            File.WriteAllText(Path.Combine(RepositoryFiles.Root, "DEVELOPERS.md"), guide[..begins] + drawn + guide[ends..]);
            return;
        }

        Assert.Contains(Title, guide, StringComparison.Ordinal);
        Assert.Equal(drawn, guide[begins..ends]);
    }
}
