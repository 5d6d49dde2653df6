using System.Xml.Linq;

namespace Panside.Tests.Architecture;

/// <summary>Dependencies point one way: faces, guide, reckoning.</summary>
public class DirectionTests
{
    private static readonly Dictionary<string, string[]> Allowed = new()
    {
        ["Panside.Reckoning"] = [],
        ["Panside.Guide"] = ["Panside.Reckoning"],
        ["Panside.Journal"] = ["Panside.Guide", "Panside.Reckoning"],
        ["Panside.Practice"] = ["Panside.Guide", "Panside.Reckoning"],
        ["Panside.Screen"] = ["Panside.Guide", "Panside.Reckoning"],
        ["Panside.Picturing"] = [],
        ["Panside.Arguments"] = ["Panside.Guide", "Panside.Journal", "Panside.Practice", "Panside.Reckoning"],
        ["Panside"] = ["Panside.Arguments", "Panside.Guide", "Panside.Journal", "Panside.Picturing", "Panside.Practice", "Panside.Reckoning", "Panside.Screen"],
        ["Panside.Workshop"] = ["Panside.Arguments", "Panside.Guide", "Panside.Picturing", "Panside.Practice", "Panside.Reckoning"],
    };

    [Fact]
    public void Every_project_refers_only_to_its_left()
    {
        var projects = Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src"), "*.csproj", SearchOption.AllDirectories).ToList();
        Assert.Equal(Allowed.Keys.Order(StringComparer.Ordinal), projects.Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal));
        foreach (var project in projects)
        {
            var refers = XDocument.Load(project).Descendants("ProjectReference")
                .Select(reference => Path.GetFileNameWithoutExtension((string?)reference.Attribute("Include")));
            Assert.Subset(Allowed[Path.GetFileNameWithoutExtension(project)].ToHashSet(), refers.OfType<string>().ToHashSet());
        }
    }

    [Theory]
    [InlineData("System.Text.Json", "Panside.Journal", "Panside", "Panside.Reckoning")]
    [InlineData("Terminal.Gui", "Panside.Screen")]
    [InlineData("System.Xml", "Panside", "Panside.Picturing")]
    [InlineData("YamlDotNet", "Panside.Guide")]
    [InlineData("System.CommandLine", "Panside", "Panside.Arguments", "Panside.Workshop")]
    [InlineData("Stateless", "Panside.Guide", "Panside")]
    public void A_library_is_known_only_where_it_belongs(string library, params string[] places)
    {
        foreach (var file in Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "src"), "*.cs", SearchOption.AllDirectories)
                     .Where(file => !file.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)))
        {
            if (File.ReadAllText(file).Contains($"using {library}", StringComparison.Ordinal))
            {
                var project = Path.GetRelativePath(Path.Combine(RepositoryFiles.Root, "src"), file).Split(Path.DirectorySeparatorChar)[0];
                Assert.Contains(project, places);
            }
        }
    }
}
