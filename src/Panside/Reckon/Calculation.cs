namespace Panside.Reckon;

/// <summary>One calculation of <c>panside reckon</c>: what it takes, how it is reckoned, what it stands on.</summary>
/// <param name="Name">The name that is typed.</param>
/// <param name="Help">What it tells, in a line.</param>
internal sealed record Calculation(string Name, string Help)
{
    /// <summary>The arguments of a first example.</summary>
    public required string Example { get; init; }

    /// <summary>What it takes, in the order in which it is asked for.</summary>
    public required IReadOnlyList<Input> Inputs { get; init; }

    /// <summary>Inputs of which one must be given; they are asked for in this order.</summary>
    public IReadOnlyList<string> OneOf { get; init; } = [];

    /// <summary>A second such choice.</summary>
    public IReadOnlyList<string> AlsoOneOf { get; init; } = [];

    /// <summary>The result: a pure function of the inputs.</summary>
    public required Func<Given, Result> Reckon { get; init; }

    /// <summary>What it stands on.</summary>
    public required Basis Basis { get; init; }
}

/// <summary>What a result stands on.</summary>
/// <param name="Method">How it is reckoned.</param>
/// <param name="Sources">Keys of docs/sources.md.</param>
/// <param name="Range">Where it holds, and how exactly.</param>
/// <param name="DoesNotCover">What it leaves out.</param>
internal sealed record Basis(string Method, IReadOnlyList<string> Sources, string Range, string DoesNotCover);

/// <summary>Figures, and what they mean in plain sentences.</summary>
internal sealed record Result(IReadOnlyList<Figure> Figures, params IReadOnlyList<string> Notes);

/// <summary>Calculations that belong together.</summary>
internal sealed record Group(string Title, IReadOnlyList<Calculation> Calculations);
