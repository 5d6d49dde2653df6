using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Flows;

/// <summary>A side trip that is a part of the phase it is entered from: something to be seen to, and the boil goes on.</summary>
public class SideTripTests
{
    private const string Hail = """
          - phase: steady-boil
            side-trip: true
            steps:
              - step: cover
                ask: confirm
                text: Cover the wood.
              - step: wipe
                ask: confirm
                text: Wipe the float.
                go: return
          - phase: emergency
        """;

    private DateTimeOffset _time = new(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void A_side_trip_of_the_same_phase_returns_to_where_it_was_entered_from()
    {
        var session = Begun();
        Assert.Equal(
            ["boil", "cover", "wipe", "boil", "cover"],
            new[] { "yes", "hail", "yes", "yes", "hail" }.Select(said => Step(session, said)));
    }

    [Fact]
    public void A_danger_within_it_leads_back_to_it_and_it_to_the_boil()
    {
        var session = Begun();
        Assert.Equal(
            ["boil", "cover", "help", "cover", "wipe", "boil"],
            new[] { "yes", "hail", "danger", "yes", "yes", "yes" }.Select(said => Step(session, said)));
    }

    private string Step(Session session, string said)
    {
        _time = _time.AddMinutes(1);
        session.Hear(new Text(Moment.Of(_time), said));
        return session.State.Step;
    }

    private Session Begun()
    {
        var small = RepositoryFiles.Read("tests", "Panside.Guide.Tests", "Flows", "smallest.yaml").ReplaceLineEndings("\n")
            .Replace("  stop: [halt]\n", "  stop: [halt]\n  hail: [it hails]\n", StringComparison.Ordinal)
            .Replace("anywhere:\n", "anywhere:\n  - { when: word hail, given: [not emergency-on], go: cover }\n", StringComparison.Ordinal)
            .Replace("  - phase: emergency", Hail.ReplaceLineEndings("\n"), StringComparison.Ordinal);
        var session = new Session(new Setting(
            FlowFile.Read("small", small, Vocabularies.Flow), RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")), Guidance.Beginner, "test")
        { Members = Conversation.Few });
        session.Hear(new Tick(Moment.Of(_time)));
        return session;
    }
}
