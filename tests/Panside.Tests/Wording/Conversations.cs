using System.Globalization;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Tests.Practice;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Wording;

/// <summary>
/// All that the program told in many conversations: the demo sessions, an evening, simulated boils with things going wrong, and an
/// operator who types what makes no sense. A new text is among them as soon as any of these brings it about.
/// </summary>
internal static class Conversations
{
    private static readonly (string Scenario, long Seed)[] Boils =
        [("foamy-night", 1), ("tank-empty", 2), ("tired-operator", 4)];

    /// <summary>The whole evening, and what leads away from it.</summary>
    private static readonly string[] Scenes = ["over", "dry-pan", "question"];

    /// <summary>Refused, questioned and answered: each kind of slip, and each word of the program's own.</summary>
    private static readonly string[] Awkward =
    [
        "", "what now", "tank", "tank much", "depth 9", "depth 15", "draw 900", "tank 36", "tank -1", "hydrometer 99", "wood 900", "water 100", "yes",
        "no", "skip", "later", "tank 22 in", "depth 3 gal", "frobnicate 7", "note", "note sap is cloudy", "why", "undo", "undo", "status", "skipped",
        "help", "exit", "what if", "what if I stop now", "what if I add 5 gal", "what if I fire until eight", "yes", "depth 1 1/2", "no", "yes", "tank 3",
        "tank 30", "sap 21", "yes", "sap 2.1", "leave", "no", "yes", "later", "yes", "wood 40", "no", "lit", "lit", "@9", "rolling", "water 205", "no",
        "water 211.5", "wood", "draw 103", "no", "draw 236", "no", "draw 213", "barometer 28", "no", "pressure here 30.1", "no", "drew 9 qt", "no",
        "depth 6", "no", "depth 0.6", "depth 1 1/2", "what if I stop now", "what if I add 5 gal", "what if I add 90 gal", "what if I fire until eight",
        "what if I fire until nine in the morning", "@8", "wood", "status", "tank 20", "no", "tank 27", "leave", "no", "open", "@3", "draw 212", "@6", "open",
        "drew 1 qt", "sample 180", "hydrometer 50", "yes", "scorched", "later", "skip", "yes", "depth 1.5", "sweet", "emergency", "wood", "no", "leave",
        "no", "foam", "low", "depth 1.5", "stack", "yes", "why", "status", "what if I fire until eight", "what if I add 5 gal", "refill", "refill 5 gal", "yes", "poured", "poured 25 gal", "no", "poured 39 gal", "added 1 gal", "yes", "pan",
        "undo", "skipped", "@30", "still", "status", "what if I stop now", "leave", "yes", "tank 5",
    ];

    private static readonly Lazy<IReadOnlyList<LineOut>> All = new(() =>
    [
        .. Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "demo-sessions"), "*.said")
            .Where(file => Path.GetFileName(file) != "tutorial.said").SelectMany(Said),
        .. Scenes.SelectMany(scene => Typed(Evening.Scenes[scene], Guidance.Beginner)),
        .. Typed(Awkward, Guidance.Beginner), .. Typed(Awkward, Guidance.Practised),
        .. Boils.SelectMany(boil => PracticeBoil.Of("two-by-four-forced.yaml", "beginner", ScenarioLibrary.Of(boil.Scenario), boil.Seed).Said).SelectMany(one => one.Answers),
    ]);

    public static IReadOnlyList<LineOut> Told => All.Value;

    /// <summary>The words of a demo session, by the rules of <c>demo-sessions/make</c>.</summary>
    private static List<LineOut> Said(string file)
    {
        var rows = File.ReadAllLines(file);
        var options = rows.FirstOrDefault(row => row.StartsWith("# options:", StringComparison.Ordinal)) ?? "";
        var rig = options.Contains("natural", StringComparison.Ordinal) ? "two-by-four-natural.yaml" : Library.BuiltInRig;
        var session = new Session(new(
            Library.Flow(null), RigFile.Read(rig, Library.BuiltIn("rigs/" + rig)),
            options.Contains("practised", StringComparison.Ordinal) ? Guidance.Practised : Guidance.Beginner, "panside test"));
        var told = new List<LineOut>();
        var at = DateTimeOffset.MinValue;
        foreach (var row in rows.Where(row => row.Length >= 5 && char.IsDigit(row[0])))
        {
            var time = new DateTimeOffset(2031, 3, 8, 0, 0, 0, TimeSpan.FromHours(-5)) + TimeSpan.Parse(row[..5], CultureInfo.InvariantCulture);
            for (var tick = at.AddMinutes(2); at > DateTimeOffset.MinValue && tick < time; tick = tick.AddMinutes(2))
            {
                told.AddRange(session.Hear(new Tick(Moment.Of(tick))));
            }

            at = time > at ? time : at.AddSeconds(1);
            told.AddRange(session.Hear(row.Length > 6 ? new Text(Moment.Of(at), row[6..]) : new Tick(Moment.Of(at))));
        }

        return told;
    }

    /// <summary>Lines typed one after the other; one that begins with @ lets so many minutes pass.</summary>
    private static List<LineOut> Typed(IEnumerable<string> lines, Guidance guidance)
    {
        var session = new Session(SessionDoor.BuiltIn(guidance));
        var told = new List<LineOut>();
        var at = Evening.Clock().GetUtcNow().ToOffset(TimeSpan.FromHours(-5));
        told.AddRange(session.Hear(new Tick(Moment.Of(at))));
        foreach (var line in lines)
        {
            for (var minutes = line.StartsWith('@') ? int.Parse(line[1..], CultureInfo.InvariantCulture) : 0; minutes > 0; minutes--)
            {
                at = at.AddMinutes(1);
                told.AddRange(session.Hear(new Tick(Moment.Of(at))));
            }

            if (!line.StartsWith('@'))
            {
                at = at.AddSeconds(2);
                told.AddRange(session.Hear(new Text(Moment.Of(at), line)));
            }
        }

        return told;
    }
}
