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
    /// <summary>What hangs on each value, seen over one and the same evening: whether there is more of it at the least that a flow may say, and how much.</summary>
    private static readonly Dictionary<FlowValue, (bool MoreAtLeast, Func<Flow, int> Seen)> Hangs = new()
    {
        [FlowValue.PutOff] = (true, flow => OfMinutes(flow, "later", 5).OfType<PromptLine>().Count()),
        [FlowValue.Patience] = (true, flow => OfMinutes(flow, "boil rolling", 9).OfType<PromptLine>().Count()),
        [FlowValue.DangerAgain] = (true, flow => OfMinutes(flow, "emergency", 3).OfType<PromptLine>().Count()),
        [FlowValue.LongAbsence] = (true, flow => Away(flow, 6).OfType<ToldLine>().Count(line => line.Text.Contains("Look at the pan first", StringComparison.Ordinal))),
        [FlowValue.Fresh] = (false, flow => Holding(flow, Boil.State, "depth-fresh", "tank-fresh")),
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
    };

    public static IEnumerable<TheoryDataRow<string>> Values => FlowValue.All.Select(value => new TheoryDataRow<string>(value.Name));

    private static Conversation Boil => Conversation.AtSteadyBoil(members: Conversation.Few);

    [Theory]
    [MemberData(nameof(Values))]
    public void What_hangs_on_a_value_goes_by_what_the_flow_says(string name)
    {
        var value = FlowValue.All.Single(one => one.Name == name);
        var (isMoreAtLeast, seen) = Hangs[value];
        int At(TimeSpan said) => seen(Read(string.Create(CultureInfo.InvariantCulture, $"values: {{ {name}: {said.TotalMinutes} min }}\n")));
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
    public void The_page_tells_each_value_with_what_is_usual_and_what_it_may_be()
    {
        var page = RepositoryFiles.Read("docs", "values.md");
        Assert.All(FlowValue.All, value => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| `{value.Name}` | {value.Usual.TotalMinutes} min | {value.Least.TotalMinutes} to {value.Most.TotalMinutes} min |"), page, StringComparison.Ordinal));
        Assert.All(FlowValue.All, value => Assert.InRange(value.Usual, value.Least, value.Most));
    }

    /// <summary>One if every fact holds, else none.</summary>
    private static int Holding(Flow flow, SessionState state, params string[] facts)
    {
        var now = new Situation(Set(flow), state);
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

    private static Moment Ago(double minutes) => Moment.Of(Boil.Now.Time.AddMinutes(-minutes));

    private static Setting Set(Flow flow) => new(
        flow, RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")), Guidance.Beginner, "test")
    { Members = Conversation.Few };

    private static Flow Read(string values) => FlowFile.Read("f", RepositoryFiles.Read("flows", "divided-pan.yaml") + values, Vocabularies.Flow);
}
