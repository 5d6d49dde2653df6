using System.Text.RegularExpressions;
using Panside.Guide;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Words;
using Panside.Practice;
using Panside.Practice.Operator;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Screen.Replaying;
using Panside.Tests.Records;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Practice;

/// <summary>
/// Whole boils on rigs that lack what others have: guided to the end, clear, in the plain face, the stream and the screen, without a word of
/// what is not there.
/// </summary>
public partial class EveryRigTests
{
    private static readonly DateTimeOffset Evening = new(2031, 3, 8, 16, 0, 0, TimeSpan.FromHours(-5));

    private static readonly IReadOnlyList<(string Lacks, Regex Words)> Unspoken =
    [
        ("not has-float", FloatWords()), ("fed-by-hand", FeedWords()), ("not has-channels", ChannelWords()), ("has-burner", WoodWords()), ("not has-lid", LidWords()),
        ("not has-back-pan", TwoPansWords()), ("not has-flues", FlueWords()),
    ];

    [Theory]
    [InlineData("gas-divided.yaml", Guidance.Beginner, "cold-start", 1)]
    [InlineData("gas-divided.yaml", Guidance.Practised, "last-hour", 2)]
    [InlineData("flat-by-hand.yaml", Guidance.Beginner, "raw-sap", 1)]
    [InlineData("flat-by-hand.yaml", Guidance.Practised, "last-hour", 3)]
    [InlineData("one-channel.yaml", Guidance.Beginner, "last-hour", 1)]
    [InlineData("one-channel.yaml", Guidance.Practised, "raw-sap", 2)]
    [InlineData("flue-and-syrup-pan.yaml", Guidance.Beginner, "cold-start", 1)]
    [InlineData("flue-and-syrup-pan.yaml", Guidance.Practised, "last-hour", 2)]
    public void A_whole_boil_ends_clear_and_nothing_that_is_not_there_is_spoken_of(string file, Guidance guidance, string scenario, long seed) =>
        MustEndClear(RigFile.Read(file, RepositoryFiles.Read("flows", "rigs", file)), Flow("divided-pan.yaml", RepositoryFiles.Read("flows", "divided-pan.yaml")), guidance, scenario, seed);

    /// <summary>The tutorial: its rig, its flow and its plan are made of what the page shows, fewer than sixty lines, checked, walked and practised.</summary>
    [Fact]
    public void The_rig_of_your_own_is_checked_walked_and_ends_clear_word_for_word()
    {
        using var page = OwnRigPage.Followed();
        Assert.InRange(page.Typed, 40, 59);
        Assert.Equal(5, page.Ran.Count);
        var walked = page.Read("as-walked.yaml");
        Assert.Contains("asks: breaker-known", walked, StringComparison.Ordinal);
        Assert.Contains("asks: cord", walked, StringComparison.Ordinal);
        Assert.DoesNotContain("asks: nothing, say: \"yes\"", walked, StringComparison.Ordinal);
        var said = MustEndClear(
            RigFile.Read("my-rig.yaml", page.Read("my-rig.yaml")), Flow("my-flow.yaml", page.Read("my-flow.yaml")), Guidance.Beginner, "raw-sap", 1);
        Assert.Contains(said, line => line.Contains("Show somebody the breaker", StringComparison.Ordinal));
        Assert.Contains(said, line => line.Contains("2 L of sap", StringComparison.Ordinal));
        Assert.DoesNotContain(said, line => line.Contains("hydrometer", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("gas-fired")]
    [InlineData("flat-by-hand")]
    [InlineData("one-channel")]
    [InlineData("two-pans")]
    public void Nor_is_it_spoken_of_in_a_demo_session_in_any_face(string name)
    {
        var rig = Demo.Boil(name).Setting.Rig;
        var talk = new ReplayTalk(Demo.Boil(name), new(1, null, null, null), TimeProvider.System);
        talk.Say("end");
        string[] plain = [.. Demo.Past(name).Told().SelectMany(told => told.Lines)];
        string[] screen = [.. talk.Said.SelectMany(entry => entry.Texts)];
        string[] stream = [.. Demo.Boil(name).Exchanges.SelectMany(exchange => exchange.Answers).SelectMany(answer => LinesOfText.Of([answer]))];
        Assert.All(new[] { plain, screen, stream }, said => Assert.True(said.Length > 40));
        Assert.Empty(plain.Concat(screen).Concat(stream).SelectMany(said => Faults(rig, said)).Distinct());
        Assert.True(Demo.Boil(name).Exchanges[^1].Answers.OfType<OverLine>().Single().Outcome.Safe);
    }

    private static List<string> MustEndClear(Rig rig, Flow flow, Guidance guidance, string scenario, long seed)
    {
        var setting = new Setting(flow, rig, guidance, "test", practice: true).With(200);
        var practised = new PracticeRig(rig, Scenario.Named(scenario)!, seed);
        var said = new List<string>();
        var outcome = new Unattended(new Panside.Practice.Assurance.SessionDoor(setting), practised, new PracticeOperator(practised, setting.Units, seed), Evening)
        {
            Overheard = (_, answers) => said.AddRange(LinesOfText.Of(answers)),
        }.Run();
        Assert.True(outcome.Said is { Safe: true }, "The boil did not end clear.");
        Assert.True(outcome is { IsScorched: false, IsPromiseKept: true });
        Assert.InRange(said.Count, 60, 5000);
        Assert.Empty(said.SelectMany(line => Faults(rig, line)).Distinct());
        return said;
    }

    private static IEnumerable<string> Faults(Rig rig, string said) =>
        Unspoken.Where(row => RigFacts.Holds(rig, row.Lacks) && row.Words.IsMatch(said)).Select(row => $"{row.Lacks}: {said}");

    private static Flow Flow(string file, string text) => FlowFile.Read(file, text, Vocabularies.Flow);

    [GeneratedRegex(@"\bfloat\b(?! (the hydrometer|free))|\bhung\b|hangs open", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FloatWords();

    [GeneratedRegex(@"sap (still )?feeds|tank valve|feed valve", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FeedWords();

    [GeneratedRegex(@"the channels|channels (still )?differ|gradient", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ChannelWords();

    [GeneratedRegex(@"(?<!no )\b(wood|firewood|coals?|embers?|charges?|firebox|grates?|rake|blower|draft|brick)\b(?!: 0)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WoodWords();

    [GeneratedRegex(@"\b(back|front|other) pan\b|both (pans|floats)|the back one", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TwoPansWords();

    [GeneratedRegex(@"\bflues?\b(?! (and|pipe))", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FlueWords();

    [GeneratedRegex(@"\b(lid|cover(ed)? the pan|leave it covered)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex LidWords();
}
