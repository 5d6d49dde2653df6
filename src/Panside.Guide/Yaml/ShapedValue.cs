using Panside.Guide.Measures;

namespace Panside.Guide.Yaml;

/// <summary>One way in which a key's value is read.</summary>
/// <param name="As">What it is.</param>
public sealed record ShapedValue(Shaped As)
{
    /// <summary>The words that it may be; null for any text.</summary>
    public ShapedWords? Words { get; set; }

    /// <summary>What a measure measures.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>How a measure may be written.</summary>
    public string Example { get; init; } = "";

    /// <summary>The least and the most of a number.</summary>
    public (double Low, double High) Range { get; init; }

    /// <summary>The form of a mapping below.</summary>
    public Shape? Below { get; init; }
}
