using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Practice;

/// <summary>The door of a session, as the practice comes through it: the same lines as everyone's.</summary>
public interface IDoor
{
    /// <summary>What is known after the lines so far.</summary>
    SessionState State { get; }

    /// <summary>Hears a line and answers it.</summary>
    IReadOnlyList<LineOut> Hear(LineIn line);

    /// <summary>Whether time coming to a moment would bring anything that a person needs to hear.</summary>
    bool IsDue(Moment at);
}
