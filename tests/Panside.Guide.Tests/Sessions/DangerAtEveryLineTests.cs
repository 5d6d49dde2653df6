using System.Globalization;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
using Panside.Tests;

namespace Panside.Guide.Tests.Sessions;

/// <summary>S2, S11: after every line of the demo sessions, each danger that is said there is answered first by what is done about it.</summary>
public class DangerAtEveryLineTests
{
    private static readonly string Folder = Path.Combine(RepositoryFiles.Root, "demo-sessions");

    /// <summary>One cry for each danger, as somebody would cry it; the words of the flow are tried beside them.</summary>
    private static readonly (string Danger, string Cry)[] Cries =
    [
        ("fire", "the roof is on fire"), ("smoke", "I feel dizzy"), ("faint", "he fainted"), ("hurt", "I burned my hand"), ("dry", "it's boiling dry"),
        ("scorch", "it smells burnt"), ("foam", "it's foaming over the side"), ("chimney", "the chimney is on fire"), ("stack", "the stack fell down"),
        ("float", "the float is stuck"), ("leak", "the pan is leaking"), ("away", "I have to leave right now"),
    ];

    public static IEnumerable<TheoryDataRow<string>> Sessions => Directory.EnumerateFiles(Folder, "*.said")
        .Select(Path.GetFileNameWithoutExtension).Where(name => name != "tutorial").Order().Select(name => new TheoryDataRow<string>(name!));

    [Theory]
    [MemberData(nameof(Sessions))]
    public void S2_each_danger_said_after_any_line_is_answered_first_by_what_is_done_about_it(string name)
    {
        var setting = SettingOf(name);
        var decider = new Decider(setting);
        var session = new Session(setting);
        var lines = Said(name).ToList();
        var asked = 0;
        foreach (var (number, line) in lines.Index())
        {
            session.Hear(line);
            if (session.State.IsOver)
            {
                break;
            }

            if (!Thorough.IsAsked && number % 3 != 0)
            {
                continue;
            }

            foreach (var (danger, told) in Dangers(Moment.Of(line.At.Time.AddSeconds(1)), session.State))
            {
                var answers = decider.Decide(session.State, told, withForecasts: false).Lines;
                AssertFirst(setting.Flow, session.State.Step, danger, told, answers);
                asked++;
            }
        }

        Assert.InRange(asked, 12 * (Thorough.IsAsked ? 50 : 15), int.MaxValue);
    }

    private static void AssertFirst(Flow flow, string at, string danger, LineIn told, IReadOnlyList<LineOut> answers)
    {
        var go = flow.Dangers.Single(one => one.Code == danger).Go;
        var stands = !flow.DangerAt(go)!.IsList && flow.RankOf(at) < flow.RankOf(go) ? at : go;
        var advice = answers.OfType<AdviceLine>().FirstOrDefault();
        var prompt = answers.OfType<PromptLine>().FirstOrDefault();
        Assert.True(advice?.Advice.Urgency == "danger", $"{told} at {at}");
        Assert.True(answers.TakeWhile(answer => answer != advice).All(answer => answer is not PromptLine and not QuestionLine), $"{told} at {at}");
        Assert.True(prompt is not null && flow.PhaseOf(prompt.Prompt.Step).IsEmergency, $"{told} at {at}");
        if (told is Text || !flow.PhaseOf(at).IsEmergency)
        {
            Assert.True(prompt!.Prompt.Step == stands, $"{told} at {at}: {prompt.Prompt.Step}");
            Assert.Equal(flow.Steps[stands].Advise, advice!.Advice.Action);
        }
    }

    private static IEnumerable<(string Danger, LineIn Line)> Dangers(Moment at, SessionState state)
    {
        foreach (var (danger, cry) in Cries)
        {
            yield return (danger, new Text(at, cry));
            yield return (danger, new Text(at, danger));
        }

        yield return ("scorch", new Observed(at, ObservationName.Smell, "scorched"));
        yield return ("foam", new Observed(at, ObservationName.Foam, "over"));
        yield return ("emergency", new Text(at, "!"));
        if (state.Deeds.ContainsKey(DeedName.LitFire))
        {
            yield return ("dry", new Reading(at, ReadingName.PanDepth, new(0.31, Unit.Inch)));
        }
    }

    private static Setting SettingOf(string name)
    {
        var options = File.ReadLines(Path.Combine(Folder, name + ".said")).First(line => line.StartsWith("# options:", StringComparison.Ordinal)).Split(' ');
        string? Of(string option) => Array.IndexOf(options, option) is > 0 and var index ? options[index + 1] : null;
        var rig = Of("--rig") is { } file ? Path.Combine(Folder, file) : Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-forced.yaml");
        return new(
            Conversation.Flow, RigFile.Read(rig, File.ReadAllText(rig)), Of("--guidance") == "practised" ? Guidance.Practised : Guidance.Beginner, "panside test")
        {
            Members = Conversation.Few,
        };
    }

    /// <summary>What is said in a demo session, with ticks of two minutes between, as <c>demo-sessions/make</c> has it.</summary>
    private static IEnumerable<LineIn> Said(string name)
    {
        var last = (DateTimeOffset?)null;
        var seconds = 0;
        foreach (var row in File.ReadLines(Path.Combine(Folder, name + ".said")).Where(row => row.Length >= 5 && char.IsAsciiDigit(row[0])))
        {
            var now = new DateTimeOffset(DateTime.ParseExact("2031-03-08 " + row[..5], "yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture), TimeSpan.FromHours(-5));
            for (var tick = last?.AddMinutes(1) ?? now; tick < now; tick = tick.AddMinutes(2))
            {
                yield return new Tick(Moment.Of(tick.AddSeconds(58)));
            }

            seconds = now == last ? seconds + 5 : 0;
            last = now;
            var words = row.Length > 6 ? row[6..] : "";
            var at = Moment.Of(now.AddSeconds(seconds));
            yield return words.Length == 0 ? new Tick(at) : new Text(at, words);
        }
    }
}
