namespace Panside.Tests;

/// <summary>
/// Whether there is time to try every case of what is tried by some: <c>PANSIDE_THOROUGH=1</c>, as <c>.ci/run</c> says. What some cases leave
/// out is never a kind of fault, only more places of the same.
/// </summary>
internal static class Thorough
{
    public static bool IsAsked { get; } = Environment.GetEnvironmentVariable("PANSIDE_THOROUGH") == "1";
}
