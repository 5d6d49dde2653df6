using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Flows;

public class FlowValueTests
{
    private static readonly double[] Degrees = [.. Enumerable.Range(0, 40).Select(step => 213 + (0.25 * step))];

    private static readonly Lazy<IReadOnlyList<SessionState>> TowardADraw = new(Rising);

    private static readonly double[] Depths = [.. Enumerable.Range(0, 60).Select(step => 0.5 + (0.05 * step))];

    /// <summary>What hangs on each value, seen over one and the same evening: whether there is more of it at the least that a flow may say, and how much.</summary>
    private static readonly Dictionary<FlowValue, (bool MoreAtLeast, Func<Flow, int> Seen)> Hangs = new()
    {
        [FlowValue.PutOff] = (true, flow => OfMinutes(flow, "later", 5).OfType<PromptLine>().Count()),
        [FlowValue.Patience] = (true, flow => OfMinutes(flow, "boil rolling", 9).OfType<PromptLine>().Count()),
        [FlowValue.DangerAgain] = (true, flow => OfMinutes(flow, "emergency", 3).OfType<PromptLine>().Count()),
        [FlowValue.LongAbsence] = (true, flow => Away(flow, 6).OfType<ToldLine>().Count(line => line.Text.Contains("Look at the pan first", StringComparison.Ordinal))),
        [FlowValue.Fresh] = (false, flow => Holding(flow, Boil.State, "depth-fresh", "tank-fresh")),
        [FlowValue.DepthStale] = (true, flow => Holding(flow, Boil.State with { Readings = Boil.State.Readings.SetItem(ReadingName.PanDepth, [new(Ago(20), new(1.5, Unit.Inch))]) }, "depth-stale")),
        [FlowValue.Unanswered] = (true, flow => Holding(flow, Boil.State with { StepSince = Ago(10) }, "unanswered")),
        [FlowValue.FiredLong] = (true, flow => Holding(flow, Boil.State with { StepSince = Ago(20) }, "fired-long")),
        [FlowValue.LastChargeNear] = (false, flow => new[] { 12.0, 14, 16, 18, 20, 22, 24, 26 }
            .Sum(tank => Holding(flow, Conversation.AtSteadyBoil(tankGallons: tank, members: Conversation.Few).State, "last-charge-near"))),
        [FlowValue.FloodedLately] = (false, flow => Holding(flow, With(DeedName.FloodPan, 10), "flooded-lately")),
        [FlowValue.DefoamerWorks] = (true, flow => Holding(
            flow,
            With(DeedName.AddDefoamer, 2) with { Observations = Boil.State.Observations.SetItem(ObservationName.Foam, new(Boil.Now, "rising")) },
            "foam-rising",
            "draw-to-wait")),
        [FlowValue.DrawNear] = (false, flow => TowardADraw.Value.Sum(state => Holding(flow, state, "draw-near"))),
        [FlowValue.DrawAtHand] = (false, flow => Degrees.Sum(degrees => Holding(flow, AtDrawOff(degrees), "draw-at-hand"))),
        [FlowValue.DrawFarOver] = (true, flow => Degrees.Sum(degrees => Holding(flow, AtDrawOff(degrees), "draw-far-over"))),
        [FlowValue.DrawOpenLong] = (true, flow => Holding(flow, With(DeedName.OpenDraw, 2), "draw-open-long")),
        [FlowValue.DrawForgotten] = (true, flow => Holding(flow, With(DeedName.OpenDraw, 7), "draw-forgotten")),
        [FlowValue.BatchNear] = (false, flow => Degrees.Sum(degrees => HoldingOn("flat-by-hand.yaml", flow, TowardABatch(degrees), "batch-near"))),
        [FlowValue.PanLow] = (false, flow => Depths.Sum(depth => Holding(flow, Told(depth), "pan-low"))),
        [FlowValue.PanShallow] = (false, flow => Depths.Sum(depth => Holding(flow, OfDepth(depth), "pan-fallen"))),
        [FlowValue.PanFlooded] = (true, flow => Depths.Sum(depth => Holding(flow, OfDepth(depth), "pan-full"))),
        [FlowValue.StillLong] = (true, flow => Holding(flow, StillFor(30), "coals-down")),
    };

    public static IEnumerable<TheoryDataRow<string>> Values => FlowValue.All.Select(value => new TheoryDataRow<string>(value.Name));

    private static Conversation Boil => Conversation.AtSteadyBoil(members: Conversation.Few);

    [Theory]
    [MemberData(nameof(Values))]
    public void What_hangs_on_a_value_goes_by_what_the_flow_says(string name)
    {
        var value = FlowValue.All.Single(one => one.Name == name);
        var (isMoreAtLeast, seen) = Hangs[value];
        int At(double said) => seen(Read(string.Create(CultureInfo.InvariantCulture, $"values: {{ {name}: {said} {value.Unit.Shown()} }}\n")));
        var (least, most) = (At(value.Least), At(value.Most));
        Assert.True(isMoreAtLeast ? least > most : least < most, $"{least} at the least, {most} at the most");
    }

    [Fact]
    public void Every_value_is_tried() => Assert.Equal(FlowValue.All.Select(value => value.Name).Order(), Hangs.Keys.Select(value => value.Name).Order());

    [Theory]
    [InlineData(null, "Asked again in 5 minutes.", 5)]
    [InlineData("7 min", "Asked again in 7 minutes.", 7)]
    public void Later_puts_off_for_as_long_as_the_flow_says(string? putOff, string told, int minutes)
    {
        var session = new Session(Set(Read(putOff is null ? "" : $"values: {{ put-off: {putOff} }}\n")));
        var start = new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
        session.Hear(new Tick(Moment.Of(start)));
        Assert.Contains(session.Hear(new Text(Moment.Of(start), "later")), line => line is ToldLine(_, _, var text) && text == told);
        Assert.False(session.IsDue(Moment.Of(start.AddMinutes(minutes - 1))));
        Assert.True(session.IsDue(Moment.Of(start.AddMinutes(minutes))));
    }

