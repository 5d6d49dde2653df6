namespace Panside.Practice;

/// <summary>
/// A stream of random numbers from a seed, the same on every machine: SplitMix64 (Steele, Lea, Flood 2014), from memory.
/// </summary>
internal sealed class RandomStream(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A stream of a seed for one purpose, so that drawing more for one thing changes nothing in another.</summary>
    public static RandomStream For(long seed, string purpose)
    {
        var mixed = unchecked((ulong)seed) * 0x9E3779B97F4A7C15UL;
        foreach (var letter in purpose)
        {
            mixed = (mixed ^ letter) * 0x100000001B3UL;
        }

        var stream = new RandomStream(mixed);
        stream.Next();
        return stream;
    }

    /// <summary>Even between 0 and 1.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Even between two values.</summary>
    public double Between(double low, double high) => low + ((high - low) * Unit());

    /// <summary>Normal with mean 0 and deviation 1, by the method of Box and Muller; kept within three deviations.</summary>
    public double Normal() => double.Clamp(
        double.Sqrt(-2 * double.Log(1 - Unit())) * double.Cos(2 * double.Pi * Unit()), -3, 3);

    /// <summary>A factor around 1, with a deviation of its logarithm.</summary>
    public double Factor(double deviation) => double.Exp(deviation * Normal());

    /// <summary>True with a chance.</summary>
    public bool Chance(double chance) => Unit() < chance;

    private ulong Next()
    {
        _state += 0x9E3779B97F4A7C15UL;
        var z = _state;
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
