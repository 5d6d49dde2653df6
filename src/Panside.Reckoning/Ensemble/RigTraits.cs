namespace Panside.Reckoning.Ensemble;

/// <summary>One trait of a rig as far as it is known: a number that stays through a boil.</summary>
/// <param name="Name">Its name, like <c>heat</c>.</param>
/// <param name="Mean">How far it is from what the rig's file suggests; a difference of logarithms unless <see cref="RigTraits"/> says otherwise.</param>
/// <param name="Deviation">Its standard deviation, over 0.</param>
public readonly record struct RigTrait(string Name, double Mean, double Deviation);

/// <summary>What is known of a rig beyond its file: each trait's mean and deviation over the members.</summary>
public sealed record RigTraits
{
    /// <summary>The names, and the number of a member that each is. <c>coal-share</c> is no logarithm but a share.</summary>
    internal static readonly IReadOnlyList<(string Name, int Field)> Fields =
    [
        ("heat", Field.Heat), ("flame-time", Field.FlameTime), ("coal-time", Field.CoalTime), ("brick-time", Field.BrickTime),
        ("to-brick", Field.ToBrick), ("coal-share", Field.CoalShare), ("air-loss", Field.AirLoss), ("vapor", Field.Vapor), ("mixing", Field.Mixing),
    ];

    /// <summary>The names of all traits, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. Fields.Select(trait => trait.Name)];

    /// <summary>Traits of a rig.</summary>
    /// <param name="all">One for each of <see cref="Names"/>, in that order; finite, with deviations over 0.</param>
    /// <exception cref="ArgumentException">They are not.</exception>
    public RigTraits(IReadOnlyList<RigTrait> all)
    {
        if (!all.Select(trait => trait.Name).SequenceEqual(Names) || all.Any(trait => !double.IsFinite(trait.Mean) || trait.Deviation is not (> 0 and < 10)))
        {
            throw new ArgumentException($"Expected a finite mean and a deviation over 0 for each of {string.Join(", ", Names)}.", nameof(all));
        }

        All = all;
    }

    /// <summary>The traits, in the order of <see cref="Names"/>.</summary>
    public IReadOnlyList<RigTrait> All { get; }

    /// <summary>One by its name.</summary>
    public RigTrait this[string name] => All.First(trait => trait.Name == name);
}
