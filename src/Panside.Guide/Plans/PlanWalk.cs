using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Guide.Yaml;

namespace Panside.Guide.Plans;

/// <summary>What came of a walk.</summary>
/// <param name="Difference">The first difference from the plan; null where there is none.</param>
/// <param name="Asked">What was asked at each line that was come to: a step, a watch or <see cref="PlanLine.Nothing"/>.</param>
public sealed record Walked(Fault? Difference, IReadOnlyList<string> Asked);

/// <summary>
/// Plays a plan through the assistant, up to the first difference. Time passes by the minute, as in front of a face; what is said in the same
/// minute is said two seconds after what stands before it.
/// </summary>
public sealed class PlanWalk
{
    private const int TriggersTold = 12;

    private static readonly DateTimeOffset Day = new(2031, 3, 8, 0, 0, 0, TimeSpan.FromHours(-5));

    private readonly string _file;
    private readonly Plan _plan;
    private readonly Session _session;
    private readonly List<LineOut> _said = [];
    private DateTimeOffset _now;

    private PlanWalk(string file, Plan plan, Setting setting)
    {
        (_file, _plan, _session) = (file, plan, new(setting));
        _now = Day.AddMinutes(plan.Lines.Select(line => line.At?.Minutes).FirstOrDefault(minutes => minutes is not null) ?? (17 * 60));
    }

    /// <summary>Walks.</summary>
    /// <param name="file">The plan's name, for the difference.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="setting">Flow and rig, guided as the plan says.</param>
    public static Walked Of(string file, Plan plan, Setting setting) => new PlanWalk(file, plan, setting).Walk();

    private Walked Walk()
    {
        var asked = new List<string>();
        Hear(new Tick(Moment.Of(_now)));
        foreach (var line in _plan.Lines)
        {
            var isOver = _session.State.IsOver;
            if (!isOver)
            {
                Pass(line);
            }

            asked.Add(_session.State.Open?.Step ?? PlanLine.Nothing);
            if ((isOver ? Differs(line.Places.Whole, "the boil is over", "it to go on") : Place(line) ?? Say(line) ?? Told(line)) is { } difference)
            {
                return new(difference, asked);
            }

            _said.Clear();
        }

        return new(End(), asked);
    }

    /// <summary>Lets time come to when a line is said.</summary>
    private void Pass(PlanLine line)
    {
        var at = _now.AddSeconds(2);
        if (line.At is { } clock && clock.Minutes != (int)_now.TimeOfDay.TotalMinutes)
        {
            at = clock.NextAfter(_now);
            for (var minute = _now.AddMinutes(1); minute < at && !_session.State.IsOver; minute = minute.AddMinutes(1))
            {
                Hear(new Tick(Moment.Of(minute)));
            }
        }

        _now = at;
        Hear(new Tick(Moment.Of(_now)));
    }

    private Fault? Place(PlanLine line)
    {
        var state = _session.State;
        var phase = state.IsOver ? Flow.End : _session.Setting.Flow.PhaseOf(state.Step).Code;
        if (line.Asks is { } asks && asks != (state.Open?.Step ?? PlanLine.Nothing))
        {
            return Differs(
                line.Places.Asks,
                state.Open is { } open ? $"at {Clock} '{open.Step}' is asked ({open.Text})" : $"at {Clock} nothing is asked",
                asks == PlanLine.Nothing ? "nothing to be" : $"'{asks}' to be",
                LeadingOn());
        }

        return line.Phase is { } expected && expected != phase
            ? Differs(line.Places.Phase, $"at {Clock} the phase is '{phase}'", $"'{expected}'", LeadingOn())
            : null;
    }

    private Fault? Say(PlanLine line)
    {
        if (line.Say is not { } words)
        {
            return null;
        }

        var answers = _session.Hear(new Text(Moment.Of(_now), words));
        _said.AddRange(answers);
        var (taken, why) = answers.OfType<RefusedLine>().FirstOrDefault() is { } refused ? ("refused", refused.Why)
            : answers.OfType<QuestionLine>().FirstOrDefault() is { } question ? ("doubted", question.Text)
            : ("yes", "");
        return taken == line.Taken ? null : Differs(
            line.Places.Say,
            taken == "yes" ? $"at {Clock} '{words}' is taken" : $"at {Clock} '{words}' is {taken}: {why}",
            line.Taken == "yes" ? "it to be taken; 'taken: " + taken + "' where it is meant so" : $"it to be {line.Taken}");
    }

    private Fault? Told(PlanLine line)
    {
        var said = LinesOfText.Of(_said).ToList();
        if (line.Told.FirstOrDefault(told => !said.Any(text => Has(text, told))) is { Text: { } missing } lacking)
        {
            return Differs(lacking.Place, $"up to {Clock} nothing says '{missing}'", "it to be said", said.Count == 0 ? null : $"Said was: {string.Join(" / ", said.Select(text => text.Trim()).Take(6))}");
        }

        return line.NotTold.Concat(_plan.NotTold).FirstOrDefault(told => said.Any(text => Has(text, told))) is { Text: { } } spoken
            ? Differs(spoken.Place, $"up to {Clock} it is said: {said.First(text => Has(text, spoken)).Trim()}", $"nothing with '{spoken.Text}'")
            : null;
    }

    private Fault? End()
    {
        var (isOver, isSafe) = (_session.State.IsOver, _session.State.IsSafe);
        var ends = !isOver ? "open" : isSafe ? "safe" : "unsafe";
        return _plan.Ends is { } expected && expected != ends
            ? Differs(_plan.EndsPlace, ends == "open" ? "the boil is not over" : $"the boil ends {ends}", expected == "open" ? "it to go on" : $"it to end {expected}", isOver ? null : LeadingOn())
            : null;
    }

    private string Clock => _now.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Where the flow stands, what leads on from there, and what shuts the ways that are shut.</summary>
    private string? LeadingOn()
    {
        var (setting, state) = (_session.Setting, _session.State);
        if (state.IsOver)
        {
            return null;
        }

        var now = new Situation(setting, state);
        bool Holds(string fact) => Facts.Holds(now, fact);
        var own = setting.Flow.OrdinaryWays(setting.Flow.Steps[state.Step]).Select(way => way.When).Distinct().ToList();
        var open = setting.Machine.Permitted(state.Step, Holds).Where(own.Contains).Take(TriggersTold);
        var shut = own.Select(trigger => (trigger, Unmet: setting.Machine.Unmet(state.Step, trigger, Holds))).Where(way => way.Unmet.Count > 0).Take(TriggersTold / 2)
            .Select(way => $"'{way.trigger}' wants {string.Join(", ", way.Unmet)}");
        return $"It stands at '{state.Step}'. From there leads on: {string.Join(", ", open)}. {string.Join("; ", shut)}".Trim();
    }

    private void Hear(LineIn line) => _said.AddRange(_session.Hear(line));

    private static bool Has(string text, PlacedText told) => text.Contains(told.Text, StringComparison.OrdinalIgnoreCase);

    private Fault Differs((int Line, int Column) place, string wrong, string expected, string? help = null) =>
        new(_file, place.Line, place.Column, wrong, expected) { Kind = FaultKind.Walk, Help = help };
}
