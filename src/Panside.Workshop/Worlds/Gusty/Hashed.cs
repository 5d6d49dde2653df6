namespace Panside.Workshop.Worlds.Gusty;

/// <summary>Chance that is the same whenever it is asked for: a hash of the rig's number, a second, and what it is for.</summary>
internal static class Hashed
{
    /// <summary>Even between -1 and 1. The mixing is that of Steele, Lea and Flood's SplitMix (OOPSLA 2014), from memory.</summary>
    /// <param name="number">The rig's.</param>
    /// <param name="second">When.</param>
    /// <param name="purpose">For what.</param>
    public static double EitherWay(ulong number, long second, int purpose)
    {
        var mixed = unchecked(number + ((ulong)second * 0x9E3779B97F4A7C15UL) + ((ulong)purpose * 0xD1B54A32D192ED03UL));
        mixed = unchecked((mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL);
        mixed = unchecked((mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL);
        mixed ^= mixed >> 31;
        return ((mixed >> 11) * (2.0 / (1UL << 53))) - 1;
    }
}
