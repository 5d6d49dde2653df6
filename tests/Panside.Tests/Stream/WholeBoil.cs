using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Stream;

/// <summary>A whole boil as lines in: start-up, firing, a draw, a question, an emergency, the shutdown, leaving. Invented.</summary>
internal static class WholeBoil
{
    public static IReadOnlyList<string> Lines { get; } = [.. Make()];

    private static IEnumerable<string> Make()
    {
        yield return Tick(0);
        foreach (var said in new[] { "no", "yes", "yes", "yes", "12", "1 1/2", "yes", "yes", "16", "2.1", "yes", "yes", "lit" })
        {
            yield return Text(1, said);
        }

        yield return At(10, "\"did\":\"add-wood\",\"value\":7,\"unit\":\"lb\"");
        yield return At(15, "\"observed\":\"boil\",\"is\":\"rolling\"");
        yield return Text(17, "210.5");
        yield return Text(17, "depth 1 1/2");
        yield return Text(18, "wood");
        yield return Text(19, "draw 103");
        yield return Text(19, "no");
        yield return At(20, "\"reading\":\"draw-temperature\",\"value\":216.2,\"unit\":\"degF\"");
        yield return "not json";
        yield return Text(26, "wood");
        yield return At(30, "\"reading\":\"draw-temperature\",\"value\":218,\"unit\":\"degF\"");
        yield return Text(31, "open");
        yield return At(33, "\"did\":\"close-draw\",\"value\":1.5,\"unit\":\"qt\"");
        yield return Text(34, "depth 1 1/2");
        yield return Text(34, "185");
        yield return Text(34, "60.4");
        yield return Text(35, "yes");
        yield return Text(36, "scorched");
        yield return Text(37, "1 3/8");
        yield return Text(38, "sweet");
        yield return Text(38, "tank 12");
        yield return Text(39, "status");
        yield return Text(40, "wood");
        for (var minute = 41; minute < 60; minute++)
        {
            yield return minute % 6 == 0 ? Text(minute, "depth 1 1/2") : Tick(minute);
        }

        foreach (var said in new[] { "shutdown", "yes", "yes", "yes" })
        {
            yield return Text(60, said);
        }

        yield return Tick(70);
        yield return Text(70, "spread");
        yield return Text(71, "yes");
        yield return Text(71, "flooded");
        yield return Text(72, "depth 2 1/2");
        yield return Text(72, "boil simmering");
        yield return Text(72, "coals thin");
        yield return Tick(90);
        yield return Text(100, "still");
        yield return Text(100, "spent");
        yield return Text(100, "gradient gone");
        yield return Text(100, "depth 2.4");
        yield return Text(101, "tank 4");
        yield return Text(102, "covered");
        foreach (var said in new[] { "yes", "2 3/8", "yes", "no" })
        {
            yield return Text(103, said);
        }

        yield return At(105, "\"did\":\"leave\"");
    }
}
