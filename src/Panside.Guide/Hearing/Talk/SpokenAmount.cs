using Panside.Guide.Measures;

namespace Panside.Guide.Hearing.Talk;

/// <summary>An amount as it was spoken.</summary>
/// <param name="Value">The number; minutes since midnight where it is a time of day.</param>
/// <param name="Unit">Its unit; null where none was said.</param>
/// <param name="Hint">What else tells its kind.</param>
internal sealed record SpokenAmount(double Value, Unit? Unit, AmountHint Hint = AmountHint.None)
{
    /// <summary>Whether a time of day can be in the morning or in the evening.</summary>
    public bool IsEither { get; init; }

    /// <summary>Whether it can measure a dimension: in its unit, or in the usual one where none was said.</summary>
    /// <param name="dimension">The dimension.</param>
    public bool Fits(Dimension dimension) => Hint != AmountHint.Clock && (Value >= 0 || dimension == Dimension.Temperature) && (Unit switch
    {
        null => Hint != AmountHint.Degrees || dimension is Dimension.Temperature or Dimension.Sugar,
        // The glass stands at 29.8 inches: of mercury.
        Measures.Unit.Inch when dimension == Dimension.Pressure => Value is > 24 and < 33,
        Measures.Unit.Percent => dimension is Dimension.Sugar or Dimension.Share,
        { } unit => unit.Kind() == dimension,
    });

    /// <summary>The amount as a measure of a dimension.</summary>
    /// <param name="assumed">The unit where none was said.</param>
    public (double Value, Unit Unit) In(Unit assumed) => (Value, Unit switch
    {
        Measures.Unit.Inch when assumed.Kind() == Dimension.Pressure => Measures.Unit.InchOfMercury,
        null or Measures.Unit.Percent => assumed,
        { } unit => unit,
    });
}

/// <summary>What a word beside a number tells of its kind.</summary>
internal enum AmountHint
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>Degrees, and nobody says which.</summary>
    Degrees,

    /// <summary>A time of day.</summary>
    Clock,
}

/// <summary>A word or an amount, with the pause before it.</summary>
/// <param name="Text">The word; of an amount what it is of, as <c>&lt;volume&gt;</c>.</param>
/// <param name="Amount">The amount; null where it is a word.</param>
/// <param name="IsPaused">Whether a comma or more stands before it.</param>
internal sealed record Piece(string Text, SpokenAmount? Amount, bool IsPaused);
