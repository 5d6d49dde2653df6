namespace Panside.Workshop.Commands;

/// <summary>How each command is used, as its help shows first of all.</summary>
internal static class WorkshopExamples
{
    /// <summary>By command: lines that can be typed, each with what it does.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<CommandExample>> All { get; } = new Dictionary<string, IReadOnlyList<CommandExample>>
    {
        [WorkshopLine.Name] =
        [
            new("panside-workshop judge --count 40", "do the forecasts hold?"),
            new("panside-workshop mistype --count 100", "are slips of the hand questioned?"),
            new("panside-workshop assure --count 84", "does the advice keep pans whole?"),
            new("panside-workshop lint flows/divided-pan.yaml", "do the texts read well?"),
        ],
        ["judge"] =
        [
            new("panside-workshop judge --world unseen --count 48", "a rig that nothing was fitted on"),
            new("panside-workshop judge --count 40 --rig my-rig.yaml", "forty boils on a rig of your own"),
        ],
        ["calibrate"] =
        [
            new("panside-workshop calibrate --count 24 --seed 800001", "the table of docs/worlds.md: five minutes"),
            new("panside-workshop calibrate --count 40 --world practised --world gusty", "two of the worlds"),
        ],
        ["learned"] =
        [
            new("panside-workshop learned --count 60 --seed 900", "what two boils teach the third"),
        ],
        ["mistype"] =
        [
            new("panside-workshop mistype --count 1000", "the table of docs/practice.md"),
        ],
        ["assure"] =
        [
            new("panside-workshop assure --count 1000", "all scenarios in turn, the advice followed"),
            new("panside-workshop assure --count 84 --habit", "the same with the advice ignored"),
            new("panside-workshop assure --count 40 --scenario float-stuck", "one scenario, forty rigs"),
        ],
        ["picture"] =
        [
            new("panside-workshop picture shutdown.svg", "one shutdown as forecast and as it came"),
            new("panside-workshop picture shutdown.svg --rig flows/rigs/two-by-four-natural.yaml", "the picture of docs/model.md"),
        ],
        ["trials"] =
        [
            new("panside-workshop trials", "every trial once: some minutes"),
            new("panside-workshop trials faults --seeds 8", "every fault on eight rigs"),
        ],
        ["ear"] =
        [
            new("panside-workshop ear tests/Panside.Guide.Tests/Hearing/corpus/cries-unseen.tsv", "the table of docs/hearing.md"),
            new("panside-workshop ear flows/words/said/dangers.en.tsv flows/words/said/talk.en.tsv --fit flows/words/dangers.en.weights", "after a change of words"),
        ],
        ["talk"] =
        [
            new("panside-workshop talk tests/Panside.Guide.Tests/Hearing/corpus/talk-unseen.tsv", "the table of docs/talking.md"),
            new("panside-workshop talk flows/words/said/talk.en.tsv --cries flows/words/said/dangers.en.tsv --fit flows/words/talk.en.weights", "after a change of words"),
        ],
        ["lint"] =
        [
            new("panside-workshop lint", "the built-in flow's texts"),
            new("panside-workshop lint my-flow.yaml", "a flow of your own"),
        ],
    };
}
