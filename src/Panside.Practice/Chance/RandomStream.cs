using Panside.Reckoning.Chance;

namespace Panside.Practice.Chance;

/// <summary>
/// A stream of random numbers from a seed for one purpose of the practice, the same on every machine.
/// </summary>
internal sealed class RandomStream(ulong seed)
{
    private RandomNumbers _numbers = new(seed);

    /// <summary>A stream of a seed for one purpose, so that drawing more for one thing changes nothing in another.</summary>
    public static RandomStream For(long seed, string purpose)
    {
        var mixed = unchecked((ulong)seed) * 0x9E3779B97F4A7C15UL;
        foreach (var letter in purpose)
        {
            mixed = (mixed ^ letter) * 0x100000001B3UL;
        }

        var stream = new RandomStream(mixed);
        stream.Unit();
        return stream;
    }

    /// <summary>Even between 0 and 1.</summary>
    public double Unit() => _numbers.Unit();

    /// <summary>Even between two values.</summary>
    public double Between(double low, double high) => low + ((high - low) * Unit());

    /// <summary>Normal with mean 0 and deviation 1, kept within three deviations.</summary>
    public double Normal() => _numbers.WithinThree();

    /// <summary>A factor around 1, with a deviation of its logarithm.</summary>
    public double Factor(double deviation) => double.Exp(deviation * Normal());

    /// <summary>True with a chance.</summary>
    public bool Chance(double chance) => Unit() < chance;
}
