using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Rigs;

/// <summary>
/// The pan behind the one with the draw-off, over the same fire: the tank's float feeds it, and a second float lets what it holds on into
/// the pan in front. All depths are over its flues, where it has some.
/// </summary>
public sealed record PanBehind
{
    /// <summary>Inside length.</summary>
    public required Length Length { get; init; }

    /// <summary>Inside width.</summary>
    public required Length Width { get; init; }

    /// <summary>Channels; 1 is an undivided pan.</summary>
    public required int Channels { get; init; }

    /// <summary>The depth that it is run at.</summary>
    public required Length RunDepth { get; init; }

    /// <summary>The depth that it must never fall below while hot.</summary>
    public required Length LeastDepth { get; init; }

    /// <summary>The depth for a shutdown.</summary>
    public required Length FloodDepth { get; init; }

    /// <summary>The height of the wall over the flues.</summary>
    public required Length WallDepth { get; init; }

    /// <summary>Whether flues hang below its floor.</summary>
    public required bool HasFlues { get; init; }

    /// <summary>So many times its plan area the fire sees: 1 for a flat floor.</summary>
    public required double HeatedTimes { get; init; }

    /// <summary>What the flues hold; none where the file says only how large their surface is.</summary>
    public required Volume InFlues { get; init; }

    /// <summary>Plan area.</summary>
    public Area Area => Area.FromSquareMeters(Length.Meters * Width.Meters);

    /// <summary>As the reckoning takes it.</summary>
    public BackPan Description => new(Area, RunDepth, LeastDepth, FloodDepth, Channels, HeatedTimes, InFlues);

    /// <summary>Flues of so many and so deep: each has two walls along the whole pan, and they take half of its floor. Geometry, and for the half no source.</summary>
    /// <param name="depth">How deep each hangs.</param>
    /// <param name="number">How many.</param>
    /// <param name="length">Inside length of the pan.</param>
    /// <param name="width">Inside width of the pan.</param>
    /// <returns>How many times the plan area the fire sees, walls and floor together; and what the flues hold below the floor.</returns>
    internal static (double HeatedTimes, Volume InFlues) Flues(Length depth, int number, Length length, Length width) =>
        (1 + (2 * number * (depth / width)), Area.FromSquareMeters(length.Meters * width.Meters) * depth * 0.5);
}
