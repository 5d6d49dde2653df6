using System.Globalization;

namespace Panside.Reckoning;

/// <summary>The one place where a value outside a range is told: what it is for, the value, the range.</summary>
internal static class OutOfRange
{
    /// <summary>The exception for <paramref name="what"/> given as <paramref name="value"/> outside <paramref name="range"/>.</summary>
    public static ArgumentOutOfRangeException For(string what, double value, string range) =>
        new(what, value, string.Create(CultureInfo.InvariantCulture, $"{what} is {value}; expected {range}."));
}
