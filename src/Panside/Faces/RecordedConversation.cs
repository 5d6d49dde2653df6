using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Screen;

namespace Panside.Faces;

/// <summary>A recorded session as the faces for a person see it.</summary>
internal sealed class RecordedConversation(RecordedSession session) : IConversation
{
    /// <inheritdoc/>
    public SessionState State => session.State;

    /// <inheritdoc/>
    public Setting Setting => session.Setting;

    /// <inheritdoc/>
    public string? Trouble => session.Trouble;

    /// <inheritdoc/>
    public string? RecordPath => session.Path;

    /// <inheritdoc/>
    public string? Notice { get; init; }

    /// <inheritdoc/>
    public string? First { get; init; }

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line) => session.Hear(line);

    /// <inheritdoc/>
    public bool IsDue(Moment at) => session.Session.IsDue(at);

    /// <inheritdoc/>
    public SessionState At(Moment moment) => session.Session.At(moment);
}
