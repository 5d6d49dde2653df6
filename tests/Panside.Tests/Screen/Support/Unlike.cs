using System.Globalization;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;

namespace Panside.Tests.Screen.Support;

/// <summary>Boils on rigs that lack something, each up to a moment: what was said stands beside its demo session.</summary>
/// <param name="Said">The demo session's name.</param>
/// <param name="Rig">The shipped rig file's name.</param>
/// <param name="Until">The clock up to which it is played.</param>
/// <param name="Absent">A pattern of the words for what the rig lacks.</param>
internal sealed record Unlike(string Said, string Rig, string Until, string Absent)
{
    private static readonly TimeSpan Step = TimeSpan.FromSeconds(30);

    private const string OfWood = @"(?i)\b(wood|coals?|embers?|charges?|firebox|grate|draft|blower|brick)\b";

    private const string OfChannels = @"(?i)\b((?<!one )channels?|gradient|back pan|flues?)\b";

    private const string OfABurner = @"(?i)\b(burner|gas|propane|blower|batch|ladle)\b";

    private const string OfFloat = @"(?i)\b(float|valve|channels?|gradient)\b";

    /// <summary>The moments, by the name of their pictures.</summary>
    public static IReadOnlyDictionary<string, Unlike> Moments { get; } = new Dictionary<string, Unlike>
    {
        ["gas-boiling"] = new("gas-fired", "gas-divided", "13:46", OfWood),
        ["gas-off"] = new("gas-fired", "gas-divided", "14:22", OfWood),
        ["one-channel-boiling"] = new("one-channel", "one-channel", "11:47", OfChannels),
        ["two-pans-boiling"] = new("two-pans", "flue-and-syrup-pan", "17:39", OfABurner),
        ["two-pans-shutdown"] = new("two-pans", "flue-and-syrup-pan", "18:16", OfABurner),
        ["by-hand-boiling"] = new("flat-by-hand", "flat-by-hand", "09:47", OfFloat),
        ["by-hand-shutdown"] = new("flat-by-hand", "flat-by-hand", "10:14", OfFloat),
    };

    /// <summary>The conversation at the moment.</summary>
    public Played Play()
    {
        var lines = RepositoryFiles.Read("demo-sessions", Said + ".said").Split('\n').Where(line => line.Length >= 5 && char.IsAsciiDigit(line[0]))
            .Select(line => (At: At(line[..5]), Words: line[5..].Trim())).ToList();
        var setting = new Setting(
            Library.Flow(null), RigFile.Read(Rig, RepositoryFiles.Read("flows", "rigs", Rig + ".yaml")), Guidance.Practised, "panside test", practice: false);
        var played = new Played(new SessionDoor(setting), lines[0].At);
        foreach (var (at, words) in lines.TakeWhile(line => line.At <= At(Until)))
        {
            Wait(played, at);
            if (words.Length > 0)
            {
                played.Talk.Say(words);
            }
        }

        Wait(played, At(Until));
        return played;
    }

    private static void Wait(Played played, DateTimeOffset until)
    {
        while (played.Clock.GetUtcNow() < until)
        {
            played.Clock.Advance(Step);
            played.Talk.Check();
        }
    }

    private static DateTimeOffset At(string clock) =>
        new DateTimeOffset(new DateOnly(2031, 3, 8), TimeOnly.ParseExact(clock, "HH:mm", CultureInfo.InvariantCulture), TimeSpan.FromHours(-5)).ToUniversalTime();
}
