using System.Collections.Immutable;
using Panside.Guide.Belief;
using Panside.Guide.Hearing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Practice;
using Panside.Reckoning.Chance;

namespace Panside.Workshop.Judging;

/// <summary>
/// A session's door through which every reading goes as typed text. Before it goes in, now and then a slip is tried in its
/// place: what would be answered is asked of the same state, which nothing changes, so that the boil runs on as without it.
/// </summary>
internal sealed class MistypingDoor(Setting setting, long seed) : IDoor
{
    /// <summary>Each kind of slip is tried on one of so many readings: good ones must be many more to be counted in thousandths.</summary>
    public const int GoodForEach = 5;

    private readonly Session _session = new(setting);
    private readonly Decider _decider = new(setting);
    private readonly Listener _listener = new(setting);
    private readonly Believable _believable = new(setting);
    private RandomNumbers _chance = RandomNumbers.For(unchecked((ulong)seed), 0x54595045);

    /// <summary>All that was typed.</summary>
    public List<Mistyped> Typed { get; } = [];

    /// <inheritdoc/>
    public SessionState State => _session.State;

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.IsDue(at);

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        var meant = line is Text text ? Meant(State, text) : line;
        var typed = meant switch
        {
            Reading reading => TypedReading.Of(reading.Name, reading.Measure, State.Doubted is null ? State.Open : null, setting.Units),
            Did { Name.Code: "close-draw", Measure: { } drawn } => TypedReading.Drew(drawn),
            _ => null,
        };
        if (typed is null)
        {
            return _session.Hear(line);
        }

        var before = _session.At(line.At);
        foreach (var slip in Slip.All)
        {
            if (Next() < 1.0 / GoodForEach && Slipped(slip, typed, meant!, before) is { } slipped)
            {
                Typed.Add(Tried(before, slip.Name, slipped));
            }
        }

        var good = new Text(line.At, typed.Text);
        var answers = _session.Hear(good);
        Typed.Add(Judged(before, null, good, answers));
        return answers;
    }

    /// <summary>A text that the slip leads to and that is not what was meant; null where it leads to none.</summary>
    private Text? Slipped(Slip slip, TypedReading typed, LineIn meant, SessionState state)
    {
        var newest = state.Readings.ToImmutableDictionary(one => one.Key, one => one.Value[^1].Value);
        var texts = slip.Of(typed, newest, setting.Units).Distinct().Select(text => new Text(meant.At, text))
            .Where(text => Meant(state, text) is not { } line || line != meant).ToList();
        return texts.Count > 0 ? texts[(int)(Next() * texts.Count)] : null;
    }

    private Mistyped Tried(SessionState state, string kind, Text text) =>
        Judged(state, kind, text, _decider.Decide(state, text).Lines);

    private Mistyped Judged(SessionState state, string? kind, Text text, IReadOnlyList<LineOut> answers)
    {
        var line = Meant(state, text);
        var reading = line switch
        {
            Reading read => read.Name.Code,
            Did { Measure: not null } did => did.Name.Code,
            _ => null,
        };
        return new(kind, text.Words, reading, line is null ? null : _believable.Off(state, line), Mistyped.Of(answers));
    }

    private LineIn? Meant(SessionState state, Text text) =>
        _listener.Understand(text.At, text.Words, state.Open) is MeansLine(var line) ? line : null;

    private double Next() => _chance.Unit();
}
