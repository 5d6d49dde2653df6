using System.Text.RegularExpressions;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;
using Panside.Guide.Wording;
using Panside.Guide.Words;
using Panside.Screen.Painting;
using Panside.Screen.Typing;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Wording;

/// <summary>No text of the flow is cut on the least full screen, 80 by 24: each is painted as it is asked or told, its figures at their longest.</summary>
public sealed partial class WholeOnTheScreenTests
{
    private const int Width = 80;
    private const int Height = 24;

    private static readonly Played AtTheFire = Played.Scene("steady-boil");

    public static TheoryData<string> Asked { get; } = new(Texts.Where(text => text.Phase != "advice").Select(text => text.Id));

    public static TheoryData<string> Alarms { get; } = new(Flow.Advices.Where(rule => rule.Urgency is "danger" or "now").Select(rule => rule.Id));

    private static Flow Flow => AtTheFire.Talk.Setting.Flow;

    private static IReadOnlyList<FlowText> Texts => FlowText.Of(Flow, Longest.Of);

    [Theory]
    [MemberData(nameof(Asked))]
    public void O6_O12_a_step_stands_whole_with_its_cautions_its_reason_and_its_hint(string id)
    {
        var text = Texts.First(one => one.Id == id);
        var state = AtTheFire.Talk.State;
        var prompt = Prompt(text, state);
        IReadOnlyList<LineOut> lines =
        [
            .. text.Cautions.Select(caution => new CautionLine(state.Now, 0, caution)),
            .. text.Action is { } action ? [new AdviceLine(state.Now, 0, new(action, text.Urgency, text.Text, text.Because ?? "", null))] : Array.Empty<LineOut>(),
            new PromptLine(state.Now, 0, prompt),
        ];
        var picture = AtTheFire.Picture with
        {
            State = state with { Step = Flow.Steps.ContainsKey(id) ? id : state.Step, Open = prompt, OpenSince = state.Now!.Value },
            Said = [.. AtTheFire.Talk.Said, .. Entries.Of(lines, state.Now!.Value, null)],
        };
        var screen = Painter.Paint(picture, Width, Height).ToString();
        var (beside, block) = Parts(screen);
        Assert.Contains(text.Text, block);
        Assert.Contains(Plain(LinesOfText.Hint(prompt)), block);
        Assert.Contains(text.Because is null ? "" : "Why: " + text.Because, block);
        Assert.All(text.Cautions, caution => Assert.Contains("Caution: " + caution, beside));
        Assert.All((string[])["│ Done", "│ Now", "│ Next"], place => Assert.Contains(place, screen));
    }

    [Theory]
    [MemberData(nameof(Alarms))]
    public void O1_an_alarm_stands_whole_above_whatever_is_asked(string id)
    {
        foreach (var scene in (string[])["steady-boil", "draw-off", "shutdown"])
        {
            var played = Played.Scene(scene);
            var (setting, state) = (played.Talk.Setting, played.Talk.State);
            var rule = setting.Flow.Advices.First(one => one.Id == id) with { When = [], Phases = [] };
            var ours = new Setting(setting.Flow with { Advices = [rule] }, setting.Rig, Guidance.Beginner, "panside test");
            var picture = played.Picture with { Setting = ours, State = state with { Advised = state.Advised.SetItem(rule.Id, state.Now!.Value) } };
            var (_, block) = Parts(Painter.Paint(picture, Width, Height).ToString());
            Assert.Contains($"{LinesOfText.Mark(rule.Urgency)} {Template.Fill(rule.Text, figure => Guide.Advice.Figures.Of(new(ours, picture.State), figure))}", block);
            Assert.Contains("You:", block);
        }
    }

    [Theory]
    [InlineData("start-up")]
    [InlineData("emergency")]
    [InlineData("dry-pan")]
    [InlineData("shutdown")]
    public void T11_the_page_of_help_stands_whole_whatever_is_asked(string scene)
    {
        var played = Played.Scene(scene);
        played.Talk.AskForHelp("help");
        var page = Plain(Painter.Paint(played.Picture with { Mode = ScreenMode.Helping }, Width, Height).ToString());
        Assert.NotEmpty(played.Talk.Told);
        Assert.All(played.Talk.Told, line => Assert.Contains(Plain(line.Text), page));
        Assert.All(WordKeys.All, key => Assert.Contains(key.Meaning, page));
        Assert.Contains("Ctrl-C: leave.", page);
    }

    private static Prompt Prompt(FlowText text, SessionState state)
    {
        var ask = Flow.Steps.TryGetValue(text.Id, out var step) ? step.Ask! : Flow.Watches.First(watch => watch.Id == text.Id).Ask;
        return KnownReadings.BuiltIn.Find(ask) is { } reading
            ? new(text.Id, ask, AtTheFire.Talk.Setting.Units.Preferred(reading.Kind), text.Text, text.Because, Long(reading, 199.5), Long(reading, 220.75), Long(reading, 210.25), state.Last(reading) is { } last ? state.MinutesSince(last.At) : 84)
            : new(text.Id, ask, null, text.Text, text.Because, Choices: ObservationName.FromCode(ask)?.States);
    }

    /// <summary>The conversation, and what stands under it; both without the breaks of their rows.</summary>
    private static (string Beside, string Block) Parts(string screen)
    {
        var rows = screen.Split('\n');
        var rule = Array.FindIndex(rows, row => row.StartsWith("────", StringComparison.Ordinal));
        var beside = rows[1..rule].Select(row => row[..row.IndexOf('│', StringComparison.Ordinal)]);
        return (Plain(string.Join(' ', beside)), Plain(string.Join(' ', rows[rule..])));
    }

    private static string Plain(string text) => Blanks().Replace(text, " ").Trim();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    /// <summary>A number as wide as any that is shown; of sugar there is none over a hundred.</summary>
    private static double Long(ReadingName reading, double number) => reading.Kind == Dimension.Sugar ? number - 150 : number;
}
