using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;

namespace Panside.Practice.Assurance;

/// <summary>A session without a record, as the practice comes through it.</summary>
public sealed class SessionDoor(Setting setting) : IDoor
{
    private readonly Session _session = new(setting);

    /// <inheritdoc/>
    public SessionState State => _session.State;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line) => _session.Hear(line);

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.IsDue(at);
}
