using System.Globalization;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Reckoning.Ensemble;
using Panside.Tests.Screen.Support;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>
/// One night with the record, all of it from one seed: two programs, a disk that fails, a clock that jumps, deaths, power cuts,
/// strangers that delete and replace files, flipped bits. What must hold is looked at after every death and at the end.
/// </summary>
internal sealed class SimulatedNight
{
    /// <summary>One night of so many has the real assistant.</summary>
    private const int RealEvery = 50;

    /// <summary>One night of so many has it with as many possible rigs as a boil.</summary>
    private const int WholeEvery = 1000;

    private const string Wanted = "/night/boil.jsonl";

    /// <summary>Few members: the record hangs on none of their numbers, and a night is over in a moment.</summary>
    private static readonly Setting Quick = QuickSetting();

    private static readonly Setting Whole = Quick.With(RigEnsemble.UsualCount);

    private static readonly string[] Said =
    [
        "\"tick\":true", "\"text\":\"yes\"", "\"text\":\"no\"", "\"text\":\"lit\"", "\"text\":\"lit\"", "\"text\":\"wood\"", "\"text\":\"undo\"",
        "\"text\":\"tank 20\"", "\"text\":\"tank 200\"", "\"text\":\"depth 1 1/2\"", "\"text\":\"status\"", "\"text\":\"note séve ½ 🍁\"", "\"text\":\"scorched\"",
        "\"reading\":\"tank-volume\",\"value\":18,\"unit\":\"gal\"", "\"observed\":\"boil\",\"is\":\"rolling\"", "\"did\":\"add-wood\",\"value\":7,\"unit\":\"lb\"",
        "\"answer\":\"yes\"", "\"answer\":\"later\"", "\"resume\":true", "\"ready\":true", "\"seq\":3,\"refused\":{\"why\":\"x\"}", "\"unread\":\"x\",\"why\":\"y\"",
        "\"reading\":\"tank-volume\",\"value\":18,\"unit\":\"gal\",\"mood\":1", "\"did\":\"dance\"", "\"text\":\"half \\ud83c\"", "\"seq\":9,\"told\":{\"text\":\"x\"}",
    ];

    private readonly Random _chance;
    private readonly SimulatedFolder _folder;
    private readonly OtherNames _names;
    private readonly Program?[] _programs = new Program?[2];
    private readonly List<Kept> _kept = [];
    private readonly HashSet<string> _strange = new(StringComparer.Ordinal);
    private readonly Dictionary<string, byte[]> _replayed = new(StringComparer.Ordinal);
    private readonly Dictionary<string, byte[]> _left = new(StringComparer.Ordinal);
    private DateTimeOffset _now = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
    private int _torn;

    private readonly Func<Session> _session;

    private SimulatedNight(int seed)
    {
        // Most nights a simple assistant answers: the record hangs on none of its words. In some the real one does.
        _session = seed % WholeEvery == 0 ? () => new Session(Whole) : seed % RealEvery == 0 ? () => new Session(Quick) : () => new ScriptedSession(Quick);
        _chance = new(seed);
        _folder = new(_chance);
        _names = new(_folder.Exists, _folder.Open);
    }

    /// <summary>Lives through the night of a seed; throws where anything is broken.</summary>
    public static void Live(int seed)
    {
        var night = new SimulatedNight(seed);
        try
        {
            for (var left = night._chance.Next(10, 40); left > 0; left--)
            {
                night.Step();
            }

            night.End();
        }
        catch (Exception fault)
        {
            throw new InvalidOperationException($"seed {seed}: {fault.Message}", fault);
        }
    }

