using Panside.Reckoning.Ensemble;

namespace Panside.Workshop.Judging;

/// <summary>One forecast beside what truly came.</summary>
/// <param name="Phase">The phase that it was made in.</param>
/// <param name="Forecast">Its name.</param>
/// <param name="Truth">What came.</param>
/// <param name="Quantile">The forecast's value at a quantile.</param>
/// <param name="LastRate">What "the last rate goes on" would have said; null where it says nothing.</param>
internal sealed record Judgement(string Phase, string Forecast, double Truth, IReadOnlyList<double> Quantile, double? LastRate)
{
    /// <summary>The quantiles kept: 2.5 %, 7.5 % … 97.5 %, then 5, 25, 75 and 95 %.</summary>
    public static IReadOnlyList<double> Levels { get; } =
        [.. Enumerable.Range(0, Points).Select(point => (point + 0.5) / Points), 0.05, 0.25, 0.75, 0.95];

    private const int Points = 20;

    /// <summary>The place of the last quantile below the middle.</summary>
    public const int Middle = (Points / 2) - 1;

    /// <summary>The place of one of the quantiles that bands are told by: 0.05, 0.25, 0.75 or 0.95.</summary>
    public static int PlaceOf(double level) => Points + (level < 0.1 ? 0 : level < 0.5 ? 1 : level < 0.9 ? 2 : 3);

    /// <summary>The middle of the forecast.</summary>
    public double Median => (Quantile[Middle] + Quantile[Middle + 1]) / 2;

    /// <summary>How far the middle half covers the truth: 0 or 1, or between where many quantiles are the truth.</summary>
    public double InHalf => Share(Points + 1, Points + 2);

    /// <summary>The quantiles as the members have them, before they are set right; empty where nothing sets them right.</summary>
    public IReadOnlyList<double> Reckoned { get; init; } = [];

    /// <summary>How far fire and pan had come.</summary>
    public FireStage Stage { get; init; }

    /// <summary>Whether a blower feeds the fire.</summary>
    public bool ForcedDraft { get; init; }

    /// <summary>The band as the stream told it last; null where it told none.</summary>
    public (double Low, double High)? Told { get; init; }

    /// <summary>Whether the band as told covers the truth: 0 or 1; null where none was told.</summary>
    public double? InTold => Told is var (low, high) ? Truth >= low && Truth <= high ? 1 : 0 : null;

    /// <summary>How far the 90 % band covers the truth.</summary>
    public double InBand => Share(Points, Points + 3);

    /// <summary>How wide the 90 % band is, in the forecast's unit.</summary>
    public double Width => Quantile[Points + 3] - Quantile[Points];

    /// <summary>
    /// The continuous ranked probability score by the mean of the pinball losses of evenly spaced quantiles (F. Laio, S. Tamea,
    /// Hydrology and Earth System Sciences 11 (2007) 1267–1277, from memory), in the forecast's unit.
    /// </summary>
    public double Score
    {
        get
        {
            var sum = 0.0;
            for (var point = 0; point < Points; point++)
            {
                var off = Truth - Quantile[point];
                sum += 2 * (off >= 0 ? Levels[point] * off : (Levels[point] - 1) * off);
            }

            return sum / Points;
        }
    }

    /// <summary>The same score of the one value that the last rate says: its distance.</summary>
    public double? ScoreOfLastRate => LastRate is { } value ? double.Abs(Truth - value) : null;

    /// <summary>
    /// A forecast can hold one value for likely in itself: a pan that does not boil is still in 0 minutes. Where that comes true
    /// it lies inside and outside any band by turns; it counts by the part of its quantiles that are inside (the randomized
    /// probability integral transform of C. Czado, T. Gneiting, L. Held, Biometrics 65 (2009) 1254–1261, its mean; from memory).
    /// </summary>
    private double Share(int low, int high)
    {
        var evenly = Quantile.Take(Points).ToList();
        var (below, upTo) = (evenly.Count(value => value < Truth) / (double)Points, evenly.Count(value => value <= Truth) / (double)Points);
        if (upTo > below)
        {
            return double.Max(double.Min(upTo, Levels[high]) - double.Max(below, Levels[low]), 0) / (upTo - below);
        }

        return Truth >= Quantile[low] && Truth <= Quantile[high] ? 1 : 0;
    }
}
