using System.Text.RegularExpressions;

namespace Panside.Tests.Architecture;

/// <summary>The folders of src, and which names a type of which.</summary>
internal sealed partial class Folders
{
    private readonly Dictionary<string, HashSet<string>> _arrows = [];

    private Folders(IEnumerable<Source> sources)
    {
        var all = sources.ToList();
        var places = all.SelectMany(source => source.Declared.Select(type => (Type: type, source.Folder, source.Namespace))).ToLookup(one => one.Type);
        var known = places.Where(group => group.Select(one => one.Folder).Distinct().Count() == 1).ToDictionary(group => group.Key, group => group.First());
        foreach (var source in all)
        {
            var names = _arrows.TryGetValue(source.Folder, out var there) ? there : _arrows[source.Folder] = [];
            names.UnionWith(source.Named.Where(name => known.TryGetValue(name, out var one) && one.Folder != source.Folder && source.Sees(one.Namespace)).Select(name => known[name].Folder));
        }
    }

    /// <summary>The folders as they are.</summary>
    public static Folders OfSource()
    {
        var root = Path.Combine(RepositoryFiles.Root, "src");
        return new(Directory.EnumerateFiles(root, "*.cs", SearchOption.AllDirectories)
            .Select(path => (Path: path, Folder: Path.GetRelativePath(root, Path.GetDirectoryName(path)!).Replace('\\', '/')))
            .Where(file => !file.Folder.Split('/').Any(part => part is "bin" or "obj"))
            .Select(file => new Source(file.Folder, File.ReadAllText(file.Path))));
    }

    /// <summary>Folders of texts, to try the reading of arrows with.</summary>
    public static Folders Of(params (string Folder, string Text)[] files) => new(files.Select(file => new Source(file.Folder, file.Text)));

    /// <summary>How high each folder stands: one that names no other at 0, else over all that it names. Null for those that lie in a circle or over one.</summary>
    public IReadOnlyDictionary<string, int?> Heights()
    {
        var heights = _arrows.Keys.ToDictionary(folder => folder, _ => (int?)null);
        for (var moved = true; moved;)
        {
            moved = false;
            foreach (var folder in _arrows.Keys.Where(folder => heights[folder] is null && _arrows[folder].All(named => heights[named] is not null)).ToList())
            {
                heights[folder] = _arrows[folder].Select(named => heights[named] + 1).Append(0).Max();
                moved = true;
            }
        }

        return heights;
    }

    [GeneratedRegex(@"//[^\n]*|/\*.*?\*/|""""""(?s:.*?)""""""|@?\$?""(?:\\.|[^""\\])*""", RegexOptions.Singleline)]
    private static partial Regex NoCode();

    [GeneratedRegex(@"\b(?:class|struct|record(?:\s+(?:class|struct))?|interface|enum)\s+(?<name>[A-Z]\w+)")]
    private static partial Regex Declaration();

    [GeneratedRegex(@"(?<![.\w])[A-Z]\w+\b(?!\s*[=:,;)]\s*(?:get|$))")]
    private static partial Regex Name();

    [GeneratedRegex(@"^namespace\s+(?<name>[\w.]+)", RegexOptions.Multiline)]
    private static partial Regex NamespaceLine();

    [GeneratedRegex(@"^(?:global )?using (?:static )?(?<name>[\w.]+);", RegexOptions.Multiline)]
    private static partial Regex UsingLine();

    private sealed class Source
    {
        private readonly HashSet<string> _sees;

        public Source(string folder, string text)
        {
            Folder = folder;
            Namespace = NamespaceLine().Match(text).Groups["name"].Value;
            _sees = [.. UsingLine().Matches(text).Select(match => match.Groups["name"].Value)];
            for (var space = Namespace; space.Length > 0; space = space.LastIndexOf('.') is > 0 and var dot ? space[..dot] : "")
            {
                _sees.Add(space);
            }

            var code = NoCode().Replace(text, " ");
            Declared = [.. Declaration().Matches(code).Select(match => match.Groups["name"].Value)];
            Named = [.. Name().Matches(code).Select(match => match.Value)];
        }

        public string Folder { get; }

        public string Namespace { get; }

        public HashSet<string> Declared { get; }

        public HashSet<string> Named { get; }

        public bool Sees(string space) => _sees.Contains(space);
    }
}
