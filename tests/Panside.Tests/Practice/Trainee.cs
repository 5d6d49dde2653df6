using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Practice.Simulation;

namespace Panside.Tests.Practice;

/// <summary>A person in a practice who knows nothing but what is said: answers what is asked, tries what is told, and else waits.</summary>
internal sealed partial class Trainee(AtTheRig practice)
{
    private readonly List<string> _typed = [];
    private string? _cue;
    private bool _isClear;

    /// <summary>What was typed, in its order.</summary>
    public IReadOnlyList<string> Typed => _typed;

    /// <summary>Every answer.</summary>
    public List<LineOut> Heard { get; } = [];

    /// <summary>Goes on to the end, or so many sayings at most.</summary>
    public void ToTheEnd(int sayings = 400)
    {
        Listen(practice.Come());
        while (!practice.Conversation.State.IsOver && _typed.Count < sayings)
        {
            var words = Next();
            _typed.Add(words);
            Listen(practice.Type(words));
            Listen(practice.Wait(TimeSpan.FromSeconds(5)));
        }
    }

    private string Next()
    {
        var tried = _cue is { } cue ? Tried(cue) : null;
        _cue = tried is null ? _cue : null;
        return tried ?? Answer() ?? (_isClear ? "leave" : "ahead 5");
    }

    private string? Tried(string cue) =>
        cue.Contains("like 'tank", StringComparison.Ordinal) ? $"tank {Read(ReadingName.TankVolume)}"
        : cue.Contains("like 'depth", StringComparison.Ordinal) ? $"depth {Read(ReadingName.PanDepth)}"
        : cue.Contains("what you smell", StringComparison.Ordinal) ? $"smell {Sights.Of(practice.Rig, ObservationName.Smell)}"
        : Word().Match(cue) is { Success: true } word && word.Groups[1].Value != "leave" ? word.Groups[1].Value
        : null;

    private string? Answer() => practice.Conversation.State.Open is not { } open ? null
        : KnownReadings.BuiltIn.Find(open.Ask) is { } reading ? Read(reading)
        : ObservationName.FromCode(open.Ask) is { } name ? Sights.Of(practice.Rig, name)
        : practice.Conversation.State.Step == "season-last" ? "no"
        : "yes";

    private string Read(ReadingName name) => new Instruments(practice.Rig, practice.Conversation.Setting.Units, practice.Rig.Seed).Read(name).ToString()!;

    private void Listen(IReadOnlyList<LineOut> answers)
    {
        Heard.AddRange(answers);
        _cue = answers.OfType<ToldLine>().LastOrDefault(line => Numbered().IsMatch(line.Text))?.Text ?? _cue;
        _isClear |= answers.Any(answer => answer is AdviceLine { Advice.Action: "clear-to-leave" });
    }

    [GeneratedRegex(@"\. Type '([a-z]+)'|then type '([a-z]+)'")]
    private static partial Regex Word();

    [GeneratedRegex("^PRACTICE [0-9] of [0-9], ")]
    private static partial Regex Numbered();
}
