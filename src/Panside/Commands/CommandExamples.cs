namespace Panside.Commands;

/// <summary>How each command is used, as its help shows first of all.</summary>
internal static class CommandExamples
{
    /// <summary>The name of the program without a command.</summary>
    public const string Alone = "panside";

    /// <summary>By command: lines that can be typed, each with what it does.</summary>
    public static IReadOnlyDictionary<string, IReadOnlyList<CommandExample>> All { get; } = new Dictionary<string, IReadOnlyList<CommandExample>>
    {
        [Alone] =
        [
            new("panside", "the home screen: go on, start, practise, look back"),
            new("panside practice", "a boil on a simulated rig, where a burnt pan costs nothing"),
            new("panside boil --plain", "a boil as lines of text"),
            new("panside plan --sap '60 gal' --end '9 pm'", "what an evening takes"),
        ],
        ["boil"] =
        [
            new("panside boil", "on the full screen"),
            new("panside boil --plain", "as lines of text, for a screen reader"),
            new("panside boil --journal boil.jsonl", "into this record, or on from it"),
            new("panside boil --rig rig.yaml --guidance practised", "fewer words, on this rig"),
        ],
        ["practice"] =
        [
            new("panside practice --speed 10", "ten times as fast as real time"),
            new("panside practice --list", "the scenarios"),
            new("panside practice --scenario float-stuck --paused", "one of them, with time standing still at first"),
            new("panside practice --unattended", "a whole boil without a person"),
        ],
        ["check"] =
        [
            new("panside check my-flow.yaml rig.yaml", "every fault with its place"),
            new("panside check --graph my-flow.yaml", "the flow as a diagram"),
            new("panside check --walk my-flow.yaml --rig rig.yaml my-plan.yaml", "does the boil go as planned?"),
            new("panside check --schema flow > flow.schema.json", "for an editor that completes and marks"),
        ],
        ["replay"] =
        [
            new("panside replay boil.jsonl", "on the full screen, 16 times as fast"),
            new("panside replay boil.jsonl --plain --from 17:05 --to 17:40", "a part of it as lines"),
            new("panside replay boil.jsonl --verify", "is it still answered the same?"),
        ],
        ["report"] =
        [
            new("panside report boil.jsonl", "as Markdown"),
            new("panside report boil.jsonl --format html > boil.html", "one page to print"),
            new("panside report boil.jsonl --format csv", "its readings, one a line"),
        ],
        ["season"] =
        [
            new("panside season", "all boils in the home folder"),
            new("panside season past-sessions --csv", "one boil a row"),
        ],
        ["import"] =
        [
            new("panside import readings.csv --journal boil.jsonl", "into a record of its own"),
        ],
        ["plan"] =
        [
            new("panside plan --sap '60 gal' --end '9 pm'", "when to light, to be still by then"),
            new("panside plan --sap '60 gal' --sugar 2.1 --lit 13:00 --json", "for programs"),
        ],
        ["rig"] =
        [
            new("panside rig", "asks, and makes the rig file in the home folder"),
            new("panside rig north-shed.yaml --plain", "another one, in lines of text"),
        ],
        [CompletionCommand.Name] =
        [
            new("source <(panside completion bash)", "in ~/.bashrc"),
            new("source <(panside completion zsh)", "in ~/.zshrc, after compinit"),
            new("panside completion fish | source", "in ~/.config/fish/config.fish"),
        ],
    };
}
