using System.Text.RegularExpressions;
using Panside.Guide.Lines;

namespace Panside.Tests.Practice;

/// <summary>The tutorial shows what the program shows; <c>demo-sessions/tutorial</c> makes it.</summary>
public partial class TutorialTests
{
    /// <summary>Its three pages, one after the other.</summary>
    private static readonly string Page = string.Concat(
        new[] { "tutorial.md", "tutorial-flood.md", "tutorial-leave.md" }.Select(page => RepositoryFiles.Read("docs", page).ReplaceLineEndings("\n")));

    private static IReadOnlyList<string[]> Screens { get; } =
        [.. Block().Matches(Page).Select(match => match.Groups[1].Value.TrimEnd('\n').Split('\n'))];

    [Fact]
    public void Each_screen_is_one_of_80_by_24_and_bears_the_word()
    {
        var full = Screens.Where(rows => rows.Length > 8).ToList();
        Assert.InRange(full.Count, 12, 40);
        Assert.All(Screens, rows => Assert.InRange(rows.Length, 1, 24));
        Assert.All(Screens.SelectMany(rows => rows), row => Assert.InRange(row.Length, 0, 80));
        Assert.All(full, rows => Assert.Contains("PRACTICE", rows[0], StringComparison.Ordinal));
    }

    /// <summary>Who practises the same shutdown is asked nothing that the page does not show; so it is noticed where the flow has changed.</summary>
    [Fact]
    public void All_that_is_asked_in_that_shutdown_stands_on_the_page()
    {
        using var practice = new AtTheRig("last-charge");
        practice.Clock.Stop();
        var trainee = new Trainee(practice);
        trainee.ToTheEnd();
        Assert.True(practice.Conversation.State.IsSafe);

        var asked = trainee.Heard.OfType<PromptLine>().Select(line => line.Prompt.Text).Distinct().ToList();
        Assert.InRange(asked.Count, 10, 30);
        var shown = Screens.Select(Asked).ToList();

        // The depth is asked for at the shallow end while it boils, and then by fewer words.
        Assert.All(asked, text => Assert.Contains(shown, screen => screen.Contains(text.TrimEnd('.'), StringComparison.Ordinal)));
        Assert.Contains(shown, screen => screen.Contains("It is clear to leave", StringComparison.Ordinal));
        Assert.Contains(Screens, rows => rows.Any(row => row.Contains("Score      safety", StringComparison.Ordinal)));
    }

    /// <summary>The rows between the rule and the line that is typed on, in one.</summary>
    private static string Asked(string[] rows) => string.Join(' ', rows
        .SkipWhile(row => !row.StartsWith("──────────", StringComparison.Ordinal)).Skip(1)
        .TakeWhile(row => !row.StartsWith("You:", StringComparison.Ordinal)).Select(row => row.Trim()));

    [GeneratedRegex("^```\n(.*?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Block();
}
