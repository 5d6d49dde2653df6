using System.Globalization;

namespace Panside.Tests.Records;

/// <summary>
/// S7, R1, R2, R4, R5, R6 and R7 in one random schedule each. PANSIDE_SEED=n lives through others, PANSIDE_CASES=n through so many times
/// as many; a night that broke something is a named test from then on.
/// </summary>
public class SimulatedNightTests
{
    private const int Nights = 1000;

    [Fact]
    public void S7_a_thousand_nights_of_every_fault_lose_nothing_that_was_acknowledged_and_every_record_replays_to_itself()
    {
        var first = (Told("PANSIDE_SEED") ?? 0) * 10_000_000;
        var all = Nights * (Told("PANSIDE_CASES") ?? 1);
        for (var night = first; night < first + all; night++)
        {
            SimulatedNight.Live((int)(night % int.MaxValue));
        }

        TestContext.Current.SendDiagnosticMessage($"S7: {all} nights");
    }

    /// <summary>Nights that broke something once.</summary>
    [Theory]
    [InlineData(150_006_653)]
    public void S7_a_night_that_broke_something_breaks_nothing_any_more(int night) => SimulatedNight.Live(night);

    private static long? Told(string name) =>
        long.TryParse(Environment.GetEnvironmentVariable(name), NumberStyles.None, CultureInfo.InvariantCulture, out var told) ? told : null;
}
