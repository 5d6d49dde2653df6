using System.Text.RegularExpressions;
using Panside.Guide.Flows;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Flows;

/// <summary>O9, O10, O11: how every shipped flow asks, lists and times.</summary>
public partial class AnswersTests
{
    public static TheoryData<string> Shipped { get; } =
        new(Directory.EnumerateFiles(Path.Combine(RepositoryFiles.Root, "flows"), "*.yaml").Select(Path.GetFileName)!);

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O9_every_check_is_answered_by_a_value_or_by_a_state_that_it_names(string file)
    {
        var flow = Read(file);
        var asked = flow.Steps.Values.Where(step => step.Ask is not null).Select(step => (step.Id, Ask: step.Ask!, step.Text))
            .Concat(flow.Watches.Select(watch => (watch.Id, watch.Ask, watch.Text))).ToList();
        var checks = 0;
        foreach (var (id, ask, text) in asked)
        {
            if (KnownReadings.BuiltIn.Find(ask) is not null || ObservationName.FromCode(ask) is { States.Count: >= 2 })
            {
                continue;
            }

            Assert.Equal(Prompt.Confirm, ask);
            Assert.DoesNotMatch(Bare(), text);
            if (Looking().IsMatch(text))
            {
                checks++;
                Assert.True(Named().IsMatch(text), $"{id}: {text}");
            }
        }

        Assert.InRange(checks, 5, asked.Count);
    }

    [Fact]
    public void O9_checked_is_no_answer_and_where_a_value_is_asked_neither_is_yes()
    {
        var boil = new Conversation();
        boil.Say("yes");
        var step = boil.Open!.Step;
        boil.Say("checked");
        Assert.Single(boil.Answers.OfType<RefusedLine>());
        Assert.Equal(step, boil.Open!.Step);

        boil.Say("yes", "no");
        Assert.Equal("pan-depth", boil.Open!.Ask);
        boil.Say("yes");
        Assert.Single(boil.Answers.OfType<RefusedLine>());
        Assert.Equal("pan-depth", boil.Open!.Ask);
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O10_the_list_of_emergencies_has_five_to_nine_items_and_the_gravest_first(string file)
    {
        var flow = Read(file);
        var list = flow.Dangers.Single(danger => danger.IsList);
        Assert.Contains("{dangers}", flow.Steps[list.Go].Text, StringComparison.Ordinal);
        var boil = Conversation.AtSteadyBoil();
        boil.Say("emergency");
        var items = flow.Dangers.Select(danger => danger.Code).Where(word => ListWord(boil.Open!.Text, word)).ToList();
        Assert.InRange(items.Count, 5, 9);
        Assert.Equal(flow.Dangers[0].Code, items.MinBy(word => boil.Open!.Text.IndexOf($" {word}", StringComparison.Ordinal)));
    }

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O10_the_list_before_lighting_ends_by_saying_so(string file) =>
        Assert.All(Read(file).Steps.Values.Where(step => step.Advise == "light-fire" && step.Phase.Code == "start-up"), step => Assert.StartsWith("The list is complete.", step.Because, StringComparison.Ordinal));

    [Theory]
    [MemberData(nameof(Shipped))]
    public void O11_what_is_timed_says_what_to_do_where_it_was_missed(string file)
    {
        var flow = Read(file);
        var timed = flow.Steps.Values.Where(step => step.After > TimeSpan.Zero).ToList();
        Assert.NotEmpty(timed);

        // What a no is told, or a way of its own that leads on; a critical step is asked until it is answered.
        Assert.All(timed, step => Assert.True(
            step.IfNo is not null || step.IsCritical || step.Passages.Any(passage => passage.When == "fact unanswered"), step.Id));
    }

    private static bool ListWord(string text, string word) => Regex.IsMatch(text, $"[:,] {word}[,.]");

    private static Flow Read(string file) => FlowFile.Read(file, RepositoryFiles.Read("flows", file), Vocabularies.Flow);

    /// <summary>An answer that says no more than that somebody looked.</summary>
    [GeneratedRegex(@"\bsay '?(checked|ok|okay|done)\b|\bsay yes when (it is )?(checked|done|ready)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Bare();

    /// <summary>What asks somebody to look, and not to do.</summary>
    [GeneratedRegex("^(Look|See|Smell|Press|Check|Feel|Test|Listen|Touch)\\b")]
    private static partial Regex Looking();

    /// <summary>The state that a yes stands for.</summary>
    [GeneratedRegex(@"\bsay yes when \w+ \w+|^See that \w+ \w+")]
    private static partial Regex Named();
}
