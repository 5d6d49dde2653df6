using System.Globalization;

namespace Panside.Reckon;

/// <summary>One figure of a result: a number with its unit and its honest digits, or a word.</summary>
/// <param name="Name">What it is, words joined by dashes.</param>
internal sealed record Figure(string Name)
{
    /// <summary>The number; not rounded.</summary>
    public double? Value { get; init; }

    /// <summary>The unit as a person reads it; empty where there is none.</summary>
    public string Unit { get; init; } = "";

    /// <summary>The unit as the stream writes it.</summary>
    public string Code { get; init; } = "";

    /// <summary>Decimals that are shown; below zero, that many zeros before the point.</summary>
    public int Digits { get; init; }

    /// <summary>The low and the high end, where there is a band.</summary>
    public (double Low, double High)? Band { get; init; }

    /// <summary>The word, where it is no number.</summary>
    public string? Word { get; init; }

    /// <summary>As a person reads it: <c>217.6 °F (217.3 to 217.9)</c>.</summary>
    public string Text => Value is not { } value
        ? Word ?? ""
        : $"{Rounded(value)} {Unit}".TrimEnd() + (Band is { } band ? $" ({Rounded(band.Low)} to {Rounded(band.High)})" : "");

    /// <summary>A number of this figure with its honest digits.</summary>
    public string Rounded(double value)
    {
        var zeros = Math.Pow(10, Math.Max(0, -Digits));
        var rounded = Math.Round(value / zeros, Math.Max(0, Digits)) * zeros;
        var text = rounded.ToString("F" + Math.Max(0, Digits), CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.') ? text[1..] : text;
    }

    /// <summary>For programs: two digits more, so that they can reckon on.</summary>
    public double Finer(double value) => Math.Round(value, Math.Clamp(Digits + 2, 0, 12)) + 0.0;
}
