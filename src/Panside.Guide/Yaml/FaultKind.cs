namespace Panside.Guide.Yaml;

/// <summary>A kind of fault: its code, which stays the same whatever the words, and what to do about it. docs/faults.md lists all of them.</summary>
/// <param name="Code">The code: <c>unknown-key</c>.</param>
/// <param name="Hint">One sentence that says what helps.</param>
public sealed record FaultKind(string Code, string Hint)
{
    /// <summary>No plain YAML.</summary>
    public static FaultKind Yaml { get; } = new("yaml", "Look for a bracket, a quote or an indent that is not closed, here or just above.");

    /// <summary>A key that nobody reads.</summary>
    public static FaultKind UnknownKey { get; } = new("unknown-key", "Look at its spelling, and whether it stands a step too far in or out.");

    /// <summary>A key that must stand.</summary>
    public static FaultKind MissingKey { get; } = new("missing-key", "Put it on a line of its own, as far in as the other keys of this part.");

    /// <summary>A list, a mapping or a text where another of them belongs.</summary>
    public static FaultKind Form { get; } = new("form", "A list has a dash before each entry, a mapping a key and a colon; a text with a colon or a brace in it stands in quotes.");

    /// <summary>A word that is none of a few.</summary>
    public static FaultKind Word { get; } = new("word", "Take one of the words that were expected, spelled just so.");

    /// <summary>No number with a unit, or with a unit of something else.</summary>
    public static FaultKind Measure { get; } = new("measure", "Write number and unit as one says them: 48 in, 1 1/2 in, 10 min, 20 %.");

    /// <summary>No whole number within its range.</summary>
    public static FaultKind Whole { get; } = new("whole-number", "Write it in digits, without a unit.");

    /// <summary>More or less than it may be.</summary>
    public static FaultKind Range { get; } = new("range", "The page of this key says how little and how much it may be, and why.");

    /// <summary>A fact that the program does not know, or that does not belong there.</summary>
    public static FaultKind Fact { get; } = new("fact", "docs/facts.md lists the facts; one that a step sets is written 'marked NAME'.");

    /// <summary>A figure in braces that the program does not know.</summary>
    public static FaultKind Figure { get; } = new("figure", "docs/figures.md lists the figures; a brace that is meant as one has no place in a text.");

    /// <summary>Something that is waited for and never happens.</summary>
    public static FaultKind Trigger { get; } = new("trigger", "docs/flows.md lists the triggers; a word must stand under 'words' before it can be waited for.");

    /// <summary>A wording that is heard as something else.</summary>
    public static FaultKind Wording { get; } = new("wording", "Say it in other words: each wording means one thing.");

    /// <summary>A name that stands for nothing.</summary>
    public static FaultKind Name { get; } = new("name", "Look at its spelling, and that what it names stands in this file.");

    /// <summary>A name that stands twice.</summary>
    public static FaultKind Twice { get; } = new("twice", "Rename one of the two, and what leads to it.");

    /// <summary>Two keys that do not go together.</summary>
    public static FaultKind Together { get; } = new("together", "Leave one of the two out, or put in what the other wants.");

    /// <summary>A danger that something could come before.</summary>
    public static FaultKind Danger { get; } = new("danger", "Follow the path that is told: on it something is asked before the danger is. docs/dangers.md has the order.");

    /// <summary>An emergency without a way out.</summary>
    public static FaultKind WayOut { get; } = new("way-out", "Say where whoever answers no goes next, and let it lead out at last.");

    /// <summary>A way to the end past the gate.</summary>
    public static FaultKind Gate { get; } = new("gate", "Only whoever is clear to leave comes to the end: the gate stands on every way there.");

    /// <summary>A step that nothing leads to, or that leads nowhere.</summary>
    public static FaultKind Reach { get; } = new("reach", "Draw the flow with 'panside check --graph': the way that is missing shows there.");

    /// <summary>A look that leaving wants, and that nothing asks for any more.</summary>
    public static FaultKind Kept { get; } = new("kept", "Whoever waits to be clear is asked for what leaving wants, again and again: put a watch for it at the step where they wait.");

    /// <summary>A walk that went otherwise than its plan says.</summary>
    public static FaultKind Walk { get; } = new("walk", "Is the change meant, take it over with 'panside check --walk FLOW --rig RIG PLAN --as-walked'.");

    /// <summary>Anything else that cannot be.</summary>
    public static FaultKind Impossible { get; } = new("impossible", "docs/authors-guide.md says which page tells of this file.");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FaultKind> All { get; } =
    [
        Yaml, UnknownKey, MissingKey, Form, Word, Measure, Whole, Range, Fact, Figure, Trigger, Wording, Name, Twice, Together, Danger, WayOut, Gate, Reach, Kept, Walk, Impossible,
    ];

    /// <summary>Those that a look at the form of a file finds, without knowing what it says.</summary>
    public static IReadOnlyList<FaultKind> OfForm { get; } = [UnknownKey, MissingKey, Form, Word, Measure, Whole];
}
