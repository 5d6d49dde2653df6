namespace Panside.Guide.Hearing.Cries;

/// <summary>Concepts that together make a hazard.</summary>
/// <param name="Hazard">The hazard's place in the order of dangers.</param>
/// <param name="Weight">How much they say: <see cref="Sure"/>, <see cref="Likely"/> or <see cref="Hint"/>.</param>
/// <param name="Elements">What must stand in one part of a sentence.</param>
/// <param name="Absent">The concepts of which none may stand there.</param>
/// <param name="IsAlone">Whether nothing else may be said, but words of need.</param>
internal sealed record Combination(int Hazard, int Weight, IReadOnlyList<int[]> Elements, IReadOnlyList<int> Absent, bool IsAlone = false)
{
    /// <summary>Means the hazard beyond doubt.</summary>
    public const int Sure = 6;

    /// <summary>Enough for the list of dangers to be opened.</summary>
    public const int Likely = 4;

    /// <summary>Too little by itself.</summary>
    public const int Hint = 2;
}

/// <summary>A combination as a file writes it: <c>pan|level empty -wood</c>.</summary>
/// <param name="Hazard">The hazard's name.</param>
/// <param name="Weight">How much it says.</param>
/// <param name="Text">The names of concepts; <c>|</c> between alternatives, <c>-</c> before what may not stand there.</param>
/// <param name="IsAlone">Whether nothing else may be said, but words of need.</param>
internal sealed record WrittenCombination(string Hazard, int Weight, string Text, bool IsAlone)
{
    /// <summary>The concepts that are named.</summary>
    public static IEnumerable<string> Named(string text) =>
        text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(word => word.TrimStart('-').Split('|'));

    /// <summary>The combination with the numbers of a book.</summary>
    public Combination Compile(int hazard, Func<string, int> number)
    {
        var words = Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return new(
            hazard,
            Weight,
            [.. words.Where(word => word[0] != '-').Select(word => word.Split('|').Select(number).ToArray())],
            [.. words.Where(word => word[0] == '-').SelectMany(word => word[1..].Split('|')).Select(number)],
            IsAlone);
    }
}