    private void Step()
    {
        var which = _chance.Next(2);
        switch (_chance.Next(100))
        {
            case < 66:
                Say(which);
                break;
            case < 74:
                _folder.Failing = _chance.Next(1, 7);
                break;
            case < 77:
                _folder.IsReadOnly = !_folder.IsReadOnly;
                break;
            case < 84:
                Die(powerCut: false);
                break;
            case < 90:
                Die(powerCut: true);
                break;
            case < 93:
                Close(which);
                break;
            case < 95:
                var deleted = Any();
                _folder.Delete(deleted);
                Forget(deleted);
                break;
            case < 97:
                var replaced = Any();
                _folder.Replace(replaced, _chance.Next(2) == 0 && _folder.Exists(replaced) ? _folder.Bytes(replaced) : "somebody else's\n"u8.ToArray());
                _strange.Add(replaced);
                break;
            case < 98 when _programs.All(program => program is null):
                var flipped = Any();
                if (_folder.Exists(flipped))
                {
                    _folder.Flip(flipped);
                    _strange.Add(flipped);
                }

                break;
            default:
                _now = _now.AddMinutes(_chance.Next(-90, 60));
                break;
        }
    }

    private string Any() => _folder.Names.OrderBy(name => name, StringComparer.Ordinal).ElementAtOrDefault(_chance.Next(3)) ?? Wanted;

