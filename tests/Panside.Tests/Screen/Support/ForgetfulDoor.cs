using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Screen;

namespace Panside.Tests.Screen.Support;

/// <summary>A session without a record of which nothing is kept: for a whole boil that is played once, whose states would fill the memory.</summary>
internal sealed class ForgetfulDoor(Setting setting) : IConversation
{
    private readonly Session _session = new(setting);

    public SessionState State => _session.State;

    public Setting Setting => setting;

    public string? Trouble => null;

    public string? RecordPath => null;

    public IReadOnlyList<LineOut> Hear(LineIn line) => _session.Hear(line);

    public bool IsDue(Moment at) => _session.IsDue(at);

    public SessionState At(Moment moment) => _session.At(moment);
}
