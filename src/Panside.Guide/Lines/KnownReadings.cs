using System.Collections.Frozen;

namespace Panside.Guide.Lines;

/// <summary>The readings that a boil knows, by their codes and by the words that are typed for them. It never changes.</summary>
public sealed class KnownReadings
{
    private readonly FrozenDictionary<string, ReadingName> _byCode;

    private KnownReadings(IReadOnlyList<ReadingName> all)
    {
        All = all;
        _byCode = all.ToFrozenDictionary(name => name.Code);
        Words = all.SelectMany(name => name.Typed.Select(word => (word, name))).DistinctBy(row => row.word)
            .ToFrozenDictionary(row => row.word, row => row.name, StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Those that the program comes with.</summary>
    public static KnownReadings BuiltIn { get; } = new([.. ReadingName.AtTheRig, .. ReadingName.OfSamples, .. ReadingName.BesideTheRig]);

    /// <summary>All of them, in the order in which they are listed.</summary>
    public IReadOnlyList<ReadingName> All { get; }

    /// <summary>Each word that is typed before a number, and what is read; upper and lower case are the same.</summary>
    public FrozenDictionary<string, ReadingName> Words { get; }

    /// <summary>By its code; null where there is none.</summary>
    public ReadingName? Find(string code) => _byCode.GetValueOrDefault(code);

    /// <summary>These and one more.</summary>
    /// <param name="name">The one more.</param>
    /// <exception cref="ArgumentException">There is one of its code already.</exception>
    public KnownReadings With(ReadingName name) => new([.. All, name]);
}
