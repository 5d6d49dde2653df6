using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Screen;

/// <summary>The door as the screen needs it: lines in, lines out, and the state to look at.</summary>
public interface IConversation
{
    /// <summary>What is known after the lines so far.</summary>
    SessionState State { get; }

    /// <summary>What the session runs on.</summary>
    Setting Setting { get; }

    /// <summary>What is wrong with the record, for a person; null where all is well.</summary>
    string? Trouble { get; }

    /// <summary>Where the record is; null where it is kept in memory only.</summary>
    string? RecordPath { get; }

    /// <summary>What a person should know before the first line; null for nothing.</summary>
    string? Notice => null;

    /// <summary>What is said at once, as if a person had typed it; null for nothing.</summary>
    string? First => null;

    /// <summary>Hears a line and answers it.</summary>
    IReadOnlyList<LineOut> Hear(LineIn line);

    /// <summary>Whether time coming to a moment would bring anything that a person needs to hear.</summary>
    bool IsDue(Moment at);

    /// <summary>The state as it would stand at a moment; nothing is changed.</summary>
    SessionState At(Moment moment);
}
