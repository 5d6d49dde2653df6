using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Words;
using Panside.Screen.Painting;
using Panside.Screen.Typing;
using Panside.Tests.Screen.Support;
using Terminal.Gui.Input;

namespace Panside.Tests.Screen;

/// <summary>The rules of the screen at each of the three sizes that are looked at, over all moments of an evening.</summary>
public sealed partial class EverySizeTests
{
    private static readonly (int Width, int Height)[] All = [(80, 24), (100, 30), (120, 40), (160, 50)];

    private static readonly Dictionary<string, Played> Evenings = new(
        Evening.Scenes.Keys.ToDictionary(scene => scene, scene => Played.Scene(scene)))
    { ["steady-boil, three minutes on"] = Played.Scene("steady-boil").Wait(3) };

    public static TheoryData<int, int> Sizes => new(All);

    [Theory]
    [MemberData(nameof(Sizes))]
    public void O8_the_hint_of_what_is_asked_stands_whole_with_its_range_its_unit_and_the_age_of_the_last(int width, int height)
    {
        var readings = 0;
        foreach (var (scene, played) in Evenings.Where(evening => evening.Value.Talk.State is { Open: not null, Doubted: null, IsOver: false }))
        {
            var open = played.Talk.State.Open!;
            var text = Painted(played, width, height);
            if (KnownReadings.BuiltIn.Find(open.Ask) is not { } reading)
            {
                Assert.Contains(LinesOfText.Hint(open), text);
                continue;
            }

            readings++;
            var last = played.Talk.State.Last(reading) is null ? "" : @"; last \S+ \S+, .+ ago";
            Assert.True(Regex.IsMatch(text, $@"\n  \[usually \S+ to \S+ \S+{last}\]"), $"{scene}\n{text}");
        }

        Assert.InRange(readings, 2, 20);
    }

    [Fact]
    public void O11_a_timed_step_shows_how_long_until_it_is_due_and_where_it_was_missed_it_stays_listed()
    {
        using var stage = Stage.At("last-charge");
        stage.Play(["yes", "yes", "yes"]);
        var step = stage.Door.Setting.Flow.Steps[stage.Door.State.Step];
        Assert.Equal(("spread-coals", 8), (step.Id, step.After.TotalMinutes));
        Assert.Equal(stage.Door.State.Now, stage.Door.State.StepSince);
        foreach (var (width, height) in All)
        {
            stage.Resize(width, height);
            Assert.Matches(@"│ Now +rake the coals level", stage.Text);
            Assert.Matches(@"│ Rake the coals level in 8 min", stage.Text);
        }

        stage.Wait(3);
        Assert.Matches(@"│ Rake the coals level in 5 min", stage.Text);
        stage.Wait(5);
        Assert.Contains("\n* Rake the coals level over the grates with a long rake; say yes.", stage.Text);
        Assert.Matches(@"│ Now +rake the coals level", stage.Text);

        // Nobody did it: the flow goes on, and says so where it is asked what was left out.
        stage.Wait(20);
        stage.Type("skipped");
        Assert.Contains("rake the coals level", stage.Talk.Told.Single().Text);
    }

