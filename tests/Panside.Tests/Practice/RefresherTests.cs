using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

/// <summary>The short practice before a season.</summary>
public class RefresherTests
{
    private static readonly DateTimeOffset Spring = new(2032, 3, 1, 12, 0, 0, TimeSpan.Zero);

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Who_does_what_is_said_tries_each_check_once_and_comes_to_a_safe_end(long seed)
    {
        using var practice = new AtTheRig("refresher", seed, speed: 10);
        var (trainee, came) = (new Trainee(practice), practice.Time);
        trainee.ToTheEnd();

        Assert.True(practice.Conversation.State.IsOver, string.Join(", ", trainee.Typed));
        Assert.True(practice.Conversation.State.IsSafe);
        Assert.Equal("All 6 checks were tried.", practice.Conversation.Tried);
        var cues = trainee.Heard.OfType<ToldLine>().Select(line => line.Text).Where(text => text.Contains(" of 6, ", StringComparison.Ordinal)).ToList();
        Assert.Equal(["1", "2", "3", "4", "5", "6"], cues.Select(cue => cue["PRACTICE ".Length..][..1]));
        Assert.Contains("emergency", trainee.Typed);
        Assert.InRange(practice.Conversation.Debriefed.Count, 6, 21);
        Assert.True(practice.Conversation.Close().IsGood);

        // Ten minutes for a person: of the simulated time at ten times real time, and five seconds for each saying.
        Assert.InRange(((practice.Time - came).TotalMinutes / 10) + (trainee.Typed.Count / 12.0), 3, 11);
    }

    [Fact]
    public void What_was_not_tried_is_told()
    {
        using var practice = new AtTheRig("refresher");
        Assert.Contains("1 of 6, feed", string.Join('\n', practice.Come().OfType<ToldLine>().Select(line => line.Text)), StringComparison.Ordinal);
        Assert.DoesNotContain("2 of 6", practice.Told("smell sweet"), StringComparison.Ordinal);
        Assert.Equal("1 of 6 checks were tried; left out: feed, depth, the one word, the last charge, when to leave.", practice.Conversation.Tried);
    }

    [Fact]
    public void It_is_offered_where_the_last_session_is_over_half_a_year_old_or_none_is_there()
    {
        using var scratch = new Scratch();
        var home = Home.Of(scratch.Folder);
        Assert.Contains("panside practice --refresher", RefresherOffer.Of(home, Spring), StringComparison.Ordinal);

        Record(home.Sessions, Spring.AddMonths(-11));
        Assert.NotNull(RefresherOffer.Of(home, Spring));

        Record(home.Sessions, Spring.AddMonths(-5));
        Assert.Null(RefresherOffer.Of(home, Spring));
        Assert.NotNull(RefresherOffer.Of(home, Spring.AddMonths(2)));
    }

    [Fact]
    public void Who_has_practised_lately_is_not_asked_again()
    {
        using var scratch = new Scratch();
        var home = Home.Of(scratch.Folder);
        Record(home.Sessions, Spring.AddMonths(-11));
        Record(home.Practice, Spring.AddDays(-1));
        Assert.Null(RefresherOffer.Of(home, Spring));
    }

    [Fact]
    public void It_is_a_scenario_of_its_own()
    {
        Assert.Equal(ExitStatus.Unusable, Captured.Run("practice", "--refresher", "--scenario", "cold-start").Status);
        Assert.DoesNotContain(ScenarioLibrary.WithoutPerson, one => one.Name == ScenarioLibrary.Refresher);
        Assert.Contains(ScenarioLibrary.All, one => one.Name == ScenarioLibrary.Refresher);
    }

    /// <summary>A record whose name, as a copied file's, says nothing, and whose lines say when it was.</summary>
    private static void Record(string folder, DateTimeOffset at)
    {
        Directory.CreateDirectory(folder);
        using var session = Opening.Open(new(null, null, "beginner", Path.Combine(folder, $"{Guid.NewGuid():N}.jsonl"), null));
        session.Hear(new Tick(Moment.Of(at)));
    }
}
