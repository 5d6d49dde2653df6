namespace Panside.Reckoning.Chance;

/// <summary>
/// Random numbers from a seed, the same on every machine and in every version: SplitMix64 (Steele, Lea, Flood 2014), from
/// memory. The library's own generator does not promise that its numbers stay the same.
/// </summary>
/// <param name="seed">Any number.</param>
public struct RandomNumbers(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A stream for one purpose, so that drawing more for one thing changes nothing in another.</summary>
    public static RandomNumbers For(ulong seed, ulong purpose)
    {
        var stream = new RandomNumbers(unchecked((seed * 0x9E3779B97F4A7C15UL) ^ (purpose * 0xD1B54A32D192ED03UL)));
        stream.Next();
        return stream;
    }

    /// <summary>Even between 0 and 1, without 1.</summary>
    public double Unit() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>Normal with mean 0 and deviation 1, by the method of Box and Muller.</summary>
    public double Normal() => double.Sqrt(-2 * double.Log(1 - Unit())) * double.Cos(2 * double.Pi * Unit());

    /// <summary>The same, kept within three deviations: no member is wilder than any rig.</summary>
    public double WithinThree() => double.Clamp(Normal(), -3, 3);

    private ulong Next()
    {
        _state = unchecked(_state + 0x9E3779B97F4A7C15UL);
        var z = _state;
        z = unchecked((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL);
        z = unchecked((z ^ (z >> 27)) * 0x94D049BB133111EBUL);
        return z ^ (z >> 31);
    }
}
