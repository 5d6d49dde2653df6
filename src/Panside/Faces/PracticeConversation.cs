using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Journal;
using Panside.Practice;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>
/// The recorded conversation with a simulated rig beside it, for every face. Two words are answered here and reach neither the
/// assistant nor the record: look, and pour. Everything else is the same conversation as at a real rig.
/// </summary>
internal sealed class PracticeConversation : IConversation
{
    /// <summary>What a person is told first.</summary>
    public const string Welcome =
        "Simulated rig. 'look' shows what one sees and what the instruments show; 'pour' pours a pail of sap into the pan.";

    private readonly RecordedSession _session;
    private readonly Attended _practice;
    private readonly Instruments _instruments;

    /// <summary>The conversation of a session with a rig that starts at a time.</summary>
    public PracticeConversation(RecordedSession session, PracticeRig rig, DateTimeOffset start)
    {
        _session = session;
        _practice = new(new PracticeDoor(session), rig, start);
        _instruments = new(rig, session.Setting.Units, rig.Seed);
    }

    /// <inheritdoc/>
    public SessionState State => _session.State;

    /// <inheritdoc/>
    public Setting Setting => _session.Setting;

    /// <inheritdoc/>
    public string? Trouble => _session.Trouble;

    /// <inheritdoc/>
    public string? RecordPath => _session.Path;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        if (State.Now is null)
        {
            return [Told(line.At, Welcome), .. _practice.Hear(_practice.Rig.NoteAt(line.At)), .. Hear(line)];
        }

        return line is Text text && Own(text) is { } answer ? [.. answer.Select(words => Told(line.At, words))] : _practice.Hear(line);
    }

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.Session.IsDue(at);

    /// <inheritdoc/>
    public SessionState At(Moment moment) => _session.Session.At(moment);

    /// <summary>The end, with what truly was.</summary>
    public PracticeOutcome Close() => _practice.Close();

    /// <summary>The answer to a word that is practice's own; null where it is none.</summary>
    private IEnumerable<string>? Own(Text text)
    {
        switch (text.Words.Trim().ToLowerInvariant())
        {
            case "look":
                _practice.ComeTo(text.At.Time);
                return Look.At(_practice.Rig, _instruments);
            case "pour":
                _practice.ComeTo(text.At.Time);
                return [$"Poured {Amount.Shown(Setting.Units.From(_practice.Pour()))} into the pan."];
            default:
                return null;
        }
    }

    private ToldLine Told(Moment at, string words) => new(at, State.Sequence, $"{PracticeReport.Mark} {words}");
}