    private void Say(int which)
    {
        if ((_programs[which] ??= Start()) is not { } program)
        {
            return;
        }

        _now = _now.AddMilliseconds(_chance.Next(4) == 0 ? 0 : _chance.Next(90_000));
        var at = _now.ToString(_chance.Next(3) == 0 ? "yyyy-MM-dd'T'HH:mm:ss.fffzzz" : "yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture);
        var raw = _chance.Next(25) == 0 ? "no json" : $"{{\"at\":\"{at}\",{Said[_chance.Next(Said.Length)]}}}";
        if (_chance.Next(3) == 0)
        {
            // A face with a clock of its own, which shows parts of a second.
            program.Hear(new Text(new(_now, Moment.Of(_now).Written), _chance.Next(2) == 0 ? "yes" : "lit"), null);
        }
        else
        {
            program.Hear(Faces.StreamFace.Read(raw), raw);
        }
    }

    /// <summary>A program begins a boil, or goes on with one that nobody has open.</summary>
    private Program? Start()
    {
        try
        {
            if (!_folder.Exists(Wanted) || _chance.Next(6) == 0)
            {
                return new(RecordedSession.New(_session(), _ => _names.Begin(Wanted), Wanted, Spare, snapshots: false), []);
            }

            var name = Any();
            if (_strange.Contains(name))
            {
                return null;
            }

            var (said, whole) = (Raws(name, onlyWhole: false), Raws(name, onlyWhole: true));
            return new(RecordedSession.On(_session(), _folder.Open(name), Spare), said) { Safe = new(name, whole) };
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    private JournalFile? Spare(string? near) => _names.Spare(near, "/sessions");

    private void Close(int which)
    {
        if (_programs[which] is { } program)
        {
            // A disk that refuses even to take back the half of a line leaves it torn.
            _torn++;
            program.Session.Dispose();
            Note(program);
            _programs[which] = null;
            Look();
        }
    }

    private void Die(bool powerCut)
    {
        foreach (var program in _programs.OfType<Program>())
        {
            Note(program);
        }

        Array.Clear(_programs);
        _torn++;
        _folder.Die(powerCut);
        foreach (var name in _folder.Names)
        {
            _left[name] = _folder.Bytes(name);
        }

        Look();
    }

    private void End()
    {
        _folder.Failing = 0;
        _folder.IsReadOnly = false;
        Close(0);
        Close(1);
        Look();
        foreach (var name in _folder.Names.Where(name => !_strange.Contains(name)).ToList())
        {
            // Whatever is left is gone on with, and replays to itself again.
            using (var session = RecordedSession.On(_session(), _folder.Open(name), null))
            {
                session.Hear(new Tick(Moment.Of((session.State.Now?.Time ?? _now).AddSeconds(2))));
                Assert.Null(session.Trouble is { } trouble && !trouble.StartsWith("Damaged lines", StringComparison.Ordinal) ? trouble : null);
            }

            Replays(name);
        }
    }

    /// <summary>What a program had acknowledged as kept, when it ended.</summary>
    private void Note(Program program)
    {
        if (program.Safe is { } safe)
        {
            _kept.RemoveAll(one => one.Path == safe.Path);
            _kept.Add(safe);
        }
    }

    private void Look()
    {
        foreach (var kept in _kept.Where(one => !_strange.Contains(one.Path)).ToList())
        {
            if (!_folder.Exists(kept.Path))
            {
                // A stranger has deleted it, and no program had it open to put it back.
                _kept.Remove(kept);
                continue;
            }

            var raws = Raws(kept.Path, onlyWhole: true);
            Assert.True(raws.Take(kept.Said.Count).SequenceEqual(kept.Said), $"{kept.Path}: {kept.Said.Count} acknowledged, {raws.Count} there\n{string.Join('\n', raws)}\nnot\n{string.Join('\n', kept.Said)}");
        }

        foreach (var name in _folder.Names.Where(name => !_strange.Contains(name)).ToList())
        {
            // What a death left is a half line perhaps, and yet the only account of what was said then: who goes on takes none of it away.
            Assert.True(!_left.TryGetValue(name, out var left) || _folder.Bytes(name).AsSpan().StartsWith(left), $"{name}: what a death left there was taken away");
            Replays(name);
        }
    }

    /// <summary>What a stranger has deleted nobody has promised to keep, until it is written again.</summary>
    private void Forget(string name)
    {
        _kept.RemoveAll(one => one.Path == name);
        _left.Remove(name);
        foreach (var program in _programs.OfType<Program>().Where(program => program.Safe?.Path == name))
        {
            program.Safe = null;
        }
    }

    /// <summary>What was said, as a record has it; going on is said by nobody.</summary>
    private IReadOnlyList<string> Raws(string name, bool onlyWhole) =>
    [
        .. Record.Of(RecordBytes.Lines(_folder.Bytes(name))).Exchanges.Where(exchange => exchange.IsComplete || !onlyWhole)
            .Select(exchange => exchange.Raw).OfType<string>().Where(raw => !raw.EndsWith("\"resume\":true}", StringComparison.Ordinal)),
    ];

    /// <summary>Every record replays to itself, and nothing is glued to a torn line.</summary>
    private void Replays(string name)
    {
        var bytes = _folder.Bytes(name);
        if (_replayed.TryGetValue(name, out var before) && before.AsSpan().SequenceEqual(bytes))
        {
            return;
        }

        _replayed[name] = bytes;
        var record = Record.Of(RecordBytes.Lines(bytes));
        Assert.True(record.Damaged.Count <= _torn, $"{name}: {record.Damaged.Count} damaged lines after {_torn} endings");
        foreach (var (exchange, _, difference) in Rehearing.Of(_session(), record))
        {
            if (exchange.IsComplete)
            {
                Assert.True(difference is null, $"{name}:{difference?.LineNumber}: stood {difference?.Stood}, comes {difference?.Comes}");
            }
        }
    }

    private static Setting QuickSetting()
    {
        var usual = SessionDoor.BuiltIn();
        return new(usual.Flow, usual.Rig, Guidance.Beginner, "panside test") { Members = 8 };
    }

    /// <summary>What was said to a session and acknowledged as kept in a record.</summary>
    private sealed record Kept(string Path, IReadOnlyList<string> Said);

    /// <summary>A program with a session, and what it has acknowledged.</summary>
    private sealed class Program(RecordedSession session, IEnumerable<string> before)
    {
        private readonly List<string> _said = [.. before];

        public RecordedSession Session => session;

        /// <summary>What it has acknowledged as kept, and where.</summary>
        public Kept? Safe { get; set; }

        public void Hear(LineIn line, string? raw)
        {
            var (heard, text) = KeptLine.Of(line, raw);
            session.Hear(line, raw);
            if (text is not null && heard is not Unreadable { Stated: null } && !KeptLine.Said(text).EndsWith("\"resume\":true}", StringComparison.Ordinal))
            {
                _said.Add(KeptLine.Said(text));
            }

            // The record is told to be somewhere: then all that was said stands there.
            Safe = session.Path is { } path ? new(path, [.. _said]) : Safe;
        }
    }
}
