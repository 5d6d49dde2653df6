namespace Panside.Guide.Yaml;

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
