namespace Panside.Reckoning.Ensemble;

/// <summary>
/// What a forecast is set right by before it is told. With m the middle of the members and o an offset, a member's value x is told
/// as <c>(m + o) exp(shift + spread ln((x + o)/(m + o))) - o</c>, one spread below the middle and one above it, and not below 0.
/// </summary>
/// <param name="Shift">The logarithm by which all values are moved.</param>
/// <param name="Below">How much wider than the members the band is below the middle.</param>
/// <param name="Above">The same above the middle.</param>
/// <param name="Offset">In the forecast's unit: far under it a value is moved by parts of the offset, not of itself.</param>
internal readonly record struct Correction(double Shift, double Below, double Above, double Offset = 0)
{
    /// <summary>As the members say it.</summary>
    public static Correction None { get; } = new(0, 1, 1);

    /// <summary>The same, but no narrower than the members.</summary>
    public Correction NoNarrower => this with { Below = double.Max(Below, 1), Above = double.Max(Above, 1) };

    /// <summary>The same, so many times as wide.</summary>
    public Correction Wider(double times) => this with { Below = times * Below, Above = times * Above };

    /// <summary>A value as it is told; 0 and what has no end stay so.</summary>
    /// <param name="value">A member's value or a quantile.</param>
    /// <param name="middle">The middle of the members.</param>
    public double Of(double value, double middle)
    {
        if (this == None || value <= 0 || middle <= 0 || !double.IsFinite(value) || !double.IsFinite(middle))
        {
            return value;
        }

        var off = double.Log((value + Offset) / (middle + Offset));
        return double.Max(((middle + Offset) * double.Exp(Shift + ((off < 0 ? Below : Above) * off))) - Offset, 0);
    }
}
