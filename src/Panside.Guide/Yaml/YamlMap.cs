using System.Globalization;
using Panside.Guide.Measures;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Panside.Guide.Yaml;

/// <summary>
/// One mapping of a YAML file, read key by key. Each read that goes wrong adds a <see cref="Fault"/> with its place and
/// gives a stand-in, so that one pass finds every fault; <see cref="Finish"/> tells the keys that nobody asked for.
/// </summary>
public sealed class YamlMap
{
    private readonly string _file;
    private readonly List<Fault> _faults;
    private readonly YamlNode _self;
    private readonly Dictionary<string, (YamlNode Key, YamlNode Value)> _entries = new(StringComparer.Ordinal);
    private readonly HashSet<string> _asked = new(StringComparer.Ordinal);
    private readonly Shape? _shape;
    private readonly HashSet<string>? _required;

    private YamlMap(string file, YamlNode node, List<Fault> faults, string what, Shape? shape)
    {
        (_file, _faults, _self, _shape, _required) = (file, faults, node, shape, shape is null ? null : new(StringComparer.Ordinal));
        if (node is not YamlMappingNode map)
        {
            Add(node, $"{what} is {Describe(node)}", "a mapping of keys to values", FaultKind.Form);
            return;
        }

        foreach (var (key, value) in map.Children)
        {
            _entries[((YamlScalarNode)key).Value ?? ""] = (key, value);
        }
    }

    /// <summary>The keys in the order of the file.</summary>
    public IEnumerable<string> Keys => _entries.Keys;

    /// <summary>The faults found so far, shared by all maps of the file.</summary>
    public IReadOnlyList<Fault> Faults => _faults;

    /// <summary>Reads a file's text as one mapping.</summary>
    /// <param name="file">The name for faults.</param>
    /// <param name="text">The text.</param>
    /// <param name="what">What the file is: <c>the rig</c>.</param>
    /// <param name="shape">Takes down what is asked of the file, and how; null where nobody wants to know.</param>
    /// <exception cref="FaultyFileException">The text is no YAML, or not one plain document.</exception>
    public static YamlMap Read(string file, string text, string what, Shape? shape = null)
    {
        var slip = new YamlSlip(file, text);
        if (slip.Unreadable() is { } unreadable)
        {
            throw new FaultyFileException([unreadable]);
        }

        try
        {
            var stream = new YamlStream();
            Load(stream, text, new PlainEvents(file, what));
            return stream.Documents.Count == 1 && OnlyPlainKeys(stream.Documents[0].RootNode)
                ? new(file, stream.Documents[0].RootNode, [], what, shape)
                : throw new FaultyFileException([new(file, 1, 1, $"{what} is not one mapping with plain keys", "one") { Kind = FaultKind.Form }]);
        }
        catch (YamlException fault)
        {
            throw new FaultyFileException([slip.Of(fault)]);
        }
    }

    /// <summary>Adds a fault at a key's value, or at the map where the key is missing.</summary>
    /// <param name="key">The key.</param>
    /// <param name="wrong">What is wrong.</param>
    /// <param name="expected">What was expected.</param>
    /// <param name="kind">What kind of fault it is.</param>
    /// <param name="meant">What was most likely meant; null where nothing is near.</param>
    /// <param name="help">What helps with this one; null for what helps with its kind.</param>
    public void Add(string key, string wrong, string expected, FaultKind? kind = null, string? meant = null, string? help = null) =>
        Add(_entries.TryGetValue(key, out var entry) ? entry.Value : _self, wrong, expected, kind, meant, help);

    /// <summary>Adds a fault at a place.</summary>
    /// <param name="place">Line and column.</param>
    /// <param name="wrong">What is wrong.</param>
    /// <param name="expected">What was expected.</param>
    /// <param name="kind">What kind of fault it is.</param>
    public void AddAt((int Line, int Column) place, string wrong, string expected, FaultKind? kind = null) =>
        _faults.Add(new(_file, place.Line, place.Column, wrong, expected) { Kind = kind ?? FaultKind.Impossible });

    /// <summary>The texts of a key are among a few words: said for whoever writes the form down, and looked at by the caller.</summary>
    /// <param name="key">The key, which was read already.</param>
    /// <param name="words">The words; asked for only where the form is taken down.</param>
    public void Only(string key, Func<ShapedWords> words) => _shape?.Only(key, words());

