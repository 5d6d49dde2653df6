namespace Panside.Guide.Asking;

/// <summary>A key and the word that it types.</summary>
/// <param name="Name">As printed on it: <c>F1</c>, <c>2</c>.</param>
/// <param name="Word">The word.</param>
/// <param name="Hint">What the row of keys says of it; empty where it has no place there.</param>
/// <param name="Meaning">What the page of help says of it.</param>
public sealed record PageKey(string Name, string Word, string Hint, string Meaning);

/// <summary>What is asked now, as every face shows it.</summary>
/// <param name="Title">Where in the conversation this is.</param>
/// <param name="Picture">A picture of what to measure, or a list to choose from: rows of signs of ASCII.</param>
/// <param name="Ask">The question.</param>
/// <param name="Hint">What may be typed: unit, range, what Enter takes.</param>
/// <param name="Keys">The keys, the most needed first.</param>
public sealed record Page(string Title, IReadOnlyList<string> Picture, string Ask, string Hint, IReadOnlyList<PageKey> Keys);
