using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Screen.Painting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Screen;

/// <summary>The pan as its rig file describes it: what is drawn is what is there.</summary>
public sealed class PanDrawingTests
{
    private static readonly PanSight Divided = new(
        [3, 12, 45], 1.5, 0.75, 1.5, 2.5, Unit.Inch, HasFloat: true, IsDrawn: false, IsCovered: false, new(23, 35, IsFullKnown: true, 11.5, Unit.Gallon), new(3, ["boil rolling just now"]));

    [Fact]
    public void A_divided_pan_with_a_float_looks_as_it_lies_there() => Same(
        """
        Tank 23 gal         Pan, 1.5 in deep; Brix as reckoned
        │    ├ full 35 gal │         │         │        ├ flood 2.5 in
        │    │             │         │         │        │
        │░░░░│             │▂▂▂▂▂▂▂▂▂│▂▂▂▂▂▂▂▂▂│▂▂▂▂▂▂▂▂├ run 1.5 in
        │░░░░│             │░░░░░░░░░│▒▒▒▒▒▒▒▒▒│▓▓▓▓▓▓▓▓│
        │░░░░├ stop 12 gal │░░░ 3 ░░░│▒▒ 12 ▒▒▒│▓▓ 45 ▓▓├ least 0.75 in
        │░░░░├───float───► │░░░░░░░░░│▒▒▒▒▒▒▒▒▒│▓▓▓▓▓▓▓▓│
        └────┘             └─────────┴─────────┴────────┘ ► draw-off
                            ▲▲▲▲▲▲ boil rolling just now
        """, PanDrawing.Whole(Divided, 63, 6));

    [Fact]
    public void An_undivided_pan_fed_by_hand_with_its_draw_off_open_looks_so() => Same(
        """
        Tank 23 gal         Pan, 1.5 in deep; Brix as reckoned
        │    ├ full 35 gal │                            ├ flood 2.5 in
        │    │             │                            │
        │░░░░│             │▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂▂├ run 1.5 in
        │░░░░│             │████████████████████████████│
        │░░░░├ stop 12 gal │████████████ 62 ████████████├ least 0.75 in
        │░░░░│   by hand ► │████████████████████████████│
        └────┘             └────────────────────────────┘ ═► drawing
                            ▲▲ coals thin 4 min ago
        """, PanDrawing.Whole(Divided with { Sweetness = [62], HasFloat = false, IsDrawn = true, Fire = new(1, ["coals thin 4 min ago"]) }, 63, 6));

    [Theory]
    [InlineData(DrawnBy.Valve, false, "┘ ► draw-off")]
    [InlineData(DrawnBy.Valve, true, "┘ ═► drawing")]
    [InlineData(DrawnBy.Pour, false, "┘ ► poured off")]
    [InlineData(DrawnBy.Ladle, false, "┘ ▲ by ladle")]
    [InlineData(DrawnBy.Ladle, true, "┘ ▲ ladling")]
    public void S12_syrup_comes_out_as_the_rig_file_says(DrawnBy by, bool isDrawn, string end) =>
        Assert.EndsWith(end, PanDrawing.Whole(Divided with { DrawnBy = by, IsDrawn = isDrawn }, 63, 6)[^2].TrimEnd());

    [Fact]
    public void A_pan_behind_is_drawn_before_the_one_that_it_feeds() => Same(
        """
        Tank 23 gal         Back pan 2 in, front 1.5 in; Brix reckoned
        │    ├ full 35 gal │      │   │     │     │     ├ flood 2.5 in
        │    │             │      │   │     │     │     │
        │░░░░│             │▅▅▅▅▅▅│   │▂▂▂▂▂│▂▂▂▂▂│▂▂▂▂▂├ run 1.5 in
        │░░░░│             │░░░░░░│   │░░░░░│▒▒▒▒▒│▓▓▓▓▓│
        │░░░░├ stop 12 gal ├≥ 1 in├──►│░ 3 ░│ 12 ▒│ 45 ▓├ least 0.75 in
        │░░░░├───float───► │░░░░░░│   │░░░░░│▒▒▒▒▒│▓▓▓▓▓│
        └────┘             └──────┘   └─────┴─────┴─────┘ ► draw-off
                            ▲▲▲▲▲▲ boil rolling just now
        """, PanDrawing.Whole(Divided with { Back = new(2, 1, 3) }, 63, 6));

    [Fact]
    public void What_stands_over_the_pan_is_said_in_fewer_words_where_it_would_be_cut()
    {
        var sight = Divided with { Depth = 1.66, Back = new(1.97, 1, 3) };
        Assert.Equal("Tank 23 gal         Back pan 1.97 in, front 1.66 in", PanDrawing.Whole(sight, 63, 6)[0].TrimEnd());
        Assert.EndsWith(" front 1.66 in; Brix reckoned", PanDrawing.Whole(sight, 68, 6)[0].TrimEnd());
    }

