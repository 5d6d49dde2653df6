using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Screen;

namespace Panside.Tests.Screen.Support;

/// <summary>A session without a record, that remembers what it heard.</summary>
internal sealed class SessionDoor(Setting setting) : IConversation
{
    private readonly Session _session = new(setting);
    private readonly List<LineIn> _heard = [];

    public IReadOnlyList<LineIn> Heard => _heard;

    public SessionState State => _session.State;

    public Setting Setting => _session.Setting;

    public string? Trouble { get; set; }

    public string? RecordPath => null;

    public static Setting BuiltIn(Guidance guidance = Guidance.Beginner, bool practice = false) => new(
        Library.Flow(null), RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig)), guidance, "panside test", practice);

    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        _heard.Add(line);
        return _session.Hear(line);
    }

    public bool IsDue(Moment at) => _session.IsDue(at);

    public SessionState At(Moment moment) => _session.At(moment);
}
