using System.Globalization;

namespace Panside.Screen.Replaying;

/// <summary>How many times faster than it was a past boil is played.</summary>
public static class ReplaySpeed
{
    /// <summary>The slowest.</summary>
    public const double Slowest = 0.25;

    /// <summary>The fastest that the screen plays; more than that nobody can read.</summary>
    public const double Fastest = 64;

    /// <summary>Whether the screen plays at a speed.</summary>
    public static bool IsOne(double speed) => speed is >= Slowest and <= Fastest;

    /// <summary>Twice as fast or half as fast, within what the screen plays.</summary>
    public static double Times(double speed, double by) => double.Clamp(speed * by, Slowest, Fastest);

    /// <summary>As it is read: <c>0.25x</c>, <c>16x</c>.</summary>
    public static string Shown(double speed) => speed.ToString("0.##", CultureInfo.InvariantCulture) + "x";
}