    /// <summary>Whether a key says this word, where otherwise something else is to be read there.</summary>
    /// <param name="key">The key.</param>
    /// <param name="word">The word.</param>
    public bool Says(string key, string word)
    {
        _shape?.Note(key, new(Shaped.Word) { Words = new(null, [word]) });
        return _entries.TryGetValue(key, out var entry) && entry.Value is YamlScalarNode { Value: var value } && value == word && Find(key, false) is not null;
    }

    /// <summary>Whether a key stands there.</summary>
    public bool Has(string key) => _entries.ContainsKey(key);

    /// <summary>The place of a key's value, or of the map.</summary>
    public (int Line, int Column) Place(string? key = null)
    {
        var start = (key is not null && _entries.TryGetValue(key, out var entry) ? entry.Value : _self).Start;
        return ((int)start.Line, (int)start.Column);
    }

    /// <summary>A text; null where the key is missing and not required.</summary>
    public string? Text(string key, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Text));
        return Scalar(key, required);
    }

    private string? Scalar(string key, bool required)
    {
        if (Find(key, required) is not { } node)
        {
            return null;
        }

        if (node is YamlScalarNode { Value: { Length: > 0 } value })
        {
            return value;
        }

        Add(node, $"{key} is {Describe(node)}", "a text", FaultKind.Form);
        return null;
    }

    /// <summary>One of a few words; null where missing or wrong.</summary>
    public string? Word(string key, IReadOnlyList<string> words, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Word) { Words = new(null, words) });
        return OneOf(key, words, required);
    }

    private string? OneOf(string key, IReadOnlyList<string> words, bool required)
    {
        if (Scalar(key, required) is not { } word)
        {
            return null;
        }

        if (words.Contains(word, StringComparer.Ordinal))
        {
            return word;
        }

        Add(key, $"{key} is '{word}'", "one of " + string.Join(", ", words), FaultKind.Word, Fault.Nearest(word, words));
        return null;
    }

    /// <summary>A measure of a dimension within a range of that unit system; null where missing or wrong.</summary>
    public Measure? Measure(string key, Dimension dimension, string example, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Measure) { Dimension = dimension, Example = example });
        if (Scalar(key, required) is not { } text)
        {
            return null;
        }

        var (measure, fault) = MeasureText.Read(text, dimension, null);
        if (measure is null)
        {
            Add(key, $"{key}: {fault}", $"a value with its unit, like {example}", FaultKind.Measure);
        }

        return measure;
    }

    /// <summary>A whole number within a range; null where missing or wrong.</summary>
    public int? Whole(string key, int low, int high, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Whole) { Range = (low, high) });
        if (Scalar(key, required) is not { } text)
        {
            return null;
        }

        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var value)
            && value >= low && value <= high)
        {
            return value;
        }

        Add(key, $"{key} is '{text}'", $"a whole number from {low} to {high}", FaultKind.Whole);
        return null;
    }

    /// <summary>A number without a unit within a range; null where missing or wrong.</summary>
    public double? Number(string key, double low, double high, string? example = null, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Number) { Range = (low, high) });
        if (Scalar(key, required) is not { } text)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= low && number <= high)
        {
            return number;
        }

        var range = string.Create(CultureInfo.InvariantCulture, $"a number from {low} to {high}");
        Add(key, $"{key} is '{text}'", example is null ? range : $"{range}, like {example}", FaultKind.Range);
        return null;
    }

    /// <summary>true or false; null where missing or wrong.</summary>
    public bool? Flag(string key)
    {
        _shape?.Note(key, new(Shaped.Flag));
        var word = OneOf(key, ["true", "false"], required: false);
        return word is null ? null : word == "true";
    }

    /// <summary>A mapping below; null where missing.</summary>
    public YamlMap? Map(string key, bool required = false)
    {
        var below = _shape?.Below(key, Shaped.Map);
        return Find(key, required) is { } node ? new(_file, node, _faults, key, below) : null;
    }

    /// <summary>A list of mappings below; empty where missing.</summary>
    public IReadOnlyList<YamlMap> Maps(string key, bool required = false)
    {
        var below = _shape?.Below(key, Shaped.Maps);
        return List(key, required).Select(node => new YamlMap(_file, node, _faults, key, below)).ToList();
    }

    /// <summary>A list of texts, or a single text as a list of one; empty where missing.</summary>
    public IReadOnlyList<string> Texts(string key, bool required = false)
    {
        _shape?.Note(key, new(Shaped.Texts));
        if (Find(key, required) is YamlScalarNode)
        {
            return Scalar(key, false) is { } single ? [single] : [];
        }

        var texts = new List<string>();
        foreach (var node in List(key, false))
        {
            if (node is YamlScalarNode { Value: { Length: > 0 } value })
            {
                texts.Add(value);
            }
            else
            {
                Add(node, $"an entry of {key} is {Describe(node)}", "a text", FaultKind.Form);
            }
        }

        return texts;
    }

    /// <summary>A list of texts, each with its place; empty where missing.</summary>
    public IReadOnlyList<(string Text, (int Line, int Column) Place)> PlacedTexts(string key)
    {
        var texts = Texts(key);
        return Find(key, false) is YamlSequenceNode list && list.Children.Count == texts.Count
            ? [.. texts.Zip(list.Children, (text, node) => (text, ((int)node.Start.Line, (int)node.Start.Column)))]
            : [.. texts.Select(text => (text, Place(key)))];
    }

    /// <summary>Tells every key that was never asked for.</summary>
    public void Finish()
    {
        _shape?.Finished(_required!);
        foreach (var (key, entry) in _entries)
        {
            if (!_asked.Contains(key))
            {
                Add(entry.Key, $"unknown key '{key}'", "one of " + string.Join(", ", _asked.Order(StringComparer.Ordinal)), FaultKind.UnknownKey, Fault.Nearest(key, _asked.Except(_entries.Keys)));
            }
        }
    }

    /// <summary>Throws if any fault was found in the file, each told once though its key be read twice.</summary>
    public void Demand()
    {
        if (_faults.Count > 0)
        {
            throw new FaultyFileException([.. _faults.Distinct().OrderBy(fault => fault.Line).ThenBy(fault => fault.Column)]);
        }
    }

    private List<YamlNode> List(string key, bool required)
    {
        switch (Find(key, required))
        {
            case null:
                return [];
            case YamlSequenceNode list:
                return [.. list.Children];
            case var node:
                Add(node, $"{key} is {Describe(node)}", "a list", FaultKind.Form);
                return [];
        }
    }

    private YamlNode? Find(string key, bool required)
    {
        _asked.Add(key);
        if (required)
        {
            _required?.Add(key);
        }

        if (_entries.TryGetValue(key, out var entry))
        {
            return entry.Value;
        }

        if (required)
        {
            Add(_self, $"the key '{key}' is missing", $"'{key}: …' here", FaultKind.MissingKey);
        }

        return null;
    }

    private void Add(YamlNode node, string wrong, string expected, FaultKind? kind, string? meant = null, string? help = null) =>
        _faults.Add(new(_file, (int)node.Start.Line, (int)node.Start.Column, wrong, expected) { Kind = kind ?? FaultKind.Impossible, Meant = meant, Help = help });

    private static string Describe(YamlNode node) => node switch
    {
        YamlScalarNode { Value: { Length: > 0 } value } => $"'{value}'",
        YamlScalarNode => "empty",
        YamlSequenceNode => "a list",
        YamlMappingNode => "a mapping",
        _ => "an alias",
    };

    /// <summary>The library throws exceptions of its own, and others where nothing closes a bracket or a key is empty.</summary>
    private static void Load(YamlStream stream, string text, PlainEvents events)
    {
        var scanner = new Scanner(new System.IO.StringReader(text));
        try
        {
            stream.Load(events.Of(new Parser(scanner)));
        }
        catch (Exception fault) when (fault is InvalidOperationException or ArgumentException)
        {
            throw new YamlException(scanner.CurrentPosition, scanner.CurrentPosition, "Something before this is empty, not closed, or closed twice");
        }
    }

    private static bool OnlyPlainKeys(YamlNode node) => node switch
    {
        YamlMappingNode map => map.Children.All(pair => pair.Key is YamlScalarNode && OnlyPlainKeys(pair.Value)),
        YamlSequenceNode list => list.Children.All(OnlyPlainKeys),
        _ => true,
    };
}
