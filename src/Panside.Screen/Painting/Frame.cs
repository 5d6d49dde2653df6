namespace Panside.Screen.Painting;

/// <summary>A painted screen: exactly as many rows as it is high, none wider than it is wide.</summary>
/// <param name="Rows">The rows.</param>
/// <param name="Caret">Where the cursor stands; null where it is hidden.</param>
/// <param name="Scroll">How far the conversation is scrolled, within what it has.</param>
internal sealed record Frame(IReadOnlyList<StyledLine> Rows, (int Column, int Row)? Caret, int Scroll)
{
    /// <summary>Whether another frame looks the same.</summary>
    public bool LooksLike(Frame? other) => other is not null && Caret == other.Caret && Rows.SequenceEqual(other.Rows);

    /// <summary>The same with other words on the line that is typed on, which is where the cursor stands; itself where there is no such line.</summary>
    /// <param name="row">The line that is typed on.</param>
    /// <param name="caret">The cursor's column on it.</param>
    public Frame With(StyledLine row, int caret)
    {
        if (Caret is not { } at)
        {
            return this;
        }

        StyledLine[] rows = [.. Rows];
        rows[at.Row] = row;
        return this with { Rows = rows, Caret = at with { Column = caret } };
    }

    /// <inheritdoc/>
    public override string ToString() => string.Join('\n', Rows.Select(row => row.ToString().TrimEnd()));
}
