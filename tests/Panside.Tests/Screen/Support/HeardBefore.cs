using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Tests.Screen.Support;

/// <summary>
/// What is known after lines, kept for the tests of a collection that say the same lines from the same start: an evening is reckoned once and
/// not once for each test that looks at it. A session is a pure function of its lines, so nothing else can tell the difference.
/// </summary>
/// <param name="state">What is known.</param>
internal sealed class HeardBefore(SessionState state)
{
    private static readonly OncePerCollection<Setting, HeardBefore> Starts = new();

    private readonly Dictionary<LineIn, (IReadOnlyList<LineOut> Answers, HeardBefore Then)> _heard = [];
    private readonly Dictionary<Moment, bool> _due = [];
    private (Moment Moment, SessionState State)? _shown;

    public SessionState State { get; } = state;

    /// <summary>Before the first line.</summary>
    public static HeardBefore Start(Setting setting) => Starts.Of(setting, () => new(new Session(setting).State));

    public IReadOnlyList<LineOut> Hear(Setting setting, LineIn line, out HeardBefore then)
    {
        if (!_heard.TryGetValue(line, out var known))
        {
            var session = new Session(setting, State);
            var answers = session.Hear(line);
            _heard[line] = known = (answers, new(session.State));
        }

        then = known.Then;
        return known.Answers;
    }

    public bool IsDue(Setting setting, Moment at)
    {
        if (!_due.TryGetValue(at, out var isDue))
        {
            _due[at] = isDue = new Session(setting, State).IsDue(at);
        }

        return isDue;
    }

    public SessionState At(Setting setting, Moment moment)
    {
        // Of the last moment alone: a state is large, and moments are many.
        if (_shown?.Moment != moment)
        {
            _shown = (moment, new Session(setting, State).At(moment));
        }

        return _shown.Value.State;
    }
}
