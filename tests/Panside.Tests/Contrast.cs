using System.Globalization;

namespace Panside.Tests;

/// <summary>
/// The contrast of two colors by the Web Content Accessibility Guidelines 2.1, "contrast ratio" and "relative luminance" of its glossary: 1 to 21. Asked of
/// text is 4.5 (success criterion 1.4.3), of text in high contrast 7 (1.4.6), of lines and marks that one must see 3 (1.4.11).
/// </summary>
internal static class Contrast
{
    /// <summary>What is asked of text.</summary>
    public const double OfText = 4.5;

    /// <summary>What is asked of text in high contrast.</summary>
    public const double OfTextInHighContrast = 7;

    /// <summary>What is asked of lines and marks.</summary>
    public const double OfMarks = 3;

    /// <summary>The contrast of two colors.</summary>
    /// <param name="one">In hexadecimal, with or without a #.</param>
    /// <param name="other">The other.</param>
    public static double Of(string one, string other) => Of(Parts(one), Parts(other));

    /// <summary>The contrast of two colors, each as its parts of red, green and blue, 0 to 1.</summary>
    public static double Of(double[] one, double[] other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (double.Max(a, b) + 0.05) / (double.Min(a, b) + 0.05);
    }

    /// <summary>Red, green and blue, 0 to 1.</summary>
    public static double[] Parts(string color) =>
        [.. new[] { 0, 2, 4 }.Select(from => int.Parse(color.TrimStart('#').AsSpan(from, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)];

    /// <summary>A color laid on a ground so strongly.</summary>
    public static double[] Laid(string color, double opacity, string ground) => [.. Parts(color).Zip(Parts(ground), (over, under) => (opacity * over) + ((1 - opacity) * under))];

    /// <summary>
    /// What a dark page makes of a picture's color: <c>invert(.92) hue-rotate(180deg)</c>, by the transfer function and the matrix of the W3C's Filter Effects,
    /// Module Level 1, sections 9.6 and 9.7.
    /// </summary>
    public static double[] Inverted(double[] color)
    {
        double[] turned = [.. color.Select(part => 0.92 + ((1 - (2 * 0.92)) * part))];
        double[][] hue =
        [
            [0.213 - 0.787, 0.715 + 0.715, 0.072 + 0.072],
            [0.213 + 0.213, 0.715 - 0.285, 0.072 + 0.072],
            [0.213 + 0.213, 0.715 + 0.715, 0.072 - 0.928],
        ];
        return [.. hue.Select(row => double.Clamp(row.Zip(turned, (weight, part) => weight * part).Sum(), 0, 1))];
    }

    private static double Luminance(double[] color)
    {
        static double Linear(double part) => part <= 0.03928 ? part / 12.92 : double.Pow((part + 0.055) / 1.055, 2.4);
        return (0.2126 * Linear(color[0])) + (0.7152 * Linear(color[1])) + (0.0722 * Linear(color[2]));
    }
}
