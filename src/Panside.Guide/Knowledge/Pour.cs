using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>Liquid that was poured into the pan by hand.</summary>
/// <param name="At">When.</param>
/// <param name="Measure">How much, as it was said.</param>
/// <param name="Liquid">One of <see cref="Liquids"/>.</param>
/// <param name="Volume">How much.</param>
public sealed record Pour(Moment At, Measure Measure, string Liquid, Volume Volume)
{
    /// <summary>
    /// Whether a tank reading has shown since that it was dipped out of the tank. Until then a pour is taken to come from elsewhere,
    /// from a pail of the same sap.
    /// </summary>
    public bool IsOutOfTank { get; init; }

    /// <summary>Into which of two pans; null where nobody said.</summary>
    public string? Pan { get; init; }

    /// <summary>Whether nobody said how much it was: it then stands here with no volume, and the depth that is read next tells of it.</summary>
    public bool IsUnmeasured => Measure.Value == 0;

    /// <summary>All that was poured of each liquid, in words: <c>2 gal of sap and 1 gal of water</c>; null where nothing was.</summary>
    public static string? Told(IReadOnlyList<Pour> pours, UnitSystem units)
    {
        string[] told =
        [
            .. pours.GroupBy(pour => pour.Liquid).OrderBy(of => of.Key, StringComparer.Ordinal).Select(of =>
                of.All(pour => pour.IsUnmeasured) ? $"some {of.Key}"
                : $"{Amount.Shown(units.From(Volume.FromLiters(of.Sum(pour => pour.Volume.Liters))))} of {of.Key}{(of.Any(pour => pour.IsUnmeasured) ? " and some more" : "")}"),
        ];
        return told.Length > 0 ? string.Join(" and ", told) : null;
    }

    /// <summary>The deed that told of it.</summary>
    public Did Did => new(At, DeedName.FillPan, IsUnmeasured ? null : Measure) { Is = Liquid, Pan = Pan };
}
