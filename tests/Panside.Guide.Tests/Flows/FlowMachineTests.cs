using Panside.Guide.Flows;

namespace Panside.Guide.Tests.Flows;

/// <summary>What the machine of a small flow does, each answer worked by hand from the file.</summary>
public class FlowMachineTests
{
    private const string Ways = """
            on:
              - { when: did open-draw, given: [draw-due], go: pan }
              - { when: word stop, go: boil }
            steps:
              - step: boil
                rest: true
                watch: [tank, see-boil, see-depth, see-foam, see-smell]
                if:
                  - { when: word stop, given: [marked pan-seen, not draw-due], go: pan }
                  - { when: did open-draw, given: [pan-low], go: boil }
                  - { when: observed smell sweet, given: [draw-due], go: pan }
                  - { when: fact pan-low, go: boil }
                  - { when: fact draw-due, given: [pan-low], go: pan }
        """;

    private static readonly FlowMachine Machine = new(FlowFile.Read("small.yaml", Text(), Vocabularies.Flow));

    [Theory]
    [InlineData("boil", "word stop", "marked pan-seen", "pan")] // the step's own way
    [InlineData("boil", "word stop", "", "boil")] // shut: then its phase's, which leads to where one stands
    [InlineData("boil", "word stop", "marked pan-seen, draw-due", "boil")] // a 'not' shuts it too
    [InlineData("boil", "did open-draw", "pan-low, draw-due", "boil")] // both open: the step's own comes first
    [InlineData("boil", "did open-draw", "draw-due", "pan")]
    [InlineData("boil", "did open-draw", "", null)]
    [InlineData("boil", "reading pan-depth", "pan-below-least", "dry")] // from anywhere
    [InlineData("boil", "reading pan-depth", "", null)]
    [InlineData("boil", "did leave", "clear-to-leave", "over")]
    [InlineData("boil", "did leave", "", null)]
    [InlineData("pan", "answer no", "", "pan")] // its own way, to itself
    [InlineData("dry", "answer no", "", "left-alone")]
    [InlineData("dry", "answer yes", "", "pan")]
    [InlineData("dry", "word dry", "", "dry")] // cried again where it stands
    [InlineData("boil", "fact draw-due", "draw-due, pan-low", "pan")]
    [InlineData("boil", "fact pan-low", "pan-low", null)] // a fact never leads to where one stands
    public void A_trigger_takes_the_first_way_of_the_nearest_place_that_is_open(string step, string trigger, string holding, string? to) =>
        Assert.Equal(to, Machine.Next(step, trigger, "pan", Holding(holding)));

    [Fact]
    public void A_shut_way_says_which_of_its_facts_do_not_hold()
    {
        Assert.Equal(["clear-to-leave"], Machine.Unmet("boil", "did leave", Holding("")));
        Assert.Equal(["pan-low"], Machine.Unmet("boil", "fact draw-due", Holding("draw-due")));
        Assert.Empty(Machine.Unmet("boil", "did leave", Holding("clear-to-leave")));
        Assert.Empty(Machine.Unmet("boil", "did add-wood", Holding("")));
    }

    [Fact]
    public void What_leads_on_is_told_as_things_are()
    {
        Assert.Equal(
            ["answer no", "answer yes", "answer skip", "word dry", "word scorch", "observed smell scorched", "word foam", "observed foam over", "word emergency", "did leave"],
            Machine.Permitted("pan", Holding("clear-to-leave")).Where(trigger => !trigger.StartsWith("danger ", StringComparison.Ordinal)));
        Assert.DoesNotContain("did leave", Machine.Permitted("pan", Holding("")));
    }

    [Theory]
    [InlineData("pan", "answer yes", "leave pan for boil, reach boil from pan")]
    [InlineData("pan", "answer no", "leave pan for pan, reach pan from pan")]
    [InlineData("boil", "word stop", "leave boil for boil, reach boil from boil")]
    [InlineData("dry", "word dry", "leave dry for dry, reach dry from dry")]
    [InlineData("dry", "answer no", "leave dry for left-alone, reach left-alone from dry")]
    [InlineData("boil", "word nothing", "")]
    public void A_step_is_left_before_the_next_is_reached(string step, string trigger, string then)
    {
        var walk = new Walk(step, "");
        Assert.Equal(then.Length > 0, Machine.Fire(walk, trigger));
        Assert.Equal(then, string.Join(", ", walk.Happened));
    }

    [Fact]
    public void Facts_lead_on_by_themselves_and_one_that_leads_nowhere_else_is_passed_over()
    {
        var walk = new Walk("boil", "pan-low, draw-due");
        Assert.True(Machine.FireByFact(walk));
        Assert.Equal("pan", walk.Step);
        Assert.False(Machine.FireByFact(walk));
        Assert.False(Machine.FireByFact(new Walk("boil", "pan-low")));
    }

    [Fact]
    public void Whoever_reaches_a_step_may_fire_on_from_there_and_stands_where_that_led()
    {
        var walk = new Walk("pan", "clear-to-leave") { FiresOn = "did leave" };
        Assert.True(Machine.Fire(walk, "answer yes"));
        Assert.Equal("over", walk.Step);
        Assert.Equal(["leave pan for boil", "reach boil from pan", "leave boil for over", "reach over from boil"], walk.Happened);
    }

    private static string Text()
    {
        var small = RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "smallest.yaml");
        var (from, to) = (small.IndexOf("    steps:\n      - step: boil", StringComparison.Ordinal), small.IndexOf("  - phase: emergency", StringComparison.Ordinal));
        return string.Concat(small.AsSpan(0, from), Ways, "\n", small.AsSpan(to));
    }

    private static Func<string, bool> Holding(string facts) => facts.Split(", ").Contains;

    /// <summary>Somebody who stands in a flow, and notes what happens.</summary>
    private sealed class Walk(string step, string holding) : IStanding
    {
        public string? FiresOn { get; init; }

        public string Step { get; private set; } = step;

        public string ReturnTo => "pan";

        public List<string> Happened { get; } = [];

        public bool Holds(string fact) => Holding(holding)(fact);

        public void Leave(Move move) => Happened.Add($"leave {move.From} for {move.To}");

        public void Reach(Move move)
        {
            Happened.Add($"reach {move.To} from {move.From}");
            Step = move.To;
            if (FiresOn is { } trigger && move.To == "boil")
            {
                Assert.Null(Machine.Next(Step, "word nothing", "", _ => false)); // a look in between changes nothing
                Assert.True(Machine.Fire(this, trigger));
            }
        }
    }
}
