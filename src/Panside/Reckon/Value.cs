using System.Globalization;
using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>The value of one input.</summary>
internal sealed record Value
{
    /// <summary>A number with its unit, where the input has one.</summary>
    public Measure? Measure { get; init; }

    /// <summary>A bare number: degrees Baume.</summary>
    public double? Baume { get; init; }

    /// <summary>A word.</summary>
    public string? Word { get; init; }

    /// <summary>Whether nobody gave it.</summary>
    public bool IsUsual { get; init; }

    /// <summary>As a person reads it.</summary>
    public override string ToString() =>
        Measure?.ToString() ?? Word ?? Baume?.ToString("0.### 'Baume'", CultureInfo.InvariantCulture) ?? "";
}
