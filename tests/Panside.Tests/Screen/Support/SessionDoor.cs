using System.Collections.Concurrent;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Screen;

namespace Panside.Tests.Screen.Support;

/// <summary>A session without a record, that remembers what it heard.</summary>
internal sealed class SessionDoor(Setting setting) : IConversation
{
    private static readonly ConcurrentDictionary<(Guidance, bool), Lazy<Setting>> Settings = new();

    private HeardBefore _known = HeardBefore.Start(setting);
    private readonly List<LineIn> _heard = [];

    public IReadOnlyList<LineIn> Heard => _heard;

    public SessionState State => _known.State;

    public Setting Setting => setting;

    public string? Trouble { get; set; }

    public string? RecordPath => null;

    public static Setting BuiltIn(Guidance guidance = Guidance.Beginner, bool practice = false) => Settings.GetOrAdd((guidance, practice), _ => new(() => new(
        Library.Flow(null), RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig)), guidance, "panside test", practice))).Value;

    public IReadOnlyList<LineOut> Hear(LineIn line)
    {
        _heard.Add(line);
        return _known.Hear(setting, line, out _known);
    }

    public bool IsDue(Moment at) => _known.IsDue(setting, at);

    public SessionState At(Moment moment) => _known.At(setting, moment);
}
