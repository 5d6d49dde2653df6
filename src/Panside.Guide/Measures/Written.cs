using System.Globalization;

namespace Panside.Guide.Measures;

/// <summary>A number and a unit as somebody wrote them; whether they are a <see cref="Measure"/> is still to be asked.</summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Written(double Value, Unit Unit)
{
    /// <summary>The number as a person reads it, three decimals at the most.</summary>
    public string Number => Value.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>As a person reads it: <c>12.5 gal</c>, <c>217.4 °F</c>.</summary>
    public override string ToString() => Number + (Unit == Unit.Percent ? " %" : " " + Unit.Shown());
}
