using System.Globalization;
using Panside.Guide.Asking;
using Panside.Practice.Scenarios;

namespace Panside.Commands;

/// <summary>What was chosen on the home screen.</summary>
internal enum HomeChoice
{
    /// <summary>To go on with the unfinished boil.</summary>
    GoOn,

    /// <summary>To begin a boil.</summary>
    Start,

    /// <summary>To practise; the scenario's name goes with it.</summary>
    Practise,

    /// <summary>To play a past boil; its record's path goes with it.</summary>
    Replay,

    /// <summary>The season's book.</summary>
    Season,

    /// <summary>To make a rig file.</summary>
    Rig,

    /// <summary>The emergency list.</summary>
    Emergency,

    /// <summary>Nothing more.</summary>
    Leave,
}

/// <summary>The first screen: what to do now, each by a key or a word. Enter takes the first.</summary>
/// <param name="sight">What there is.</param>
/// <param name="opening">What is told first: what came of the choice before.</param>
internal sealed class HomeAsking(HomeSight sight, IReadOnlyList<string> opening) : IAsking
{
    private static readonly PageKey[] Always =
    [
        new("F9", "emergency", "EMERGENCY", "the emergency list, from anywhere"), new("F1", "help", "Help", "this page; ? does the same on an empty line"),
    ];

    private static readonly string[] ToPractise = [ScenarioLibrary.Refresher, "last-charge", Scenario.ColdStart.Name];

    private IReadOnlyList<Row>? _rows;
    private string _title = "";
    private bool _isBelow;
    private bool _isPractising;

    private sealed record Row(string Word, string Told, HomeChoice? Choice, string? With = null, params IReadOnlyList<string> Others);

    /// <summary>What was chosen; null before.</summary>
    public HomeChoice? Chosen { get; private set; }

    /// <summary>What goes with it.</summary>
    public string? With { get; private set; }

    /// <inheritdoc/>
    public IReadOnlyList<string> Opening => opening;

    /// <inheritdoc/>
    public bool IsOver => Chosen is not null;

    /// <summary>Nothing is lost by leaving.</summary>
    public string? BeforeLeaving => null;

    /// <inheritdoc/>
    public Page Page => new(
        _title,
        [
            "", .. Rows.Select((row, index) => string.Create(CultureInfo.InvariantCulture, $"  {index + 1}  {row.Word,-12} {row.Told}")),
            .. _isPractising ? ["", .. Names()] : Array.Empty<string>(),
        ],
        _isBelow ? _isPractising ? "Which practice?" : "Which boil?" : "What now?",
        $"  [1 to {Rows.Count} or a word; Enter: {Rows[0].Word}{(_isBelow ? "; back" : "")}]",
        [.. Always, .. Rows.Select((row, index) => new PageKey((index + 1).ToString(CultureInfo.InvariantCulture), row.Word, "", row.Told))]);

    /// <inheritdoc/>
    public IReadOnlyList<string> Help =>
    [
        string.Join(", ", Rows.Select(row => row.Word)),
        "each by its number or its word; Enter alone takes the first",
        "back: to the first page; leave: ends the program; emergency",
    ];

    /// <inheritdoc/>
    public IReadOnlyList<string> Words =>
    [
        .. Rows.Select(row => row.Word), "emergency", "help", "back", "leave", .. _isPractising ? ScenarioLibrary.All.Select(one => one.Name) : [],
    ];

    private IReadOnlyList<Row> Rows => _rows ??= First();

    /// <inheritdoc/>
    public IReadOnlyList<string> Hear(string words)
    {
        var said = words.Trim().TrimEnd('.', ',').ToLowerInvariant();
        if (said is "emergency" or "!" or "emergency!")
        {
            Chosen = HomeChoice.Emergency;
            return [];
        }

        switch (said)
        {
            case "help" or "?" or "h":
                return [.. Help.Select(line => $"- {line}")];
            case "leave" or "exit" or "quit" or "bye" or "stop":
                Chosen = HomeChoice.Leave;
                return [];
            case "back" or "b" or "undo":
                (_rows, _title, _isBelow, _isPractising) = (null, "", false, false);
                return [];
        }

        var row = said.Length == 0 ? Rows[0]
            : int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= Rows.Count ? Rows[number - 1]
            : Rows.FirstOrDefault(one => one.Word == said || one.Others.Contains(said));
        row ??= _isPractising && ScenarioLibrary.All.FirstOrDefault(one => one.Name == said) is { } scenario
            ? new(scenario.Name, "", HomeChoice.Practise, scenario.Name) : null;
        return row is null ? [$"x '{said}' is none of these. Expected: {string.Join(", ", Rows.Select(one => one.Word))}, or a number."] : Take(row);
    }

    private IReadOnlyList<string> Take(Row row)
    {
        if (row.Choice is HomeChoice.Practise && row.With is null)
        {
            (_rows, _title, _isBelow, _isPractising) = ([.. ToPractise.Select(Practice)], "PRACTISE", true, true);
            return [];
        }

        if (row.Choice is HomeChoice.Replay or HomeChoice.Season && !sight.HasPast)
        {
            return ["- There is no past boil yet. 'practise' makes one that costs nothing."];
        }

        if (row.Choice is HomeChoice.Replay && row.With is null)
        {
            if (sight.Past() is not { Count: > 0 } past)
            {
                return ["- No record here can be read. 'panside check FILE' tells why."];
            }

            (_rows, _title, _isBelow) = ([.. past.Select((one, index) => new Row($"boil {index + 1}", one.Told, HomeChoice.Replay, one.Path))], "REPLAY", true);
            return [];
        }

        (Chosen, With) = (row.Choice, row.With);
        return [];
    }

    private static Row Practice(string name)
    {
        var scenario = ScenarioLibrary.Of(name);
        return new(name, scenario.Summary, HomeChoice.Practise, name);
    }

    private static IEnumerable<string> Names()
    {
        var names = ScenarioLibrary.All.Select(one => one.Name).Except(ToPractise).ToList();
        yield return "  Or by its name:";
        foreach (var part in names.Chunk(4))
        {
            yield return "     " + string.Concat(part.Select(name => name.PadRight(18))).TrimEnd();
        }
    }

    private IReadOnlyList<Row> First()
    {
        Row? goOn = sight.Unfinished is { } boil
            ? new("go on", $"with the boil that was left {UnfinishedOffer.Ago(boil)} ago", HomeChoice.GoOn, boil.Path, "continue", "goon") : null;
        var rig = sight.RigName is { } name
            ? new Row("rig", $"make another rig file; yours is '{name}'", HomeChoice.Rig)
            : new Row("rig", "tell what your boiler is: two minutes, once", HomeChoice.Rig);
        var start = new Row(
            "start", sight.RigName is null ? "a boil, as on a rig of 2 ft by 4 ft" : "a boil", HomeChoice.Start, null, "boil", "begin", "new");
        return
        [
            .. goOn is not null && sight.Unfinished!.IsOffered ? [goOn] : Array.Empty<Row>(),
            .. sight.RigName is null ? [rig, start] : new[] { start },
            new("practise", "on a simulated rig, where a burnt pan costs nothing", HomeChoice.Practise, null, "practice", "train"),
            new("replay", "a past boil", HomeChoice.Replay),
            new("season", "the book of all boils", HomeChoice.Season, null, "book", "season book"),
            .. sight.RigName is null ? Array.Empty<Row>() : [rig],
            .. goOn is not null && !sight.Unfinished!.IsOffered ? [goOn] : Array.Empty<Row>(),
        ];
    }
}
