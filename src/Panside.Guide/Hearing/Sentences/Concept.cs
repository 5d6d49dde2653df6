namespace Panside.Guide.Hearing.Sentences;

/// <summary>What several words say: <c>pan</c> is said by pan, evaporator, kettle.</summary>
/// <param name="Name">Its name in the book.</param>
/// <param name="Number">Its place in the book.</param>
/// <param name="IsThing">Whether it is a thing that a later part of a sentence may still speak of.</param>
/// <param name="Phrases">How it is said.</param>
internal sealed record Concept(string Name, int Number, bool IsThing, IReadOnlyList<Phrase> Phrases);
