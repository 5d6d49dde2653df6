using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;

namespace Panside.Guide.Sessions;

/// <summary>
/// Liquid that went into the pan while nobody said how much. It counts already, as a pour of unknown size; how much it was is asked, and where
/// that is not known, the depth tells it.
/// </summary>
internal static class SomePoured
{
    /// <summary>Told where nobody is asked, or nobody knows.</summary>
    public const string Unasked = "It counts as a pour of unknown size: read the pan's depth, and say it.";

    /// <summary>The pour of which the amount is asked just now; null where none is.</summary>
    public static Did? Open(SessionState state) => state.Doubted is Did { IsUnmeasured: true } pour ? pour : null;

    /// <summary>The question.</summary>
    /// <param name="pour">The pour.</param>
    /// <param name="units">The rig's units.</param>
    public static Doubt Question(Did pour, UnitSystem units) => new(
        $"How much {pour.Is} was it? Say it like '{(units == UnitSystem.Metric ? "5 L" : "2 gal")}'; or read the depth: 'depth {(units == UnitSystem.Metric ? "4" : "1 1/2")}'.",
        "Counted meanwhile as a pour of unknown size. Not known? Yes goes on, and the depth is asked.");

    /// <summary>The question told once more.</summary>
    /// <param name="pour">The pour.</param>
    public static string StillOpen(Did pour) => $"Still open: {Describe.Line(pour)}, how much? An amount or the depth answers this; yes goes on.";
}
