namespace Panside.Screen.Painting;

/// <summary>A painted screen: exactly as many rows as it is high, none wider than it is wide.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Caret">Where the cursor stands; null where it is hidden.</param>
/// <param name="Scroll">How far the conversation is scrolled, within what it has.</param>
internal sealed record Frame(IReadOnlyList<StyledLine> Rows, (int Column, int Row)? Caret, int Scroll)
{
    /// <summary>Whether another frame looks the same.</summary>
    public bool LooksLike(Frame? other) => other is not null && Caret == other.Caret && Rows.SequenceEqual(other.Rows);

    /// <inheritdoc/>
    public override string ToString() => string.Join('\n', Rows.Select(row => row.ToString().TrimEnd()));
}
