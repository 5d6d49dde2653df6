using Microsoft.Extensions.Time.Testing;
using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Lines;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Practice;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

/// <summary>A practice with a person, in this process, with time in the test's hand.</summary>
internal sealed class AtTheRig : IDisposable
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.Zero);

    private readonly Scratch _scratch = new();
    private readonly FakeTimeProvider _real = new(Evening);
    private PracticeRig _rig = null!;

    public AtTheRig(string scenario, long seed = 1, double speed = 1, bool canStepBack = true)
    {
        Clock = new(_real, speed);
        var where = ScenarioLibrary.Of(scenario);
        (RecordedSession, PracticeRig) Begin()
        {
            var session = Opening.Open(new(null, null, "beginner", null, _scratch.Folder), practice: true, ScenarioLibrary.RigOf(where));
            _rig = new(session.Setting.Rig, where, seed);
            Lead.Run(new PracticeDoor(session), _rig, Evening);
            return (session, _rig);
        }

        var (session, rig) = Begin();
        Clock.Set(Evening.AddSeconds(rig.Second));
        Conversation = new(session, rig, Evening, Clock, canStepBack ? Begin : null);
    }

    public PracticeConversation Conversation { get; }

    public PracticeClock Clock { get; }

    public PracticeRig Rig => _rig;

    public string Records => Path.Combine(_scratch.Folder, "practice");

    public DateTimeOffset Time => Clock.GetLocalNow();

    /// <summary>Comes to the rig, and hears what is said first.</summary>
    public IReadOnlyList<LineOut> Come() => Conversation.Hear(new Tick(Moment.Of(Time)));

    /// <summary>Types words; real time stands still meanwhile.</summary>
    public IReadOnlyList<LineOut> Type(string words) => Conversation.Hear(new Text(Moment.Of(Time), words));

    /// <summary>The same as lines of text.</summary>
    public string Told(string words) => string.Join('\n', LinesOfText.Of(Type(words)));

    /// <summary>Real time goes by, and a face looks at the clock.</summary>
    public IReadOnlyList<LineOut> Wait(TimeSpan real)
    {
        _real.Advance(real);
        return Conversation.IsDue(Moment.Of(Time)) ? Conversation.Hear(new Tick(Moment.Of(Time))) : [];
    }

    public void Dispose()
    {
        Conversation.Dispose();
        _scratch.Dispose();
    }
}