    [Fact]
    public void In_an_emergency_the_depth_is_told_as_what_was_read_last_and_not_as_what_it_is()
    {
        var picture = Played.Scene("dry-pan").Picture;
        var sight = PanSight.Of(new(picture.Setting, picture.State));
        Assert.True(sight.IsLastRead);
        Assert.Equal(1.5, sight.Depth!.Value, 1e-6);
        Assert.Contains(" Pan, 1.5 in when last read", Painter.Paint(picture, 100, 30).ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("deep", Painter.Paint(picture, 100, 30).Rows[1].ToString(), StringComparison.Ordinal);
        Assert.EndsWith("front 1.5 in, last read", PanDrawing.Whole(Divided with { IsLastRead = true, Back = new(1.97, 1, 3) }, 63, 6)[0].TrimEnd());
    }

    [Fact]
    public void In_two_rows_the_pan_alone_is_left() => Same(
        """
        │▂▂▂▂▂▂│▂▂▂▂▂│▂▂▂▂▂├ run 1.5 in
        │░ 3 ░░│ 12 ▒│ 45 ▓├ least 0.75 in
        """, PanDrawing.Small(Divided with { Depth = 0.94 }, 34, 2));

    [Theory]
    [InlineData(0.75, "│      │     │     ├ run 1.5 in")]
    [InlineData(1.5, "│░░░░░░│▒▒▒▒▒│▓▓▓▓▓├ run 1.5 in")]
    [InlineData(2.5, "│░░░░░░│▒▒▒▒▒│▓▓▓▓▓├ run 1.5 in")]
    public void There_its_upper_row_is_empty_at_the_least_depth_and_full_at_the_one_it_is_run_at(double depth, string upper) =>
        Assert.Equal(upper, PanDrawing.Small(Divided with { Depth = depth }, 34, 2)[0].TrimEnd());

    [Fact]
    public void What_was_seen_of_the_fire_is_told_in_fewer_words_where_there_is_less_room()
    {
        var state = Played.Scene("shutdown").Picture;
        var fire = PanSight.Of(new(state.Setting, state.State)).Fire;
        Assert.Equal(["boil simmering 9 min ago, coals thin 9 min ago", "boil simmering, coals thin; 9 min ago"], fire.Ways);
        Assert.Contains("▲▲ boil simmering, coals thin; 9 min ago", Painter.Paint(state, 100, 30).ToString());
    }

    [Fact]
    public void What_nobody_has_read_is_not_drawn()
    {
        var rows = PanDrawing.Whole(Divided with { Sweetness = [null, null, null], Depth = null, Tank = new(null, 35, IsFullKnown: false, null, Unit.Gallon) }, 63, 6);
        Assert.StartsWith("Tank not read", rows[0]);
        Assert.Contains("Pan, depth not read", rows[0]);
        Assert.All(rows, row => Assert.DoesNotContain(row, sign => "░▒▓█▁▂▃▄▅▆▇".Contains(sign)));
        Assert.DoesNotContain(rows, row => row.Contains("full", StringComparison.Ordinal) || row.Contains("stop", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.01, 1)]
    [InlineData(0.5, 24)]
    [InlineData(1, 48)]
    [InlineData(1.4, 48)]
    public void A_vessel_is_drawn_to_an_eighth_of_a_row_and_a_puddle_is_seen(double share, int eighths)
    {
        var drawn = Enumerable.Range(0, 6).Sum(row => " ▁▂▃▄▅▆▇█".IndexOf(Vessel.At(row, 6, share, '█'), StringComparison.Ordinal));
        Assert.Equal(eighths, drawn);
    }

    [Fact]
    public void Every_channel_of_every_rig_is_drawn_as_wide_as_the_screen_and_no_wider()
    {
        for (var channels = 1; channels <= 8; channels++)
        {
            foreach (var width in Enumerable.Range(1, 120))
            {
                var sight = Divided with { Sweetness = [.. Enumerable.Repeat((double?)9, channels)], Depth = width / 20.0 };
                Assert.All(PanDrawing.Whole(sight, width, 6).Concat(PanDrawing.Small(sight, width, 2)), row => Assert.InRange(Columns.Of(row), 1, width));
            }

            Assert.Equal(channels, PanDrawing.Whole(Divided with { Sweetness = [.. Enumerable.Repeat((double?)9, channels)] }, 99, 6)[^2].Count(sign => sign == '┴') + 1);
        }
    }

    [Fact]
    public void A_situation_is_drawn_from_the_rig_file_and_what_is_known()
    {
        var played = Played.Scene("steady-boil");
        var sight = PanSight.Of(new(played.Talk.Setting, played.Talk.State));
        Assert.Equal([1.5, 0.75, 1.5, 2.5], new[] { sight.Depth!.Value, sight.Least, sight.Run, sight.Flood }.Select(depth => double.Round(depth, 9)));
        Assert.Equal((Unit.Inch, true, false, 3), (sight.Deep, sight.HasFloat, sight.IsDrawn, sight.Fire.Flames));
        Assert.Equal(played.Talk.State.Rigs.Expected.ChannelBrix.Select(channel => (double?)channel.P50), sight.Sweetness);
        Assert.Equal("boil rolling, seen just now", sight.Fire.Ways[0]);
        Assert.Equal("no fire yet", PanSight.Of(new(played.Talk.Setting, Played.Scene("start-up").Talk.State)).Fire.Ways[0]);
        Assert.Null(PanSight.Of(new(played.Talk.Setting, Played.Scene("shutdown").Talk.State)).Tank.Stop);
    }

    private static void Same(string drawn, IReadOnlyList<string> rows) => Assert.Equal(drawn.ReplaceLineEndings("\n"), string.Join('\n', rows.Select(row => row.TrimEnd())));
}
