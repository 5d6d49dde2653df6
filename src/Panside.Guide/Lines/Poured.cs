using Panside.Guide.Measures;

namespace Panside.Guide.Lines;

/// <summary>What is known of liquid that was poured into the pan.</summary>
internal static class Poured
{
    /// <summary>Whether the last pour was told without its amount, and no depth has been read since that could tell it.</summary>
    /// <param name="pour">The last pour; null before any.</param>
    /// <param name="read">When the depth was read last; null before that.</param>
    public static bool IsUnmeasuredSince(Noted<Measure?>? pour, Moment? read) =>
        pour is { Value: null } told && !(read?.Time > told.At.Time);
}
