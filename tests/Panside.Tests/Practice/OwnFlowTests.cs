using System.Text;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Tests.Screen.Support;
using Panside.Tests.Stream;

namespace Panside.Tests.Practice;

/// <summary>A flow with a phase, a word, a threshold and a danger of its own, in all faces, with no line of code for any of them.</summary>
public class OwnFlowTests
{
    private const string Brew = "Read the pan's depth before you brew; type it.";
    private const string Cup = "Pour the cup away from the pan; say yes.";
    private const string Bear = "Get everyone behind the arch. Is it gone? Say yes or no.";
    private const string PutOff = "Asked again in 7 minutes.";

    private static readonly string[] Said = ["note here", "brew coffee", "1 1/2", "yes", "there is a bear in the yard", "yes", "later"];

    private static readonly string[] Told = [Brew, Cup, Bear, PutOff];

    /// <summary>The shipped flow with what is its own put in, each where the shipped one has it.</summary>
    private static string Own()
    {
        var flow = RepositoryFiles.Read("flows", "divided-pan.yaml").ReplaceLineEndings("\n");
        (string Before, string Put)[] pieces =
        [
            ("flow: divided pan\n", "flow: sugar camp\n"),
            ("words:\n", "words:\n  coffee: [pot of coffee, brew coffee]\n"),
            ("  - danger: float\n", "  - danger: bear\n    go: emergency-bear\n    words: [black bear]\n    cries: [bear in the yard]\n  - danger: float\n"),
            ("anywhere:\n", "anywhere:\n  - { when: word coffee, given: [not emergency-on], go: coffee-break }\n"),
            ("  - phase: emergency\n", $"""
                  - phase: coffee
                    kind: steady-boil
                    side-trip: true
                    steps:
                      - step: coffee-break
                        name: the pan before the pot
                        ask: pan-depth
                        text: {Brew}
                        because: Nobody brews beside a low pan.
                        go: coffee-poured
                      - step: coffee-poured
                        ask: confirm
                        text: {Cup}
                        because: A spill in the pan spoils the batch.
                        go: return
                  - phase: emergency

                """),
            ("      - step: emergency-float\n", $"""
                      - step: emergency-bear
                        ask: confirm
                        critical: true
                        advise: stay
                        urgency: danger
                        text: {Bear}
                        because: A bear comes for the sugar.
                        no: emergency-away
                        go: return
                      - step: emergency-float

                """),
        ];
        foreach (var (before, put) in pieces)
        {
            Assert.Equal(2, ("\n" + flow).Split("\n" + before).Length);
            flow = flow.Replace(before, put, StringComparison.Ordinal);
        }

        return flow + "\nvalues:\n  put-off: 7 min\n";
    }

    [Fact]
    public void It_is_checked_and_nothing_is_wrong()
    {
        using var scratch = new Scratch();
        Assert.Equal(ExitStatus.Done, PlainFaceTests.Run([], "check", Written(scratch)).Status);
    }

    [Fact]
    public void It_is_spoken_in_plain_lines()
    {
        using var scratch = new Scratch();
        var told = Encoding.UTF8.GetString(PlainFaceTests.Run(Said, "boil", "--plain", "--flow", Written(scratch), "--home", scratch.Folder).Output);
        Assert.All(Told, text => Assert.Contains(text, told, StringComparison.Ordinal));
        Assert.Contains("=== coffee ===\n", told, StringComparison.Ordinal);
        Assert.Contains("!!! DANGER: " + Bear, told, StringComparison.Ordinal);
    }

    [Fact]
    public void And_in_the_stream_whose_record_names_it()
    {
        using var scratch = new Scratch();
        var lines = Said.Select((words, minute) => StreamRun.Text(minute, words));
        var (_, output) = PlainFaceTests.Run(lines, "boil", "--stream", "--flow", Written(scratch), "--home", scratch.Folder, "--journal", scratch["own.jsonl"]);
        var told = Encoding.UTF8.GetString(output);
        Assert.All(Told, text => Assert.Contains(text, told, StringComparison.Ordinal));
        Assert.Contains("\"flow\":\"sugar camp\"", File.ReadAllText(scratch["own.jsonl"]), StringComparison.Ordinal);
        var again = PlainFaceTests.Run([], "replay", scratch["own.jsonl"], "--verify", "--flow", Written(scratch));
        Assert.Equal(ExitStatus.Done, again.Status);
        var other = PlainFaceTests.Run([], "replay", scratch["own.jsonl"], "--verify");
        Assert.NotEqual(ExitStatus.Done, other.Status);
    }

    [Fact]
    public void And_on_the_screen()
    {
        using var scratch = new Scratch();
        var setting = new Setting(Library.Flow(Written(scratch)), RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig)), Guidance.Beginner, "panside test");
        var played = new Played(new SessionDoor(setting));
        var seen = new List<string>();
        foreach (var said in Said)
        {
            played.Talk.Say(said);
            seen.AddRange(played.Talk.Said.SelectMany(entry => entry.Texts));
            seen.Add(Panside.Screen.Painting.Painter.Paint(played.Picture, 160, 50).ToString() ?? "");
        }

        Assert.All(Told, text => Assert.Contains(seen, shown => shown.Contains(text, StringComparison.Ordinal)));
    }

    private static string Written(Scratch scratch)
    {
        File.WriteAllText(scratch["own.yaml"], Own());
        return scratch["own.yaml"];
    }
}
