using System.Globalization;

namespace Panside.Reckoning.Tests.Support;

/// <summary>
/// A tolerance that says what it is relative to, and that refuses a row which a trivial answer would pass: zero where the
/// truth is not zero, or one constant for a whole column.
/// </summary>
public readonly record struct Within
{
    private readonly double _size;
    private readonly bool _relative;

    private Within(double size, bool relative) => (_size, _relative) = (size, relative);

    /// <summary>A fraction of the expected value, over 0 and under 1.</summary>
    public static Within Relative(double fraction) => fraction is > 0 and < 1
        ? new(fraction, true)
        : throw new ArgumentOutOfRangeException(nameof(fraction), fraction, "A relative tolerance of 1 or more accepts zero.");

    /// <summary>An amount in the unit of the expected value, over 0.</summary>
    public static Within Absolute(double amount) => amount > 0
        ? new(amount, false)
        : throw new ArgumentOutOfRangeException(nameof(amount), amount, "A tolerance is over 0.");

    /// <summary>Fails unless one value agrees.</summary>
    public void Holds(double expected, double actual, string what = "value") => HoldsOver([new(what, expected, actual)]);

    /// <summary>Fails with every row that does not agree, or that could not have failed.</summary>
    public void HoldsOver(IReadOnlyCollection<Row> rows)
    {
        Assert.NotEmpty(rows);
        Within tolerance = this;
        List<string> faults = [.. rows.Select(tolerance.FaultOf).OfType<string>()];
        if (rows.Count > 1 && tolerance.AcceptsOneConstant(rows))
        {
            faults.Add("one constant would pass every row: the tolerance is too wide");
        }

        Assert.True(faults.Count == 0, string.Join(Environment.NewLine, faults));
    }

    private string? FaultOf(Row row)
    {
        if (_relative && row.Expected == 0)
        {
            return $"{row.What}: a relative tolerance says nothing about an expected zero";
        }

        if (row.Expected != 0 && Math.Abs(row.Expected) <= Allowed(row.Expected))
        {
            return Invariant($"{row.What}: zero would pass for {row.Expected} within {this}");
        }

        return Math.Abs(row.Actual - row.Expected) <= Allowed(row.Expected)
            ? null
            : Invariant($"{row.What}: expected {row.Expected} within {this}, got {row.Actual}");
    }

    private bool AcceptsOneConstant(IReadOnlyCollection<Row> rows)
    {
        Within tolerance = this;
        return rows.Max(r => r.Expected - tolerance.Allowed(r.Expected)) <= rows.Min(r => r.Expected + tolerance.Allowed(r.Expected));
    }

    private double Allowed(double expected) => _relative ? _size * Math.Abs(expected) : _size;

    /// <inheritdoc/>
    public override string ToString() => _relative ? Invariant($"{_size * 100} %") : Invariant($"±{_size}");

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    /// <summary>One row of a table: its name, what the table says, what the code says.</summary>
    public readonly record struct Row(string What, double Expected, double Actual);
}
