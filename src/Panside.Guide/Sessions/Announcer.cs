using Panside.Guide.Advice;
using Panside.Guide.Belief;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;

namespace Panside.Guide.Sessions;

/// <summary>Tells the phase, and asks: cautions first, then the one prompt that is due.</summary>
internal sealed class Announcer(Setting setting)
{
    /// <summary>An interruption shorter than this is not told of.</summary>
    private static readonly TimeSpan Short = TimeSpan.FromMinutes(1);

    private const int SameWordsAtMost = 3;

    private TimeSpan Patience => setting.Flow.Values[FlowValue.Patience];

    /// <summary>Tells the phase where it is another than before.</summary>
    public void Phase(Turn turn, string? before)
    {
        var phase = setting.Flow.PhaseOf(turn.State.Step).Code;
        if (phase != before)
        {
            turn.Say((at, number) => new PhaseLine(at, number, phase));
        }
    }

    /// <summary>Asks what is due, unless something as weighty is asked already: a watch gives way to one that stands before it.</summary>
    public void Prompt(Turn turn)
    {
        var step = setting.Flow.Steps[turn.State.Step];
        if (setting.Flow.Watches.FirstOrDefault(watch => watch.Id == turn.State.Open?.Step) is { } asked && !asked.Given.All(turn.Holds))
        {
            // What it was asked for has gone: a charge of wood, say, while the tank is in doubt.
            turn.Happen(new PutAside(asked.Id, turn.State.Now!.Value.Time));
        }

        var open = turn.State.Open;
        if (step.Ask is not null)
        {
            var isAsked = open?.Step == step.Id;
            var cries = Again(turn, step) is { } again && turn.State.Now!.Value.Time >= turn.State.OpenSince.Time + again
                && (step is { Phase.IsEmergency: true, Urgency: "danger" } || (step.Phase.IsEmergency && turn.Taken is not null) || turn.State.Asked.GetValueOrDefault(step.Id) < SameWordsAtMost);
            var isDue = IsDue(turn, step.Id, step.After);
            if (isAsked ? cries : isDue)
            {
                Ask(turn, step);
            }

            if (isAsked || isDue)
            {
                return;
            }
        }

        var watches = step.Watches.Select(id => setting.Flow.Watches.First(watch => watch.Id == id)).Where(watch => setting.IsThere(watch.Ask) && !Lacks.IsLacking(turn.State, setting.Readings.Find(watch.Ask))).ToList();
        foreach (var watch in watches)
        {
            if (open?.Step == watch.Id)
            {
                if (turn.State.Now!.Value.Time < turn.State.OpenSince.Time + Patience)
                {
                    return;
                }

                // Nobody answers it: it steps back behind all others that are due, so that each has its turn.
                continue;
            }

            if (IsDue(turn, watch))
            {
                if (open is not null && turn.State.Now!.Value.Time >= turn.State.OpenSince.Time + Patience)
                {
                    var others = watches.Count(other => other.Id != open.Step && IsDue(turn, other));
                    turn.Happen(new PutAside(open.Step, turn.State.Now!.Value.Time + (others * Patience)));
                }

                Ask(turn, watch);
                return;
            }
        }
    }

    /// <summary>
    /// After how long what is asked is asked again: in an emergency soon, and at once where something was told that did not end it; elsewhere only what
    /// is to be done now. Null where it only stands on the screen.
    /// </summary>
    private TimeSpan? Again(Turn turn, Step step) =>
        step.Phase.IsEmergency ? turn.Taken is null ? setting.Flow.Values[FlowValue.DangerAgain] : JustAsked
        : step.Urgency == "now" ? Patience
        : null;

    /// <summary>What was asked a moment ago is not asked again for what is told meanwhile; no source.</summary>
    private static readonly TimeSpan JustAsked = TimeSpan.FromSeconds(30);

