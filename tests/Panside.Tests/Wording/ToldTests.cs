using Panside.Guide.Lines;
using Panside.Guide.Wording;
using Panside.Guide.Words;
using Panside.Screen.Painting;

namespace Panside.Tests.Wording;

/// <summary>What the program told in many conversations, with the figures that it then had.</summary>
public sealed class ToldTests
{
    private const int AlarmColumns = 76;
    private const int ScreenColumns = 80;

    /// <summary>A sentence longer than this is read twice; half of it is what plain texts have on an average.</summary>
    private const int LongestSentence = 30;

    private static IReadOnlyList<LineOut> Told => Conversations.Told;

    private static IEnumerable<Advice> Alarms => Told.OfType<AdviceLine>().Select(line => line.Advice).Where(advice => advice.Urgency is "danger" or "now");

    [Fact]
    public void The_conversations_bring_about_every_kind_of_line_and_most_of_the_flow()
    {
        Assert.Equal(
            ["AdviceLine", "CautionLine", "ForecastLine", "HeardLine", "OverLine", "PhaseLine", "PromptLine", "QuestionLine", "RefusedLine", "SessionLine", "ToldLine"],
            Told.Select(line => line.GetType().Name).Distinct().Order(StringComparer.Ordinal));
        Assert.InRange(Told.OfType<RefusedLine>().Select(line => line.Why).Distinct().Count(), 15, 1000);
        Assert.InRange(Told.OfType<QuestionLine>().Select(line => line.WouldTake).Distinct().Count(), 10, 1000);
        Assert.InRange(Told.OfType<PromptLine>().Select(line => line.Prompt.Step).Distinct().Count(), 50, 1000);
    }

    [Fact]
    public void O1_an_alarm_has_two_lines_of_76_columns_at_the_most() =>
        Assert.All(Alarms, advice => Assert.InRange(Wrapping.Rows($"{LinesOfText.Mark(advice.Urgency)} {advice.Text}", AlarmColumns).Count, 1, 2));

    [Fact]
    public void O7_a_reason_has_15_words_at_the_most() => Assert.All(
        Told.OfType<AdviceLine>().Select(line => line.Advice.Because).Concat(Told.OfType<PromptLine>().Select(line => line.Prompt.Because ?? "")).Distinct(),
        because => Assert.True(ReadingGrade.WordsIn(because) <= FlowWording.ReasonWords, $"{ReadingGrade.WordsIn(because)}: {because}"));

    [Fact]
    public void O8_a_prompt_has_one_line_and_its_hint_another() => Assert.All(
        Told.OfType<PromptLine>().Select(line => line.Prompt).Where(prompt => !Emergencies.Contains(prompt.Step)).DistinctBy(prompt => prompt.Text),
        prompt =>
        {
            Assert.InRange("> ".Length + prompt.Text.Length, 1, ScreenColumns);
            Assert.InRange(LinesOfText.Hint(prompt).Length, 1, ScreenColumns);
        });

    [Fact]
    public void O1_an_alarm_says_what_to_do_why_and_how_soon() => Assert.All(Alarms.DistinctBy(advice => advice.Text), advice =>
    {
        // Somebody must act: what only tells, or lets one go, is none.
        Assert.False(advice.Action is "stay" or "clear-to-leave", advice.Text);
        Assert.InRange(ReadingGrade.WordsIn(advice.Text), 2, FlowWording.EmergencyWords);
        Assert.InRange(ReadingGrade.WordsIn(advice.Because), 2, FlowWording.ReasonWords);
        Assert.Contains(LinesOfText.Mark(advice.Urgency), (string[])["!!! DANGER:", "!! NOW:"]);
    });

    [Fact]
    public void O8_every_prompt_shows_its_unit_its_range_and_the_last_value_with_its_age()
    {
        var prompts = Told.OfType<PromptLine>().Select(line => line.Prompt).Where(prompt => KnownReadings.BuiltIn.Find(prompt.Ask) is not null).ToList();
        Assert.All(prompts, prompt =>
        {
            Assert.True(prompt is { Unit: not null, Low: not null, High: not null } && prompt.Low < prompt.High, prompt.Step);
            Assert.Equal(prompt.Last is null, prompt.LastMinutes is null);
            Assert.Matches(@"^  \[usually \S+ to \S+ \S+" + (prompt.Last is null ? "" : @"; last \S+ \S+, .+ ago") + @"\]$", LinesOfText.Hint(prompt));
        });
        Assert.InRange(prompts.Count(prompt => prompt.Last is not null), 50, 100_000);
    }

    [Fact]
    public void O15_no_text_tells_a_worst_case_alone()
    {
        var bounded = Told.OfType<ToldLine>().Select(line => line.Text).Concat(Told.OfType<AdviceLine>().Select(line => line.Advice.Because))
            .Where(text => text.Contains("at the latest", StringComparison.Ordinal) || text.Contains("at the soonest", StringComparison.Ordinal)).Distinct().ToList();
        Assert.InRange(bounded.Count, 5, 10_000);
        Assert.All(bounded, text => Assert.Contains("about ", text, StringComparison.OrdinalIgnoreCase));
    }

    [Fact]
    public void O18_alarms_are_of_grade_6_at_the_most() =>
        Assert.InRange(ReadingGrade.Of(Alarms.SelectMany(advice => (string[])[advice.Text, advice.Because]).Distinct()).Value, -5, 6);

    [Fact]
    public void O18_replies_questions_and_refusals_are_of_grade_8_at_the_most()
    {
        foreach (var kind in Replies.GroupBy(line => line.Kind))
        {
            var grade = ReadingGrade.Of(kind.Select(line => line.Text).Distinct());
            Assert.True(grade.Value <= 8, $"{kind.Key}: {grade}");
        }

        foreach (var text in Replies.Select(line => line.Text).Distinct())
        {
            var grade = ReadingGrade.Of(text);
            Assert.True(grade.Sentences < 3 || grade.Value <= 8, $"grade {grade.Value:0.0}: {text}");
            Assert.True(grade.Words <= LongestSentence * grade.Sentences, $"{grade.Words} words in {grade.Sentences} sentences: {text}");
        }
    }

    private static HashSet<string> Emergencies => [.. FlowText.Of(Library, Longest.Of).Where(text => text.IsEmergency).Select(text => text.Id)];

    private static Guide.Flows.Flow Library => Arguments.Library.Flow(null);

    private static IEnumerable<(string Kind, string Text)> Replies => Told.SelectMany(line => line switch
    {
        ToldLine told => [("told", told.Text)],
        RefusedLine refused => [("refused", refused.Why)],
        QuestionLine question => [("question", question.Text), ("question", question.WouldTake)],
        OverLine over => [("outcome", over.Outcome.Text)],
        _ => Array.Empty<(string, string)>(),
    });
}
