namespace Panside.Workshop.Worlds.Gusty;

/// <summary>The wind at the stack: gusts and lulls that last 2 to 8 minutes, and come up and die down over half a minute. No source.</summary>
/// <param name="Ends">The second at which it ends.</param>
/// <param name="Wanted">What it comes to, from -1, a lull, to 1.</param>
/// <param name="Now">What it is now.</param>
internal readonly record struct Gust(double Ends, double Wanted, double Now)
{
    private const double ShortestSeconds = 120, LongestSeconds = 480, RiseSeconds = 30;

    /// <summary>What a hash is for: a gust's strength, and its length.</summary>
    private const int Strength = 1, Length = 2;

    /// <summary>The next second.</summary>
    /// <param name="number">The rig's number.</param>
    /// <param name="second">Which second it is.</param>
    public Gust Next(ulong number, long second)
    {
        if (second < Ends)
        {
            return this with { Now = Now + ((Wanted - Now) / RiseSeconds) };
        }

        var length = 0.5 * (1 + Hashed.EitherWay(number, second, Length));
        return new(
            second + ShortestSeconds + (length * (LongestSeconds - ShortestSeconds)),
            Hashed.EitherWay(number, second, Strength), Now);
    }
}