    /// <summary>
    /// Goes on after an interruption: how long it was, and the open prompt again. After a long one over a fire the depth comes
    /// first: nobody has seen the pan meanwhile. A step keeps its place, for what was begun is to be ended; then the depth is
    /// told of and not asked.
    /// </summary>
    /// <param name="turn">The turn.</param>
    /// <param name="left">When the last line before the interruption was said.</param>
    public void GoOn(Turn turn, Moment? left)
    {
        var away = left is { } last ? turn.State.Now!.Value.Time - last.Time : TimeSpan.Zero;
        if (away < Short)
        {
            Repeat(turn);
            return;
        }

        var step = setting.Flow.Steps[turn.State.Step];
        var isUnseen = away >= setting.Flow.Values[FlowValue.LongAbsence] && turn.Now.IsLit && turn.State.Doubted is null;
        var depth = isUnseen && (turn.State.Open is null || turn.State.Open.Step != step.Id)
            ? step.Watches.Select(id => setting.Flow.Watches.First(watch => watch.Id == id)).FirstOrDefault(watch => watch.Ask == ReadingName.PanDepth.Code && IsDue(turn, watch))
            : null;
        turn.Tell($"Away {Amount.Minutes(away.TotalMinutes)}." + (isUnseen && depth is null ? " Look at the pan first: type its depth." : ""));
        if (depth is not null)
        {
            Ask(turn, depth);
        }
        else
        {
            Repeat(turn);
        }
    }

    /// <summary>Asks the open prompt again, with what belongs to it.</summary>
    public void Repeat(Turn turn)
    {
        if (turn.State.Open is not { } open)
        {
            TellDoubt(turn);
            return;
        }

        if (setting.Flow.Steps.TryGetValue(open.Step, out var step))
        {
            Ask(turn, step);
        }
        else
        {
            Ask(turn, setting.Flow.Watches.First(watch => watch.Id == open.Step));
        }
    }

    /// <summary>Tells of clocks that have run down.</summary>
    public static void Clocks(Turn turn)
    {
        foreach (var clock in turn.State.Clocks.Where(clock => clock.Until <= turn.State.Now!.Value.Time))
        {
            turn.Happen(new ClockRanDown(clock));
            turn.Tell(clock.Over);
        }
    }

    private void Ask(Turn turn, Step step) =>
        Ask(turn, step.Id, step.Ask!, Unanswered(turn, step) + step.Text, step.Because, step.Cautions, step.Advise, step.Urgency, step.Forecast, step.Prepare);

    /// <summary>
    /// S10: nothing is asked more than three times in the same words. From then on a danger says for how long nobody has answered,
    /// or that the answer did not end it, and what
    /// is no danger any more only stands on the screen.
    /// </summary>
    private static string Unanswered(Turn turn, Step step) =>
        step.Phase.IsEmergency && step.Urgency == "danger" && turn.State.Asked.GetValueOrDefault(step.Id) >= SameWordsAtMost
            ? turn.State.MinutesSince(turn.State.StepSince) is > 0 and var minutes ? $"No answer for {Amount.Minutes(minutes)}. " : "Still not over. "
            : "";

    private void Ask(Turn turn, Watch watch) =>
        Ask(turn, watch.Id, watch.Ask, watch.Text, watch.Because, watch.Cautions, watch.Advise, "info", null, prepare: false);

    private void Ask(
        Turn turn, string id, string ask, string text, string? because, IReadOnlyList<string> cautions, string? advise, string urgency,
        string? forecast, bool prepare)
    {
        foreach (var caution in cautions.Where(text =>
                     setting.Guidance == Guidance.Beginner || !turn.State.Cautioned.Contains(text)))
        {
            turn.Say((at, number) => new CautionLine(at, number, caution));
        }

        var filled = turn.Fill(text);
        var reason = because is null ? null : turn.Fill(because);
        if (advise is { } action)
        {
            var used = forecast is null ? null : Forecasts.Told(turn.Now, forecast);
            turn.Say((at, number) => new AdviceLine(at, number, new(action, urgency, filled, reason ?? "", used) { Prepare = prepare }));
        }

        var shown = setting.Guidance == Guidance.Beginner ? reason : null;
        if (turn.State.Open?.Step != id)
        {
            LetGo(turn);
        }

        turn.Say((at, number) => new PromptLine(at, number, Prompt(turn, id, ask, filled, shown)));
        TellDoubt(turn);
    }

