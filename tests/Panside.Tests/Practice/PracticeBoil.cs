using System.Collections.Concurrent;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Practice;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

/// <summary>An unattended boil in memory: its outcome, and every line of it as the record would have it.</summary>
internal sealed class PracticeBoil : IDoor
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    private static readonly ConcurrentDictionary<(string, string, string, long), Lazy<PracticeBoil>> Shared = new();

    private readonly Session _session;

    public PracticeBoil(string rigFile, string guidance, Scenario scenario, long seed)
    {
        var rig = RigOf(rigFile);
        _session = new(new(
            Library.Flow(null), rig, guidance == "beginner" ? Guidance.Beginner : Guidance.Practised, "panside", practice: true));
        Rig = new(rig, scenario, seed);
        var person = new PracticeOperator(Rig, rig.Units, seed);
        Outcome = new Unattended(this, Rig, person, Evening)
        {
            Overheard = (line, answers) =>
            {
                Said.Add((line, answers));
                WoodMegajoules.Add(Rig.Truth.Ledger.Wood);
            },
        }.Run();
    }

    /// <summary>The boil that other tests look at too; whoever changes its rig makes one of its own.</summary>
    public static PracticeBoil Of(string rigFile, string guidance, Scenario scenario, long seed) =>
        Shared.GetOrAdd((rigFile, guidance, scenario.Name, seed), _ => new(() => new(rigFile, guidance, scenario, seed))).Value;

    public PracticeRig Rig { get; }

    public DateTimeOffset Start => Evening;

    public PracticeOutcome Outcome { get; }

    public List<(LineIn Line, IReadOnlyList<LineOut> Answers)> Said { get; } = [];

    /// <summary>Heat of all wood that had gone in when each line was said.</summary>
    public List<double> WoodMegajoules { get; } = [];

    public string Record => string.Join('\n', Said.SelectMany(one => one.Answers.Select(LineWriter.Write).Prepend(LineWriter.Write(one.Line))));

    public SessionState State => _session.State;

    public static Guide.Rigs.Rig RigOf(string file) =>
        RigFile.Read(file, RepositoryFiles.Read("flows", "rigs", file));

    public IReadOnlyList<LineOut> Hear(LineIn line) => _session.Hear(line);

    public bool IsDue(Moment at) => _session.IsDue(at);
}
