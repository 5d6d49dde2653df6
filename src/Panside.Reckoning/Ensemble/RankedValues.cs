namespace Panside.Reckoning.Ensemble;

/// <summary>Equally likely values, one of each member; ranked once something is asked of them.</summary>
public sealed class RankedValues
{
    private readonly double[] _values;
    private readonly Correction _correction;
    private double[]? _sorted;

    internal RankedValues(double[] values)
        : this(values, Correction.None)
    {
    }

    /// <summary>Values of members that are set right before they are told.</summary>
    internal RankedValues(double[] values, Correction correction) => (_values, _correction) = (values, correction);

    /// <summary>The value at a quantile from 0 to 1; infinite where that many members have none.</summary>
    public double At(double quantile) => _correction.Of(Ranked(quantile), Ranked(0.5));

    /// <summary>The same as the members have it, before it is set right.</summary>
    internal RankedValues AsReckoned => _correction == Correction.None ? this : new(_values);

    /// <summary>One member's value as it is told.</summary>
    internal double Of(int member) => _correction.Of(_values[member], Ranked(0.5));

    private double Ranked(double quantile) => Sorted.At(_sorted ??= Sorted.Of(_values), quantile);
}
