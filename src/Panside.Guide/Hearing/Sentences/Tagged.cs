namespace Panside.Guide.Hearing.Sentences;

/// <summary>A sentence's words, and where the book's concepts stand in it.</summary>
internal sealed class Tagged
{
    private static readonly List<Span> None = [];
    private static readonly List<int> Nowhere = [];

    private readonly Dictionary<int, List<int>> _places = [];
    private readonly List<Span>[] _spans;
    private readonly ulong[] _isThere;

    /// <summary>Finds the concepts of a book in words.</summary>
    public Tagged(IReadOnlyList<Token> tokens, WordBook book)
    {
        Tokens = tokens;
        _isThere = new ulong[(book.Entries >> 6) + 1];
        for (var at = 0; at < tokens.Count; at++)
        {
            foreach (var key in tokens[at].Keys)
            {
                _isThere[key >> 6] |= 1ul << key;
                (_places.TryGetValue(key, out var places) ? places : _places[key] = []).Add(at);
            }
        }

        _spans = new List<Span>[book.Concepts.Count];
        Array.Fill(_spans, None);
        foreach (var concept in book.Concepts)
        {
            List<Span>? found = null;
            foreach (var phrase in concept.Phrases)
            {
                if (phrase.MayStandIn(this))
                {
                    phrase.Find(this, found ??= []);
                }
            }

            _spans[concept.Number] = found ?? None;
        }
    }

    /// <summary>The words.</summary>
    public IReadOnlyList<Token> Tokens { get; }

    /// <summary>Where a concept stands.</summary>
    public List<Span> Of(int concept) => _spans[concept];

    /// <summary>Whether an entry of the book stands anywhere.</summary>
    public bool Has(int key) => (_isThere[key >> 6] & (1ul << key)) != 0;

    /// <summary>Where an entry of the book stands.</summary>
    public List<int> Places(int key) => _places.GetValueOrDefault(key, Nowhere);
}
