using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Screen;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Terminals;

/// <summary>A fault of ours on the full screen of a real terminal. Run by <see cref="StoppingTests"/> in one, and never otherwise.</summary>
public class FaultOnTheScreen
{
    [Fact(Explicit = true)]
    public void At_the_start_in_a_terminal() => Show("");

    [Fact(Explicit = true)]
    public void While_typing_in_a_terminal() => Show("fault");

    private static void Show(string at)
    {
        // The terminal must be the real one here.
        Environment.SetEnvironmentVariable("DisableRealDriverIO", null);
        Assert.Throws<InvalidOperationException>(() => FullScreen.Run(new Faulty(at), TimeProvider.System, ExitStatus.Interrupted));
    }

    /// <summary>A session that has a fault of ours where a word is typed; or at its first line, where that is no word.</summary>
    private sealed class Faulty(string at) : IConversation
    {
        private readonly SessionDoor _door = new(SessionDoor.BuiltIn());

        public SessionState State => _door.State;

        public Setting Setting => _door.Setting;

        public string? Trouble => null;

        public string? RecordPath => null;

        public IReadOnlyList<LineOut> Hear(LineIn line) =>
            at.Length == 0 || line is Text { Words: var words } && words == at ? throw new InvalidOperationException("a fault of ours") : _door.Hear(line);

        public bool IsDue(Moment moment) => _door.IsDue(moment);

        SessionState IConversation.At(Moment moment) => _door.At(moment);
    }
}
