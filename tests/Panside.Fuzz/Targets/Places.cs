using System.Globalization;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Reckoning.Ensemble;

namespace Panside.Fuzz.Targets;

/// <summary>Moments of a boil at which lines are said: reached once, by saying a boil of the corpus.</summary>
/// <param name="Setting">What the session runs on.</param>
/// <param name="Decider">What decides.</param>
/// <param name="States">Its states, from before its first line to near its end.</param>
internal sealed record Places(Setting Setting, Decider Decider, IReadOnlyList<SessionState> States)
{
    /// <summary>Members of the ensemble in most cases: no step and no sentence but the figures in it hangs on how many there are.</summary>
    public const int FewMembers = 16;

    /// <summary>One case of so many has as many members as a boil.</summary>
    public const int AllMembersEvery = 50;

    private static readonly Lazy<Places>[] Few = All(FewMembers);

    private static readonly Lazy<Places>[] Usual = All(RigEnsemble.UsualCount);

    /// <summary>Those of one of the rigs and guidances.</summary>
    /// <param name="chance">Which.</param>
    /// <param name="number">The case's number.</param>
    public static Places Any(Random chance, long number)
    {
        var all = number % AllMembersEvery == 0 ? Usual : Few;
        return all[chance.Next(all.Length)].Value;
    }

    /// <summary>How many members the ensemble has in a case.</summary>
    /// <param name="number">The case's number.</param>
    public static int Members(long number) => number % AllMembersEvery == 0 ? RigEnsemble.UsualCount : FewMembers;

    private static Lazy<Places>[] All(int members) =>
    [
        .. from rig in new[] { "two-by-four-forced.yaml", "two-by-four-natural.yaml" }
           from guidance in new[] { Guidance.Beginner, Guidance.Practised }
           select new Lazy<Places>(() => Of(new(Library.Flow(null), RigFile.Read(rig, Library.BuiltIn("rigs/" + rig)), guidance, "panside fuzz") { Members = members })),
    ];

    private static Places Of(Setting setting)
    {
        var session = new Session(setting);
        var states = new List<SessionState> { session.State };
        foreach (var (number, line) in File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "corpus", "line", "boil.jsonl")).Index())
        {
            var at = new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5)).AddMinutes(number * 2).ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
            session.Hear(LineReader.Read(line.Replace("NOW", at, StringComparison.Ordinal)));
            if (number % 4 == 0 && !session.State.IsOver)
            {
                states.Add(session.State);
            }
        }

        // The ear is made when it first hears something, and that is no answer's time.
        var decider = new Decider(setting);
        decider.Decide(session.State, new Text(session.State.Now!.Value, "nothing that anybody knows"), withForecasts: false);
        return new(setting, decider, states);
    }
}
