using System.Globalization;

namespace Panside.Guide.Measures;

/// <summary>A number with its unit, as it was said. The reckoning takes quantities; <see cref="UnitSystem"/> turns one into the other.</summary>
/// <param name="Value">A finite number in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Measure(double Value, Unit Unit)
{
    /// <summary>As a person reads it: <c>12.5 gal</c>, <c>217.4 °F</c>; three decimals at the most.</summary>
    public override string ToString() =>
        Value.ToString("0.###", CultureInfo.InvariantCulture) + (Unit == Unit.Percent ? " %" : " " + Unit.Shown());
}
