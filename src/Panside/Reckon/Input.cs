using Panside.Guide.Measures;

namespace Panside.Reckon;

/// <summary>One input of a calculation: what it is, how it is written, what is believed.</summary>
/// <param name="Name">The option without its dashes.</param>
/// <param name="What">What it is, in a few words.</param>
/// <param name="Example">A value as a person writes it.</param>
internal sealed record Input(string Name, string What, string Example)
{
    /// <summary>What it measures; null for a word of <see cref="Words"/> and for degrees Baume.</summary>
    public Dimension? Dimension { get; init; }

    /// <summary>The value that is taken where none is given, as a person writes it.</summary>
    public string? Usual { get; init; }

    /// <summary>Whether the calculation can do without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>Another input that this one makes no sense without.</summary>
    public string? With { get; init; }

    /// <summary>The values that are believed.</summary>
    public Limits? Limits { get; init; }

    /// <summary>What was likely meant by a value outside them, where no other unit explains it; null where nothing is likely.</summary>
    public Func<Written, string?>? Slip { get; init; }

    /// <summary>The words to choose from; empty for a number.</summary>
    public IReadOnlyList<string> Words { get; init; } = [];

    /// <summary>What a word is understood as, one of <see cref="Words"/> or null; as it stands unless said.</summary>
    public Func<string, string?>? Understand { get; init; }

    /// <summary>The unit where none is written, if not the usual one of its dimension.</summary>
    public Func<UnitSystem, Unit>? Assumed { get; init; }

    /// <summary>The option as it is typed.</summary>
    public string Option => "--" + Name;

    /// <summary>Whether it must be given unless an alternative is.</summary>
    public bool IsNeeded => Usual is null && !IsOptional;

    /// <summary>The unit of a bare number.</summary>
    public Unit? UnitIn(UnitSystem units) =>
        Dimension is { } dimension ? Assumed?.Invoke(units) ?? units.Preferred(dimension) : null;
}

/// <summary>The values of an input that are believed.</summary>
internal readonly record struct Limits(double Least, double Most, Unit Unit);
