using Panside.Guide.Measures;

namespace Panside.Guide.Yaml;

/// <summary>What can stand behind a key.</summary>
public enum Shaped
{
    /// <summary>A text.</summary>
    Text,

    /// <summary>One of a few words.</summary>
    Word,

    /// <summary>A number with its unit.</summary>
    Measure,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>True or false.</summary>
    Flag,

    /// <summary>A text, or a list of them.</summary>
    Texts,

    /// <summary>A mapping.</summary>
    Map,

    /// <summary>A list of mappings.</summary>
    Maps,
}

/// <summary>Words that a text may be: these, and what a pattern takes beside them.</summary>
/// <param name="Name">What they are, where they stand at many places: <c>fact</c>; null where at one.</param>
/// <param name="Words">The words.</param>
/// <param name="Pattern">A regular expression of others; null where there are no others.</param>
public sealed record ShapedWords(string? Name, IReadOnlyList<string> Words, string? Pattern = null);

/// <summary>One way in which a key's value is read.</summary>
/// <param name="As">What it is.</param>
public sealed record ShapedValue(Shaped As)
{
    /// <summary>The words that it may be; null for any text.</summary>
    public ShapedWords? Words { get; set; }

    /// <summary>What a measure measures.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>How a measure may be written.</summary>
    public string Example { get; init; } = "";

    /// <summary>The least and the most of a whole number.</summary>
    public (int Low, int High) Range { get; init; }

    /// <summary>The form of a mapping below.</summary>
    public Shape? Below { get; init; }
}

/// <summary>
/// The form of a file as its reader goes through it: which keys it asks for, which must stand, and what can stand behind each. It is noted
/// while good files are read, so that it says what the reader does and nothing else.
/// </summary>
public sealed class Shape
{
    private readonly SortedDictionary<string, List<ShapedValue>> _keys = new(StringComparer.Ordinal);
    private HashSet<string>? _required;

    /// <summary>The keys, each with the ways in which it is read.</summary>
    public IEnumerable<(string Key, IReadOnlyList<ShapedValue> Values)> Keys => _keys.Select(pair => (pair.Key, (IReadOnlyList<ShapedValue>)pair.Value));

    /// <summary>The keys that must stand, whatever else does.</summary>
    public IEnumerable<string> Required => (_required ?? []).Order(StringComparer.Ordinal);

    /// <summary>Whether the file chooses its keys itself, as it does for its words.</summary>
    public bool IsOpen => _required is null;

    /// <summary>A key is read so.</summary>
    /// <param name="key">The key.</param>
    /// <param name="value">How.</param>
    internal void Note(string key, ShapedValue value)
    {
        var values = Of(key);
        if (values.All(known => known.As != value.As) && (value.As != Shaped.Text || values.Count == 0))
        {
            // Who looks at a text first, to read it then as something else, has not said what it is.
            values.RemoveAll(known => known.As == Shaped.Text);
            values.Add(value);
        }
    }

    /// <summary>The form of what stands below a key.</summary>
    /// <param name="key">The key.</param>
    /// <param name="kind">A mapping, or a list of them.</param>
    internal Shape Below(string key, Shaped kind)
    {
        Note(key, new(kind) { Below = new() });
        return Of(key).First(known => known.As == kind).Below!;
    }

    /// <summary>The words that the texts of a key may be.</summary>
    /// <param name="key">The key.</param>
    /// <param name="words">The words.</param>
    internal void Only(string key, ShapedWords words) => Of(key).First(known => known.As is Shaped.Text or Shaped.Texts).Words ??= words;

    /// <summary>A mapping of this form was read to its end.</summary>
    /// <param name="required">The keys that had to stand in it.</param>
    internal void Finished(IReadOnlyCollection<string> required)
    {
        _required ??= [.. required];
        _required.IntersectWith(required);
    }

    private List<ShapedValue> Of(string key)
    {
        if (!_keys.TryGetValue(key, out var values))
        {
            _keys[key] = values = [];
        }

        return values;
    }
}
