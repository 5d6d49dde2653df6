using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Benchmarks;

/// <summary>A boil talked through to a steady boil, and an hour of it.</summary>
internal sealed class SteadyBoil
{
    public const string FlowName = "divided-pan.yaml";
    public const string RigName = "two-by-four-natural.yaml";
    public const int Lines = 60;

    private static readonly string[] Start = ["yes", "depth 1.5", "tank 30", "sap 2", "lit"];
    private static readonly Setting Setting = new(
        FlowFile.Read(FlowName, Known.Text(FlowName), Vocabularies.Flow),
        RigFile.Read(RigName, Known.Text(RigName)), Guidance.Beginner, "benchmark");

    private readonly Session _session = new(Setting);
    private DateTimeOffset _time = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));

    public SteadyBoil()
    {
        _session.Hear(new Tick(Moment.Of(_time)));
        foreach (var words in Start)
        {
            Say(words);
        }

        for (var minute = 0; minute < 27; minute++)
        {
            Minute(minute % 9 == 8 ? "wood" : null);
        }

        Say("boil rolling");
        Say("water 210.4");
        if (Setting.Flow.PhaseOf(_session.State.Step).Code != "steady-boil")
        {
            throw new InvalidOperationException("The flow has changed: these lines no longer lead to a steady boil.");
        }
    }

    /// <summary>Ticks, wood every nine minutes, the tank every ten; the lines that were answered with.</summary>
    public int AnHour()
    {
        var said = 0;
        for (var minute = 1; minute <= Lines; minute++)
        {
            said += Minute(minute % 9 == 0 ? "wood" : minute % 10 == 0 ? $"tank {29 - (minute / 10)}" : null);
        }

        return said;
    }

    private void Say(string words)
    {
        _time = _time.AddSeconds(2);
        _session.Hear(new Text(Moment.Of(_time), words));
    }

    private int Minute(string? words)
    {
        _time = _time.AddMinutes(1);
        var now = Moment.Of(_time);
        return _session.Hear(words is null ? new Tick(now) : new Text(now, words)).Count;
    }
}
