using Panside.Practice.Physics;

namespace Panside.Workshop.Worlds;

/// <summary>What wanders through an evening, as a function of the second and of the rig alone, so that looking ahead sees the same.</summary>
internal static class Noise
{
    /// <summary>A number of a rig's own, 0 to 1, from what was drawn for it and no fault changes.</summary>
    public static double NumberOf(Makeup makeup) => Unit(
        (ulong)BitConverter.DoubleToInt64Bits(makeup.SurfaceVapor), (ulong)BitConverter.DoubleToInt64Bits(makeup.SweptToPan));

    /// <summary>Even between 0 and 1 at each knot, and smoothly from one to the next.</summary>
    /// <param name="number">The rig's number.</param>
    /// <param name="second">Since the start.</param>
    /// <param name="knot">Seconds from knot to knot.</param>
    public static double At(double number, long second, int knot)
    {
        var rig = (ulong)BitConverter.DoubleToInt64Bits(number);
        var (whole, part) = (second / knot, (double)(second % knot) / knot);
        var (before, after) = (Unit(rig, (ulong)whole), Unit(rig, (ulong)whole + 1));
        return before + ((after - before) * part * part * (3 - (2 * part)));
    }

    /// <summary>Even between 0 and 1, by the mixing of SplitMix64 (Steele, Lea, Flood 2014, from memory).</summary>
    public static double Unit(ulong one, ulong other)
    {
        var mixed = unchecked((one * 0x9E3779B97F4A7C15UL) ^ ((other + 1) * 0xD1B54A32D192ED03UL));
        mixed = unchecked((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL);
        mixed = unchecked((mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL);
        return ((mixed ^ (mixed >> 31)) >> 11) * (1.0 / (1UL << 53));
    }
}
