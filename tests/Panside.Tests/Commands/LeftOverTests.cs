using System.Text.RegularExpressions;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Journal;
using Panside.Tests.Reporting;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>The next day opens with what stayed in the pan.</summary>
public class LeftOverTests
{
    private static readonly DateTimeOffset Ended = new(2031, 3, 8, 19, 6, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void The_next_day_it_is_told_how_much_how_sweet_and_since_when()
    {
        var told = Told(Ended.AddHours(16))!;
        Assert.Matches(@"^The last boil left 12 gal at 1[0-2]\.[0-9] Brix in the pan, as reckoned, 16 h ago \(2031-03-08 19:06\)\. Smell and look", told);
    }

    [Fact]
    public void Where_a_draw_is_within_six_hours_it_is_told_how_soon()
    {
        var told = new[] { "long-boil", "first-shutdown", "refill", "float-stuck" }.Select(demo => Told(Ended.AddHours(16), demo, demo)).OfType<string>();
        Assert.Contains(told, text => Regex.IsMatch(text, "first draw may come some [0-9]+ (hours?|minutes)[^.]* after lighting"));
    }

    [Fact]
    public void Common_practice_after_two_days_it_is_doubted_first() =>
        Assert.Contains("3 days ago (2031-03-08 19:06). So long it may well have spoiled", Told(Ended.AddDays(3)), StringComparison.Ordinal);

    [Theory]
    [InlineData(15 * 24)]
    [InlineData(-1)]
    public void A_pan_of_long_ago_or_of_times_to_come_is_not_told_of(int hours) => Assert.Null(Told(Ended.AddHours(hours)));

    [Fact]
    public void Another_rigs_pan_is_not_told_of() => Assert.Null(Told(Ended.AddHours(16), demo: "first-shutdown"));

    [Fact]
    public void No_folder_no_word()
    {
        using var scratch = new Scratch();
        Assert.Null(LeftOver.Of(Home.Of(scratch.Folder), Setting(), Ended));
    }

    private static string? Told(DateTimeOffset now, string demo = "long-boil", string rigOf = "long-boil")
    {
        using var scratch = new Scratch();
        Directory.CreateDirectory(scratch["sessions"]);
        File.Copy(Story.Demo(demo), scratch["sessions/boil.jsonl"]);
        return LeftOver.Of(Home.Of(scratch.Folder), Setting(rigOf), now);
    }

    private static Setting Setting(string demo = "long-boil") =>
        Opening.SettingOf(demo, Record.Of(JournalFile.Read(Story.Demo(demo))), null);
}
