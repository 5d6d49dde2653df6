using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Practice.Scenarios;

/// <summary>Something that a person is asked to try once in a practice.</summary>
/// <param name="Name">What it is, in a word or two.</param>
/// <param name="Text">What the person is told.</param>
/// <param name="When">What it is seen by: <c>reading</c>, <c>observed</c>, <c>did</c> or <c>phase</c>, and a name.</param>
public sealed record Check(string Name, string Text, string When)
{
    /// <summary>Whether it can be seen.</summary>
    internal bool IsKnown => When.Split(' ') switch
    {
        ["reading", var name] => KnownReadings.BuiltIn.Find(name) is not null,
        ["observed", var name] => ObservationName.FromCode(name) is not null,
        ["did", var name] => DeedName.FromCode(name) is not null,
        ["phase", _] => true,
        _ => false,
    };

    /// <summary>Whether a line has brought it.</summary>
    internal bool IsSeen(SessionState before, SessionState after, IReadOnlyList<LineOut> answers) => When.Split(' ') switch
    {
        ["reading", var name] => after.Readings.Any(one => one.Key.Code == name && before.Last(one.Key) != one.Value[^1]),
        ["observed", var name] => after.Observations.Any(one => one.Key.Code == name && before.Last(one.Key) != one.Value),
        ["did", var name] => after.Deeds.Any(one => one.Key.Code == name && before.Last(one.Key) != one.Value),
        ["phase", var name] => answers.Any(answer => answer is PhaseLine phase && phase.Phase == name),
        _ => false,
    };
}
