using System.Globalization;
using CsCheck;

namespace Panside.Laws;

/// <summary>
/// Tries a law on generated cases: the same ones in every run, so that a run which passed passes again. PANSIDE_SEED=n takes
/// others, PANSIDE_CASES=n so many times as many; that is for looking further, by hand.
/// </summary>
internal static class Law
{
    private static readonly ulong Seed = Told("PANSIDE_SEED") ?? 20310308;
    private static readonly int Times = (int)(Told("PANSIDE_CASES") ?? 1);

    public static void Holds<T>(this Gen<T> gen, Action<T> law, int cases = 100)
    {
        var chance = new PCG(1, Seed);
        for (var done = 0; done < cases * Times; done++)
        {
            var state = chance.State;
            var at = gen.Generate(chance, null, out _);
            try
            {
                law(at);
            }
            catch (Exception broken) when (broken is not OutOfMemoryException)
            {
                gen.Sample(law, seed: chance.ToString(state), iter: 1000, threads: 1); // tells it with the smallest case that it finds
                throw;
            }
        }
    }

    public static void Holds<T>(this Gen<T> gen, Func<T, bool> law, int cases = 100) => gen.Holds(at => Assert.True(law(at)), cases);

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Action<T1, T2> law, int cases = 100) =>
        gen.Holds(at => law(at.Item1, at.Item2), cases);

    public static void Holds<T1, T2>(this Gen<(T1, T2)> gen, Func<T1, T2, bool> law, int cases = 100) =>
        gen.Holds(at => Assert.True(law(at.Item1, at.Item2)), cases);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Action<T1, T2, T3> law, int cases = 100) =>
        gen.Holds(at => law(at.Item1, at.Item2, at.Item3), cases);

    public static void Holds<T1, T2, T3>(this Gen<(T1, T2, T3)> gen, Func<T1, T2, T3, bool> law, int cases = 100) =>
        gen.Holds(at => Assert.True(law(at.Item1, at.Item2, at.Item3)), cases);

    public static void Holds<T1, T2, T3, T4>(this Gen<(T1, T2, T3, T4)> gen, Func<T1, T2, T3, T4, bool> law, int cases = 100) =>
        gen.Holds(at => Assert.True(law(at.Item1, at.Item2, at.Item3, at.Item4)), cases);

    public static void Holds<T1, T2, T3, T4, T5>(this Gen<(T1, T2, T3, T4, T5)> gen, Func<T1, T2, T3, T4, T5, bool> law, int cases = 100) =>
        gen.Holds(at => Assert.True(law(at.Item1, at.Item2, at.Item3, at.Item4, at.Item5)), cases);

    private static ulong? Told(string name) =>
        ulong.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var told) ? told : null;
}
