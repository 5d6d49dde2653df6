namespace Panside.Screen.Painting;

/// <summary>Text in one tone.</summary>
internal readonly record struct Piece(string Text, Tone Tone);

/// <summary>One row of the screen.</summary>
internal sealed class StyledLine(params IReadOnlyList<Piece> pieces) : IEquatable<StyledLine>
{
    /// <summary>A row with nothing on it.</summary>
    public static StyledLine Empty { get; } = new();

    /// <summary>Its pieces, from the left.</summary>
    public IReadOnlyList<Piece> Pieces { get; } = pieces;

    /// <summary>Columns that it takes.</summary>
    public int Width => Pieces.Sum(piece => Columns.Of(piece.Text));

    /// <summary>A row in one tone.</summary>
    public static StyledLine Of(string text, Tone tone = Tone.Plain) => new(new Piece(text, tone));

    /// <summary>This row, cut or filled to a width; the filling takes the last tone where that is a band of color.</summary>
    public StyledLine Fit(int width)
    {
        var fitted = new List<Piece>();
        var left = width;
        foreach (var piece in Pieces)
        {
            var text = Columns.Cut(piece.Text, left);
            fitted.Add(piece with { Text = text });
            left -= Columns.Of(text);
        }

        if (left > 0)
        {
            var tone = fitted.Count > 0 && fitted[^1].Tone > Tone.Strong ? fitted[^1].Tone : Tone.Plain;
            fitted.Add(new(new string(' ', left), tone));
        }

        return new(fitted);
    }

    /// <summary>This row with another to its right.</summary>
    public StyledLine With(StyledLine right) => new([.. Pieces, .. right.Pieces]);

    /// <inheritdoc/>
    public bool Equals(StyledLine? other) => other is not null && Pieces.SequenceEqual(other.Pieces);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as StyledLine);

    /// <inheritdoc/>
    public override int GetHashCode() => Pieces.Count == 0 ? 0 : Pieces[0].GetHashCode();

    /// <inheritdoc/>
    public override string ToString() => string.Concat(Pieces.Select(piece => piece.Text));
}