    [Fact]
    public void Degrees_over_something_may_be_said_in_Celsius() =>
        Assert.Equal(1.5, Read("values: { draw-at-hand: 1.5 °C }\n").Values.Rise(FlowValue.DrawAtHand).Celsius, 9);

    [Fact]
    public void The_page_tells_each_value_with_what_is_usual_and_what_it_may_be()
    {
        var page = RepositoryFiles.Read("docs", "values.md");
        Assert.All(FlowValue.All, value => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| `{value.Name}` | {value.Usual} {value.Unit.Shown()} | {value.Least} to {value.Most} {value.Unit.Shown()} |"), page, StringComparison.Ordinal));
        Assert.All(FlowValue.All, value => Assert.InRange(value.Usual, value.Least, value.Most));
    }

    /// <summary>One if every fact holds, else none.</summary>
    private static int Holding(Flow flow, SessionState state, params string[] facts) => HoldingOn("two-by-four-natural.yaml", flow, state, facts);

    private static int HoldingOn(string rig, Flow flow, SessionState state, params string[] facts)
    {
        var now = new Situation(Set(flow, rig), state);
        return facts.All(fact => Facts.Holds(now, fact)) ? 1 : 0;
    }

    /// <summary>What is said after some words over a steady boil while minutes pass.</summary>
    private static List<LineOut> OfMinutes(Flow flow, string words, int minutes)
    {
        var session = new Session(Set(flow), Boil.State);
        session.Hear(new Text(Ago(-0.05), words));
        return [.. Enumerable.Range(1, minutes).SelectMany(minute => session.Hear(new Tick(Ago(-0.05 - minute))))];
    }

    /// <summary>What is said when somebody comes back to a boil whose depth was read before going.</summary>
    private static IReadOnlyList<LineOut> Away(Flow flow, int minutes)
    {
        var session = new Session(Set(flow), Boil.State);
        session.Hear(new Text(Ago(-0.05), "depth 1.5"));
        return session.Hear(new Resumed(Ago(-0.05 - minutes)));
    }

    private static SessionState With(DeedName deed, double minutesAgo) =>
        Boil.State with { Deeds = Boil.State.Deeds.SetItem(deed, new Noted<Measure?>(Ago(minutesAgo), null)) };

    /// <summary>A boil whose thermometer is read every two minutes while it rises, and believed.</summary>
    private static IReadOnlyList<SessionState> Rising()
    {
        var boil = Boil;
        return [.. Enumerable.Range(0, 24).Select(step =>
        {
            boil.Leap(2);
            boil.Hear(new Observed(boil.Now, ObservationName.Boil, "rolling"));
            boil.Hear(boil.Read(ReadingName.DrawTemperature, 211 + (0.25 * step), Unit.DegreeFahrenheit));
            if (boil.State.Doubted is not null)
            {
                boil.Hear(new Answer(boil.Now, AnswerWords.Yes));
            }

            return boil.State;
        })];
    }

    /// <summary>A pan that is poured out whole, its thermometer read twice on the way up.</summary>
    private static SessionState TowardABatch(double degrees)
    {
        var boil = Conversation.AtSteadyBoil(rig: "flat-by-hand.yaml", members: Conversation.Few);
        Noted<Measure> Read(double minutesAgo, double value) => new(Moment.Of(boil.Now.Time.AddMinutes(-minutesAgo)), new(value, Unit.DegreeFahrenheit));
        return boil.State with
        {
            Readings = boil.State.Readings.SetItem(ReadingName.DrawTemperature, [Read(4, degrees - 0.5), Read(2, degrees - 0.25), Read(0, degrees)]),
            Observations = boil.State.Observations.SetItem(ObservationName.Boil, new(boil.Now, "rolling")),
        };
    }

    /// <summary>A steady boil whose draw-off was just read.</summary>
    private static SessionState AtDrawOff(double degrees)
    {
        var boil = Boil;
        var read = new Noted<Measure>(boil.Now, new(degrees, Unit.DegreeFahrenheit));
        return boil.State with { Readings = boil.State.Readings.SetItem(ReadingName.DrawTemperature, [read]) };
    }

    private static SessionState OfDepth(double inches)
    {
        var (boil, read) = (Boil, new Measure(inches, Unit.Inch));
        return boil.State with { Readings = boil.State.Readings.SetItem(ReadingName.PanDepth, [new(boil.Now, read)]) };
    }

    private static SessionState Told(double inches)
    {
        var boil = Boil;
        boil.Hear(boil.Read(ReadingName.PanDepth, inches, Unit.Inch));
        return boil.State;
    }

    /// <summary>A pan over thin coals that has been seen still for minutes.</summary>
    private static SessionState StillFor(double minutes) => Boil.State with
    {
        StillSince = Ago(minutes),
        Observations = Boil.State.Observations.SetItem(ObservationName.Boil, new(Boil.Now, "still")).SetItem(ObservationName.Coals, new(Boil.Now, "thin")),
    };

    private static Moment Ago(double minutes) => Moment.Of(Boil.Now.Time.AddMinutes(-minutes));

    private static Setting Set(Flow flow, string rig = "two-by-four-natural.yaml") => new(
        flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", rig)), Guidance.Beginner, "test")
    { Members = Conversation.Few };

    private static Flow Read(string values) => FlowFile.Read("f", RepositoryFiles.Read("flows", "divided-pan.yaml") + values, Vocabularies.Flow);
}