    [Fact]
    public void O14_one_key_leads_to_the_emergency_from_every_screen_and_what_to_do_stands_whole()
    {
        foreach (var scene in Evening.Scenes.Keys.Where(scene => scene is not "over"))
        {
            using var stage = Stage.At(scene);
            var step = stage.Door.State.Step;
            foreach (var (width, height) in All)
            {
                stage.Resize(width, height);
                foreach (var before in new Action[] { () => { }, () => stage.Press(Key.F1), () => stage.Press(Key.F6), () => stage.Press(Key.PageUp), () => stage.Press(Key.C.WithCtrl), () => stage.Letters("dep") })
                {
                    before();
                    stage.Press(Key.F9);
                    Assert.Equal("emergency", TopRow.Phase(stage.Door.State, stage.Door.Setting));
                    var picture = stage.Played.Picture;
                    var asked = Plain(Asked.Of(new(picture.Setting, picture.State), picture).Action);
                    Assert.StartsWith("!!! DANGER: ", asked);
                    Assert.Contains(asked, Plain(stage.Text));
                    stage.Press(Key.U.WithCtrl);
                    stage.Press(Key.F8);
                    Assert.Equal(step, stage.Door.State.Step);
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void O15_a_forecast_is_never_a_lone_band_nor_the_worst_alone(int width, int height)
    {
        var (likely, charts) = (0, 0);
        foreach (var rows in Evenings.Values.Select(played => Painted(played, width, height).Split('\n')))
        {
            foreach (var row in rows.Where(row => Bounded().IsMatch(row)))
            {
                likely++;
                Assert.Matches(@"│ ((Draw|Last charge|Boil stops) (in (about )?\d[\d.]* (min|h)|(about )?now|soon)|Heat left boils off \d[\d.]* (gal|L)|\d[\d.]* (gal|L) can boil off|(With no more wood )?(Hardly any( more)?|\d[\d.]* (gal|L)) (will )?(still |to )?boils? away), ", row);
            }

            foreach (var row in rows.Where(row => AheadBand().IsMatch(row)))
            {
                charts++;
                Assert.Contains('●', row);
            }
        }

        Assert.InRange(likely, 8, 100);
        Assert.True(charts > 0 || height < 50);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void O16_every_reading_shows_its_unit_its_age_and_its_trend_and_old_after_twice_its_interval(int width, int height)
    {
        var shown = 0;
        foreach (var played in Evenings.Values)
        {
            var state = played.Talk.State;
            var rows = Painted(played, width, height).Split('\n');
            foreach (var (label, reading) in new[] { ("Tank", ReadingName.TankVolume), ("Depth", ReadingName.PanDepth), ("Draw-off", ReadingName.DrawTemperature) })
            {
                var row = Assert.Single(rows, row => row.Contains("│ " + label + " ", StringComparison.Ordinal));
                if (state.Last(reading) is not { } last)
                {
                    Assert.Contains("not read", row);
                    continue;
                }

                shown++;
                var trend = state.Readings[reading].Count > 1 ? " [↓↑·]" : " ·";
                var age = state.MinutesSince(last.At) > 2 * reading.Interval.TotalMinutes ? @"\d+ (min|h|days?) old" : @"(\d+ (min|h|days?) ago|just now)";
                Assert.Matches($@"│ {label} [\d.]+ \S+{trend} {age}", row);
            }
        }

        Assert.InRange(shown, 20, 100);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void O17_a_normal_screen_has_no_color_and_no_color_stands_without_its_word(int width, int height)
    {
        var seen = new HashSet<Tone>();
        foreach (var (scene, played) in Evenings)
        {
            foreach (var mode in Enum.GetValues<ScreenMode>())
            {
                var rows = Painter.Paint(played.Picture with { Mode = mode }, width, height).Rows;
                var colored = rows.SelectMany(row => row.Pieces).Where(piece => piece.Tone > Tone.Bar && piece.Text.Trim().Length > 0).ToLookup(piece => piece.Tone, piece => piece.Text);
                if (scene is "start-up" or "steady-boil" or "help" or "large" or "clear" && mode is not ScreenMode.AskingToLeave)
                {
                    Assert.Empty(colored);
                }

                seen.UnionWith(colored.Select(tone => tone.Key));
                Assert.All(colored, tone => Assert.Contains(tone, text => tone.Key switch
                {
                    Tone.Danger => text.Contains("DANGER", StringComparison.Ordinal) || text.Contains("EMERGENCY", StringComparison.Ordinal),
                    Tone.Now => text.Contains("!! NOW", StringComparison.Ordinal) || text.Contains("!! RECORD", StringComparison.Ordinal),
                    _ => text.Contains('?', StringComparison.Ordinal) || text.StartsWith("x ", StringComparison.Ordinal),
                }));
            }
        }

        Assert.Equal([Tone.Now, Tone.Danger, Tone.Doubt], seen.OrderBy(tone => tone is Tone.Now ? 0 : tone is Tone.Danger ? 1 : 2));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void T4_below_the_least_size_what_to_do_comes_first_and_the_whole_screen_comes_back(int width, int height)
    {
        using var stage = Stage.At("emergency", width, height);
        var before = stage.Text;
        foreach (var (least, rows) in new[] { (59, 15), (40, 3), (30, 1), (1, 1) })
        {
            stage.Resize(least, rows);
            var first = stage.Text.Split('\n').First(row => row.StartsWith('!'));
            Assert.StartsWith(first.TrimEnd(), "!!! DANGER: Pan low? Pour sap in now. Type what is wrong: fire, smoke, hurt, dry");
        }

        stage.Resize(width, height);
        Assert.Equal(before, stage.Text);
    }

    [Fact]
    public void T10_every_function_key_types_a_word_and_none_needs_another_key_held()
    {
        foreach (var key in WordKeys.All)
        {
            using var pressed = Stage.At("start-up");
            using var typed = Stage.At("start-up");
            pressed.Press(key.Key);
            typed.Type(key.Word);
            Assert.Equal(typed.Text, pressed.Text);
        }

        Assert.All(
            WordKeys.All.Concat(Panside.Screen.Replaying.ReplayKeys.All),
            key => Assert.False(key.Key.IsCtrl || key.Key.IsAlt || key.Key.IsShift || key.Word.Length == 0));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void T11_one_row_has_seven_hints_at_the_most_and_help_is_one_screen(int width, int height)
    {
        foreach (var played in Evenings.Values)
        {
            var rows = Painted(played, width, height).Split('\n');
            Assert.Equal(height, rows.Length);
            Assert.InRange(Hint().Count(rows[^1]), 2, 7);
            Assert.DoesNotContain(rows[..^1], row => Hint().Count(row) > 1);
        }

        using var stage = Stage.At("steady-boil", width, height);
        stage.Letters("?");
        Assert.StartsWith(" HELP", stage.Text);
        Assert.Contains("Flow: ", stage.Text);
        Assert.All(WordKeys.All, key => Assert.Contains(key.Meaning, stage.Text));
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void T15_what_to_do_and_the_countdown_stand_whole_in_large_figures(int width, int height)
    {
        var counted = 0;
        foreach (var (scene, played) in Evenings.Where(evening => evening.Key != "over"))
        {
            var picture = played.Picture;
            var now = new Guide.Advice.Situation(picture.Setting, picture.State);
            var text = Painter.Paint(picture with { Mode = ScreenMode.Far }, width, height).ToString();
            if (picture.State.Now is { } at && !TopRow.IsEmergency(picture.State, picture.Setting) && Dues.Soonest(now) is { } due)
            {
                counted++;
                Assert.All(LargeLetters.Rows(Times.Until(at.Time, due.At), '█'), row => Assert.True(text.Contains(row.TrimEnd(), StringComparison.Ordinal), $"{scene}\n{text}"));
            }
        }

        Assert.InRange(counted, 3, 20);
    }

    [Theory]
    [MemberData(nameof(Sizes))]
    public void T15_the_countdown_is_not_cut_whatever_is_asked_before_it(int width, int height)
    {
        var played = Evenings["steady-boil"];
        var (setting, state) = (played.Talk.Setting, played.Talk.State);
        foreach (var watch in setting.Flow.Watches)
        {
            var open = new Prompt(watch.Id, watch.Ask, null, watch.Text, null);
            var picture = played.Picture with { State = state with { Open = open }, Mode = ScreenMode.Far };
            var due = Dues.Soonest(new(setting, picture.State));
            Assert.NotNull(due);
            var text = Painter.Paint(picture, width, height).ToString();
            Assert.All(LargeLetters.Rows(Times.Until(state.Now!.Value.Time, due.Value.At), '█'), row => Assert.True(text.Contains(row.TrimEnd(), StringComparison.Ordinal), $"{watch.Id}\n{text}"));
        }
    }

    private static string Painted(Played played, int width, int height) => Painter.Paint(played.Picture, width, height).ToString();

    private static string Plain(string text) => Blanks().Replace(text, " ").Trim();

    [GeneratedRegex(@"│ [A-Z0-9][^│]*(not before|any moment|soonest|at most|hardly more)")]
    private static partial Regex Bounded();

    [GeneratedRegex("^(Wood|Draw|Boil) .*[─●]+ ?(last|draw|stops)?")]
    private static partial Regex AheadBand();

    [GeneratedRegex(@"\bF\d+ [A-Z]|Ctrl-C [A-Z]")]
    private static partial Regex Hint();

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
