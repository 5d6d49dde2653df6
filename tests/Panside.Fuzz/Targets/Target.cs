namespace Panside.Fuzz.Targets;

/// <summary>One way by which something from outside comes into the program.</summary>
/// <param name="Name">Its name, and that of its folder of the corpus.</param>
/// <param name="Parts">How many inputs a case has at the most: lines of one session, or one file.</param>
/// <param name="Begin">Begins a case, with the seed and its number.</param>
internal sealed record Target(string Name, int Parts, Func<int, long, ITrial> Begin)
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Target> All { get; } =
    [
        new("reader", 8, (_, _) => new ReaderTrial()),
        new("line", 8, (seed, number) => new SessionTrial(SessionTrial.Line, seed, number)),
        new("typed", 8, (seed, number) => new SessionTrial(SessionTrial.Typed, seed, number)),
        new("table", 1, (seed, number) => new TableTrial(seed, number)),
        new("record", 1, (_, number) => new RecordTrial(number)),
        new("flow", 1, (_, number) => new FlowTrial(number)),
        new("rig", 1, (_, number) => new RigTrial(number)),
        new("scenario", 1, (_, _) => new ScenarioTrial()),
        new("learned", 1, (_, _) => new LearnedTrial()),
        new("command-line", 1, (_, _) => new CommandLineTrial()),
    ];

    /// <summary>No answer takes longer, of the processor's time: a machine that is busy with something else is no finding.</summary>
    public TimeSpan Patience => TimeSpan.FromSeconds(Name == "command-line" ? 5 : 1);

    /// <summary>Whether an input is a line of a file of the corpus, and not the whole file.</summary>
    private bool IsOfLines => Name is "reader" or "line" or "typed";

    /// <summary>The folders of the corpus that it takes from.</summary>
    private string[] Folders => Name == "reader" ? ["line", "typed"] : [Name];

    /// <summary>The inputs to begin with.</summary>
    public IEnumerable<string[]> Corpus() =>
        Folders.SelectMany(folder => Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "corpus", folder)).Order(StringComparer.Ordinal))
            .Select(path => IsOfLines ? File.ReadAllLines(path).Where(line => line.Length > 0).ToArray() : [File.ReadAllText(path)]);
}

/// <summary>One case: inputs are tried one after the other.</summary>
internal interface ITrial : IDisposable
{
    /// <summary>Tries an input; whatever it is, nothing but what the program tells a person in a sentence may come out of it.</summary>
    void Try(byte[] input);
}
