using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>Two hours to either side of now: what was read and done, and what is forecast.</summary>
public sealed class TimeAxisTests
{
    private static readonly DateTimeOffset Now = new(2031, 3, 8, 18, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void Readings_stand_at_their_times_as_high_as_they_were()
    {
        var row = Rows(Sight(new TimeRow("Tank") { Points = [(-120, 1), (-90, 0.6), (-62, 0.4)] }))[0];
        Assert.Equal($"Tank      █{Blank(11)}▅{Blank(11)}▃{Blank(25)}│", row);
    }

    [Fact]
    public void A_band_has_its_likely_moment_and_its_name_and_nothing_left_of_the_soonest()
    {
        var row = Rows(Sight(new TimeRow("Draw") { Marks = [-30], Ticks = [120], Band = new(10, 20, 60), Ahead = "draw" }))[0];
        Assert.Equal($"Draw      {Blank(38)}◆{Blank(11)}│   ────●───────────────── draw{Blank(19)}╵", row);
    }

    [Fact]
    public void What_comes_later_than_it_reaches_leaves_it_at_the_right()
    {
        var row = Rows(Sight(new TimeRow("Draw") { Band = new(90, 200, 400), Ahead = "draw" }))[0];
        Assert.EndsWith("│" + Blank(32) + "draw ────────────►", row);
        Assert.DoesNotContain('●', row);
        Assert.Equal(111, row.Length);
        Assert.Equal("Draw      " + new string(' ', 50) + "│", Rows(Sight(new TimeRow("Draw") { Marks = [-500], Band = new(130, 200, 400) }))[0]);
    }

    [Fact]
    public void A_band_that_leaves_it_is_named_before_it_but_never_over_wood_that_is_due_or_now()
    {
        var band = new TimeBand(60, 90, 140);
        Assert.EndsWith("│" + Blank(19) + "last ─────────────●────────────", Rows(Sight(new TimeRow("Wood") { Band = band, Ahead = "last" }))[0]);
        Assert.DoesNotContain("last", Rows(Sight(new TimeRow("Wood") { Ticks = [52], Band = band, Ahead = "last" }))[0]);
        Assert.DoesNotContain("last", Rows(Sight(new TimeRow("Wood") { Band = band with { Soonest = 10 }, Ahead = "last" }))[0]);
    }

    [Fact]
    public void The_clock_stands_under_it_and_rows_with_nothing_are_left_out()
    {
        var rows = Rows(Sight(new TimeRow("Tank") { Points = [(-10, 0.5)] }, new TimeRow("Boil")));
        Assert.Equal(2, rows.Count);
        Assert.Equal("          16:00                  17:00                     now                     19:00                  20:00", rows[1]);
        Assert.Empty(Rows(Sight(new TimeRow("Boil"))));
        Assert.Empty(TimeAxis.Rows(null, 111));
    }

    [Fact]
    public void Where_there_is_less_room_what_is_still_to_come_stays_and_one_row_alone_is_not_shown()
    {
        var sight = Sight(
            new TimeRow("Tank") { Place = 2, Points = [(-10, 0.5)] }, new TimeRow("Depth") { Place = 4, Points = [(-10, 0.5)] },
            new TimeRow("Draw-off") { Place = 3, Points = [(-10, 0.5)] },
            new TimeRow("Wood") { Ticks = [-8] }, new TimeRow("Draw") { Band = new(10, 20, 60), Ahead = "draw" });
        Assert.Equal(["Tank", "Wood", "Draw", ""], TimeAxis.Rows(sight, 63, 4).Select(row => row[..10].TrimEnd()));
        Assert.Equal(["Wood", "Draw", ""], TimeAxis.Rows(sight, 63, 3).Select(row => row[..10].TrimEnd()));
        Assert.Empty(TimeAxis.Rows(sight, 63, 2));
        Assert.Equal(TimeAxis.Rows(sight, 63), TimeAxis.Rows(sight, 63, 6));
    }

    [Fact]
    public void At_100_by_30_it_stands_under_a_pan_of_nine_rows_and_six_rows_of_talk_stay_but_not_before_the_fire_nor_in_an_emergency()
    {
        foreach (var scene in Evening.Scenes.Keys.Except(["over"]))
        {
            var picture = Played.Scene(scene).Picture;
            var rows = Painter.Paint(picture, 100, 30).ToString().Split('\n').Select(row => row.PadRight(100)).ToList();
            var clock = rows.FindIndex(row => row[..63].Contains(" now ", StringComparison.Ordinal) && row[..63].Contains(':', StringComparison.Ordinal));
            if (scene is "emergency" or "dry-pan" or "start-up")
            {
                Assert.Equal(-1, clock);
                continue;
            }

            Assert.StartsWith("└", rows[8]);
            Assert.StartsWith("───", rows[10]);
            Assert.InRange(clock, 12, 14);
            var end = rows.FindIndex(clock + 2, row => row.StartsWith("──────", StringComparison.Ordinal));
            Assert.InRange(end - clock - 2, 6, 12);
        }
    }

    [Fact]
    public void Nothing_is_wider_than_its_place()
    {
        var sight = Sight(new TimeRow("Wood") { Ticks = [-120, 0, 120, 1e9], Band = new(0, double.MaxValue, double.PositiveInfinity), Ahead = "last" });
        Assert.All(Enumerable.Range(0, 160), width => Assert.All(TimeAxis.Rows(sight, width), row => Assert.InRange(row.Length, 1, width)));
    }

    [Fact]
    public void A_boil_is_drawn_from_what_the_session_knows_and_undo_takes_a_charge_off_again()
    {
        var played = Played.Scene("draw-off");
        var before = TimeSight.Of(new(played.Talk.Setting, played.Talk.State))!;
        Assert.Equal(["Tank", "Depth", "Draw-off", "Wood", "Draw", "Boil"], before.Rows.Select(row => row.Name));
        Assert.Equal([2, 4, 3, 5, 5, 5], before.Rows.Select(row => row.Place));
        Assert.Equal(3, before.Rows[0].Points.Count(point => point.Minute < 0) - 1);
        var ticks = before.Rows[3].Ticks.Count;
        played.Talk.Say("wood");
        Assert.Equal(ticks + 1, TimeSight.Of(new(played.Talk.Setting, played.Talk.State))!.Rows[3].Ticks.Count);
        played.Talk.Say("undo");
        Assert.Equal(ticks, TimeSight.Of(new(played.Talk.Setting, played.Talk.State))!.Rows[3].Ticks.Count);
        played.Talk.Say("yes");
        Assert.Single(TimeSight.Of(new(played.Talk.Setting, played.Talk.State))!.Rows[4].Marks);
    }

    private static string Blank(int columns) => new(' ', columns);

    private static TimeSight Sight(params TimeRow[] rows) => new(Now, rows);

    private static IReadOnlyList<string> Rows(TimeSight sight) => TimeAxis.Rows(sight, 111);
}
