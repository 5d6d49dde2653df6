using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Practice;

namespace Panside.Faces;

/// <summary>The recorded session as the practice comes through it.</summary>
internal sealed class PracticeDoor(RecordedSession session) : IDoor
{
    /// <inheritdoc/>
    public SessionState State => session.State;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line) => session.Hear(line);

    /// <inheritdoc/>
    public bool IsDue(Moment at) => session.Session.IsDue(at);
}