    /// <summary>
    /// A yes answers what was asked last. So a look in doubt is dropped once something else is asked, and any other doubt once it has lapsed.
    /// </summary>
    private static void LetGo(Turn turn)
    {
        if (turn.State.Doubted is not ({ } doubted and not Did { Name.Code: "leave" }) || turn.State.Now!.Value.Time - doubted.At.Time is not { TotalSeconds: >= 60 } age || SomePoured.Open(turn.State) is not null)
        {
            return;
        }

        if (doubted is Observed || age > Situation.DoubtLasts)
        {
            turn.Happen(new Doubted(null));
            turn.Tell($"Dropped: {Words.Describe.Line(doubted)}. Say it again if it holds.");
        }
    }

    private static void TellDoubt(Turn turn)
    {
        if (turn.State.Doubted is { } doubted)
        {
            turn.Tell(doubted is Added added ? PanOrTank.StillOpen(added) : SomePoured.Open(turn.State) is { } poured ? SomePoured.StillOpen(poured) : $"Still open: {Words.Describe.Line(doubted)}? A yes answers this first.");
        }
    }

    private Prompt Prompt(Turn turn, string id, string ask, string text, string? because)
    {
        var prompt = Bare(turn, id, ask, text, because) with { Pour = Pour(turn, id) };
        return setting.Flow.Steps.TryGetValue(id, out var step)
            ? prompt with { CanSkip = step.CanSkip, CanWait = step.CanWait }
            : prompt;
    }

    /// <summary>What is asked to be poured: what stills the pan, or a portion where a hand feeds it; null where no amount is.</summary>
    private AskedPour? Pour(Turn turn, string id)
    {
        Measure? amount = setting.Flow.DeedOf(id) != DeedName.FillPan ? null
            : setting.Flow.IsPourToStill(id) ? turn.Now.StillingPour is { } pour ? setting.Units.From(pour.Liquid) : null
            : setting.Rig.Feed == Feed.ByHand ? HandFeed.Measured(setting.Rig)
            : null;
        return amount is { } asked ? new(asked, turn.Holds("tank-told-empty") ? Liquids.Water : Liquids.Sap) : null;
    }

    private Prompt Bare(Turn turn, string id, string ask, string text, string? because)
    {
        if (setting.Readings.Find(ask) is { } reading)
        {
            var (low, high) = reading.Usual(turn.Now);
            var last = turn.State.Last(reading);
            var unit = reading.Kind != Dimension.Temperature ? reading.UnitIn(setting.Units)
                : reading == ReadingName.DrawTemperature || reading == ReadingName.BoilingWaterTemperature ? turn.Now.Degree
                : last?.Value.Unit ?? reading.UnitIn(setting.Units);
            return new(
                id, ask, unit, text, because, Round(low, unit), Round(high, unit),
                last is { } noted ? Round(noted.Value, unit) : null,
                last is { } aged ? turn.State.MinutesSince(aged.At) : null);
        }

        return ObservationName.FromCode(ask) is { } observation
            ? new(id, ask, null, text, because, Choices: observation.States)
            : new(id, ask, null, text, because);
    }

    private bool IsDue(Turn turn, string id, TimeSpan after)
    {
        var now = turn.State.Now!.Value.Time;
        return turn.State.PutOff.TryGetValue(id, out var until) ? now >= until : now >= turn.State.StepSince.Time + after;
    }

    private bool IsDue(Turn turn, Watch watch)
    {
        // The clock first: what holds may hang on a forecast.
        return IsTime(turn.State, watch) && watch.Given.All(turn.Holds);
    }

    private bool IsTime(SessionState state, Watch watch)
    {
        var now = state.Now!.Value.Time;
        if (state.PutOff.TryGetValue(watch.Id, out var until))
        {
            return now >= until;
        }

        return setting.LastAnswered(watch, state) is not { } last || now >= last + setting.Every(watch);
    }

    private double Round(Measure measure, Unit unit) =>
        double.Round(measure.Unit == unit ? measure.Value : setting.Units.Convert(measure, unit).Value, 2);
}
