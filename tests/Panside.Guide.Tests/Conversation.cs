using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Reckoning.Ensemble;
using Panside.Tests;

namespace Panside.Guide.Tests;

/// <summary>A boil talked through in a test: a clock that only the test moves, and what was said last.</summary>
internal sealed class Conversation
{
    /// <summary>Members of the ensemble where a test looks at what is said and at no figure.</summary>
    public const int Few = 200;

    public static readonly Flow Flow =
        FlowFile.Read("divided-pan.yaml", RepositoryFiles.Read("flows", "divided-pan.yaml"), Vocabularies.Flow);

    private static readonly OncePerCollection<(Guidance, string, double, bool, int), Conversation> Begun = new();

    private DateTimeOffset _time = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));

    public Conversation(Guidance guidance = Guidance.Beginner, string rig = "two-by-four-natural.yaml", string? rigText = null, int members = RigEnsemble.UsualCount)
    {
        var text = rigText ?? RepositoryFiles.Read("flows", "rigs", rig);
        Session = new(new Setting(Flow, RigFile.Read(rig, text), guidance, "panside test") { Members = members });
        Hear(new Tick(Now));
    }

    /// <summary>Goes on from where another stands; that one stays there.</summary>
    private Conversation(Conversation other)
    {
        (Session, _time, Answers) = (new(other.Session.Setting, other.State), other._time, other.Answers);
        All.AddRange(other.All);
    }

    public Session Session { get; }

    public SessionState State => Session.State;

    public IReadOnlyList<LineOut> Answers { get; private set; } = [];

    public List<LineOut> All { get; } = [];

    public Moment Now => Moment.Of(_time);

    public Prompt? Open => State.Open;

    public string Phase => Session.Setting.Flow.PhaseOf(State.Step).Code;

    /// <summary>A boil on its way: a known pan, a full tank, a rolling boil, the thermometer read. What leads there is reckoned once.</summary>
    public static Conversation AtSteadyBoil(
        Guidance guidance = Guidance.Beginner, string rig = "two-by-four-natural.yaml", double tankGallons = 30, bool known = true,
        int members = RigEnsemble.UsualCount) =>
        new(Begun.Of((guidance, rig, tankGallons, known, members), () => ToSteadyBoil(guidance, rig, tankGallons, known, members)));

    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        Answers = Session.Hear(line);
        All.AddRange(Answers);
        return Answers;
    }

    public IReadOnlyList<LineOut> Say(string text)
    {
        _time = _time.AddSeconds(2);
        return Hear(new Text(Now, text));
    }

    public IReadOnlyList<LineOut> Say(params string[] texts) => texts.SelectMany(Say).ToList();

    public IReadOnlyList<LineOut> After(double minutes)
    {
        var said = new List<LineOut>();
        for (var end = _time.AddMinutes(minutes); _time < end;)
        {
            _time = _time.AddMinutes(double.Min(1, (end - _time).TotalMinutes));
            said.AddRange(Hear(new Tick(Now)));
        }

        return said;
    }

    public void Leap(double minutes) => _time = _time.AddMinutes(minutes);

    /// <summary>Wood at the rig's own interval.</summary>
    public void FireFor(double minutes)
    {
        var interval = Session.Setting.Rig.Interval.TotalMinutes;
        for (var gone = 0.0; gone < minutes; gone += interval)
        {
            After(interval);
            Say("wood");
        }
    }

    public T Last<T>()
        where T : LineOut => All.OfType<T>().Last();

    public T Only<T>()
        where T : LineOut => Assert.Single(Answers.OfType<T>());

    public Reading Read(ReadingName name, double value, Unit unit) => new(Now, name, new(value, unit));

    private static Conversation ToSteadyBoil(Guidance guidance, string rig, double tankGallons, bool known, int members)
    {
        var boil = new Conversation(guidance, rig, members: members);
        boil.Say(known ? "yes" : "no");
        boil.Say("depth 1.5");
        boil.Say($"tank {tankGallons}");
        boil.Say("sap 2");
        boil.Say("lit");
        boil.FireFor(27);
        boil.Say("boil rolling");
        boil.Say("water 210.4");
        return boil;
    }
}
