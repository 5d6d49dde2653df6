using System.Text.RegularExpressions;
using CsCheck;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Guide.Rigs.Making;
using Panside.Guide.Yaml;
using Panside.Laws;

namespace Panside.Guide.Tests.Rigs;

/// <summary>The conversation that makes a rig file.</summary>
public partial class RigMakingTests
{
    private static readonly string[] Least = ["us", "4 ft", "2 ft", "no", "yes"];

    private static readonly string[] Whole =
        ["us", "4 ft 2 in", "23 1/2", "blower", "no", "2 gal", "5", "2", "10 in", "40 thin bricks", "35", "6 lb", "7", "half dry", "ladle", "thermometer, hydrometer and finishing pot", "900", "north shed"];

    private static readonly string[] TwoPans =
        ["us", "24", "20", "blower", "yes", "4 ft by 2 ft", "6 flues 7 in deep", "2, least 1, flood 3, wall 9", "3 and 2", "1 1/4, least 1/2", "8 in", "40 bricks", "60", "9 lb", "8", "dry", "valve", "all", "900", "two pans"];

    [Fact]
    public void Answers_in_feet_inches_and_words_come_into_the_file()
    {
        var rig = Made([.. Whole, "yes"]);
        Assert.Equal("north shed", rig.Name);
        Assert.Equal(UnitSystem.Us, rig.Units);
        Assert.Equal((50, 23.5), (double.Round(rig.PanLength.Inches, 6), double.Round(rig.PanWidth.Inches, 6)));
        Assert.Equal((Draft.Forced, false, 5), (rig.Draft, rig.HasFloat, rig.Channels));
        Assert.Equal((2, 3, 10), (double.Round(rig.RunDepth.Inches, 6), double.Round(rig.FloodDepth.Inches, 6), double.Round(rig.WallDepth.Inches, 6)));
        Assert.Equal(150, rig.Firebrick.Pounds, 6);
        Assert.Equal((35, true), (double.Round(rig.Tank.UsGallons, 6), rig.TankIsStated));
        Assert.Equal((6, 7, 0.35), (double.Round(rig.Charge.Pounds, 6), rig.Interval.TotalMinutes, rig.WoodMoisture));
        Assert.Equal(900, rig.Altitude.Feet, 6);
        Assert.Equal((Feed.ByHand, DrawnBy.Ladle, false, true), (rig.Feed, rig.DrawnBy, rig.HasLid, rig.HasFinishingPot));
        Assert.Equal((2, "thermometer hydrometer"), (double.Round(rig.Pail.UsGallons, 6), string.Join(' ', rig.Instruments)));
    }

    [Fact]
    public void A_metric_person_types_centimeters_liters_and_kilograms()
    {
        var rig = Made("metric", "120", "0.6 m", "yes", "yes", "no", "3", "4", "20", "60 kg", "130", "3.2", "8", "dry", "", "thermometer, lid", "270", "shed", "yes");
        Assert.Equal((120, 60), (double.Round(rig.PanLength.Centimeters, 6), double.Round(rig.PanWidth.Centimeters, 6)));
        Assert.Equal((4, 20), (double.Round(rig.RunDepth.Centimeters, 6), double.Round(rig.WallDepth.Centimeters, 6)));
        Assert.Equal((60, 130, 3.2), (double.Round(rig.Firebrick.Kilograms, 6), double.Round(rig.Tank.Liters, 6), double.Round(rig.Charge.Kilograms, 6)));
        Assert.Equal(270, rig.Altitude.Meters, 6);
    }

    [Theory]
    [InlineData("no", "natural")]
    [InlineData("yes", "forced")]
    public void The_rest_as_usual_is_the_rig_of_a_file_that_leaves_it_open(string blower, string draft)
    {
        var made = Made("us", "5 ft", "2 ft", blower, "yes", "rest", "yes");
        var least = RigFile.Read("r", $"rig: r\nunits: us\npan: {{ length: 5 ft, width: 2 ft }}\nfire: {{ draft: {draft} }}\n");
        Assert.Equal(RigMark.Of(least), RigMark.Of(made));
        Assert.False(made.TankIsStated);
    }

    [Fact]
    public void What_was_not_answered_stands_in_the_file_as_what_is_taken()
    {
        var making = Said([.. Least, "rest", "yes"]);
        Assert.Contains("  # charge: 5 lb ", making.Text, StringComparison.Ordinal);
        Assert.Contains("  # interval: 9 min ", making.Text, StringComparison.Ordinal);
        var stated = RigFile.Read("r", string.Join('\n', making.Text.Split('\n')[2..].Select(line => CommentedOut().Replace(line, "$1"))));
        Assert.True(stated.TankIsStated);
        Assert.Equal(RigMark.Of(RigFile.Read("r", making.Text)), RigMark.Of(stated));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Each_question_shows_what_to_measure_its_range_and_why_and_fits_a_screen(bool two)
    {
        var whole = two ? TwoPans : Whole;
        var making = Begun();
        var pictures = new HashSet<string>();
        foreach (var answer in whole)
        {
            var page = making.Page;
            Assert.NotEmpty(page.Picture);
            Assert.True(pictures.Add(string.Join('\n', page.Picture)), page.Ask);
            Assert.InRange(page.Picture.Count, 3, 10);
            Assert.All(page.Picture, row => Assert.InRange(row.Length, 0, 76));
            Assert.All(page.Picture, row => Assert.True(System.Text.Ascii.IsValid(row), row));
            Assert.InRange(page.Ask.Length, 1, 76);
            Assert.EndsWith("?", page.Ask, StringComparison.Ordinal);
            Assert.StartsWith("  [", page.Hint, StringComparison.Ordinal);
            var why = Assert.Single(making.Hear("why"));
            Assert.InRange(why.Split(' ').Length - 1, 4, 15);
            Assert.StartsWith("  Heard: ", Assert.Single(making.Hear(answer)), StringComparison.Ordinal);
        }

        Assert.Equal("RIG FILE   all answered", making.Page.Title);
        Assert.All(making.Page.Picture, row => Assert.InRange(row.Length, 0, 76));
    }

    [Theory]
    [InlineData("behind", "yes", "x 'yes' is no length by a width. Expected: no, or like '4 ft by 2 ft'.")]
    [InlineData("behind", "4 by 2", "x 4 of what? Say '4 ft' or '4 in'.")]
    [InlineData("flues", "70 flues 7 in deep", "x '70 flues 7 in deep' is not understood. Expected: flat, 1 to 60 flues with their depth, or factor 1 to 12.")]
    [InlineData("flues", "6 flues 7 gal deep", "x 'gal' is no unit of length. Expected: 1 to 24 in.")]
    [InlineData("rear", "20 in", "x the depths are least 0.75 in, run 20 in, flood 21 in, wall 8 in; expected each deeper than the one before.")]
    public void Of_a_second_pan_bad_input_says_what_was_expected(string at, string typed, string said)
    {
        var making = Begun();
        foreach (var answer in TwoPans.TakeWhile(_ => RigQuestions.All.Single(one => one.Ask == making.Page.Ask).Name != at))
        {
            making.Hear(answer);
        }

        Assert.Equal([said], making.Hear(typed));
    }

    [Theory]
    [InlineData("length", "4", "x 4 of what? Say '4 ft' or '4 in'.")]
    [InlineData("length", "30 ft", "x 30 ft is out of what such rigs have. Expected: 6 to 240 in.")]
    [InlineData("length", "long", "x 'long' is no number with a unit. Expected: 6 to 240 in.")]
    [InlineData("length", "4 gal", "x 'gal' is no unit of length. Expected: 6 to 240 in.")]
    [InlineData("draft", "maybe", "x 'maybe' is not understood. Expected: yes with a blower, no without; or gas, oil, electric.")]
    [InlineData("length", "", "x Nobody but you can know this. Expected: 6 to 240 in, like 4 ft.")]
    [InlineData("float", "perhaps", "x 'perhaps' is not understood. Expected: yes with a float valve, no without; or valve.")]
    [InlineData("channels", "2.5", "x '2.5' is not understood. Expected: a whole number, 1 to 12.")]
    [InlineData("depth", "0.5", "x the depths are least 0.75 in, run 0.5 in, flood 2.5 in, wall 8 in; expected each deeper than the one before.")]
    [InlineData("brick", "9999 bricks", "x 9999 bricks would be 74992 lb. Expected: 0 to 5000 lb.")]
    [InlineData("tank", "0", "x 0 gal is out of what such rigs have. Expected: 1 to 2000 gal.")]
    [InlineData("depth", "2, 3", "x '2, 3' tells one depth twice. Expected: one each of run, least, flood.")]
    [InlineData("has", "spoon", "x 'spoon' is not understood. Expected: all, none, or some of thermometer, hydrometer, refractometer, sight glass, lid, finishing pot.")]
    [InlineData("wood", "soaked", "x 'soaked' is not understood. Expected: dry, half dry, green, or 0 to 150 %.")]
    [InlineData("name", "a name that is far too long to stand on a screen", "x That name has 48 letters. Expected: at most 32.")]
    public void Bad_input_says_what_is_wrong_and_what_was_expected_and_changes_nothing(string at, string typed, string said)
    {
        var making = Begun();
        foreach (var answer in Whole.TakeWhile(_ => !making.Page.Ask.Equals(AskOf(at), StringComparison.Ordinal)))
        {
            making.Hear(answer);
        }

        var (before, answered) = (making.Page.Ask, making.Answered);
        Assert.Equal([said], making.Hear(typed));
        Assert.Equal((before, answered), (making.Page.Ask, making.Answered));
    }

    [Fact]
    public void An_answer_is_changed_by_its_name_or_by_going_back()
    {
        var making = Said([.. Least, "rest"]);
        making.Hear("length");
        Assert.Equal(AskOf("length"), making.Page.Ask);
        Assert.Contains("Enter keeps 4 ft long", making.Page.Hint, StringComparison.Ordinal);
        making.Hear("5 ft");
        Assert.Equal("RIG FILE   all answered", making.Page.Title);
        making.Hear("width 30");
        making.Hear("back");
        Assert.Equal(AskOf("name"), making.Page.Ask);
        making.Hear("shed of the length of two");
        making.Hear("yes");
        var rig = RigFile.Read("r", making.Text);
        Assert.Equal(("shed of the length of two", 60, 30), (rig.Name, double.Round(rig.PanLength.Inches, 6), double.Round(rig.PanWidth.Inches, 6)));
    }

    [Fact]
    public void Going_back_twice_asks_again_only_what_is_gone_back_to()
    {
        var making = Said("us", "4 ft", "2 ft");
        making.Hear("back");
        making.Hear("back");
        Assert.Equal(AskOf("length"), making.Page.Ask);
        making.Hear("50");
        Assert.Equal(AskOf("draft"), making.Page.Ask);
        Assert.Equal(["x This is the first question."], Begun().Hear("back"));
    }

    [Fact]
    public void The_rest_is_not_taken_as_usual_before_what_only_a_person_knows()
    {
        var making = Said("us", "4 ft");
        Assert.Equal(["x Nobody but you can know 'width'. Answer up to 'width' first; then 'rest' takes the usual."], making.Hear("rest"));
        Assert.Equal(2, making.Answered);
    }

    [Fact]
    public void What_was_typed_before_a_stop_is_heard_again_to_the_same_answers()
    {
        var before = Said([.. Whole[..8], "back", "3 in", "why", "", "wall 12 in", "stop"]);
        Assert.Equal(RigMade.Stopped, before.End);
        var after = Begun();
        after.HearAgain(before.Heard);
        Assert.Null(after.End);
        Assert.Contains($"{before.Answered} answers are kept", after.Opening[0], StringComparison.Ordinal);
        after.Hear("rest");
        Assert.Contains("run: 3 in", after.Text, StringComparison.Ordinal);
        Assert.Contains("wall: 12 in", after.Text, StringComparison.Ordinal);
        after.Hear("anew");
        Assert.Equal((0, 0), (after.Answered, after.Heard.Count));
    }

    [Fact]
    public void Of_a_burner_nothing_of_wood_is_asked_and_its_heat_is()
    {
        var making = Said("us", "4 ft", "2 ft", "gas");
        var asked = new List<string>();
        for (var question = 0; question < 20 && !making.Page.Title.EndsWith("answered", StringComparison.Ordinal); question++)
        {
            asked.Add(making.Page.Ask);
            making.Hear(making.Page.Ask.Contains("boil away", StringComparison.Ordinal) ? "9" : "I don't know");
        }

        Assert.DoesNotContain(asked, ask => ask.Contains("wood", StringComparison.Ordinal) || ask.Contains("charge", StringComparison.Ordinal));
        making.Hear("yes");
        var rig = RigFile.Read("r", making.Text);
        Assert.Equal((Fuel.Gas, Feed.ByHand, 9), (rig.Fuel, rig.Feed, double.Round(rig.Boils.UsGallonsPerHour, 6)));
    }

    [Fact]
    public void No_rig_is_asked_more_than_twenty_questions()
    {
        Assert.EndsWith(" of 18", Said("us", "4 ft", "2 ft", "no", "no").Page.Title, StringComparison.Ordinal);
        Assert.EndsWith(" of 16", Said("us", "4 ft", "2 ft", "gas", "hand").Page.Title, StringComparison.Ordinal);
        Assert.EndsWith(" of 20", Said("us", "4 ft", "2 ft", "no", "yes", "4 ft by 2 ft").Page.Title, StringComparison.Ordinal);
    }

    [Fact]
    public void The_most_that_can_be_asked_is_announced_and_not_what_one_rig_happens_to_be_asked() =>
        Assert.StartsWith("- Up to 20 questions", Said().Opening[0], StringComparison.Ordinal);

    [Theory]
    [InlineData("channels", "one", "1 channel")]
    [InlineData("channels", "three channels", "3 channels")]
    [InlineData("depth", "one in", "1 in deep")]
    [InlineData("wall", "eight", "8 in high")]
    [InlineData("brick", "twelve bricks", "")]
    [InlineData("tank", "one gal", "1 gal, full")]
    [InlineData("length", "four ft", "4 ft long")]
    public void A_number_in_a_word_is_understood_wherever_one_is_asked(string question, string said, string heard)
    {
        var making = Said([.. Least, "rest"]);
        Assert.Contains(making.Hear($"{question} {said}"), line => line.StartsWith("  Heard: " + heard, StringComparison.Ordinal));
    }

    [Fact]
    public void One_is_still_one_pan_where_a_second_is_asked_for()
    {
        var making = Said("us", "4 ft", "2 ft", "no", "yes");
        Assert.Contains(making.Hear("one"), line => line == "  Heard: one pan.");
    }

    [Fact]
    public void The_file_shows_beside_each_answer_that_was_not_given_what_is_taken()
    {
        var text = Said([.. Least, "rest", "yes"]).Text;
        string[] shown = ["draw:", "  by: valve", "instruments: [thermometer, hydrometer, refractometer]", "lid: true", "finishing pot: false", "  least: 0.75 in", "  flood: 2.5 in", "  run: 1.5 in", "  wall: 8 in"];
        Assert.All(shown, line => Assert.Contains(text.Split('\n'), row => Commented().Replace(row, "$1$2") is var open && open != row && open.TrimStart().StartsWith(line.Trim(), StringComparison.Ordinal)));

        // What it shows is what is taken: uncommented, it says the same rig.
        var open = string.Join('\n', text.Split('\n').Skip(2).Select(row => Commented().Replace(row, "$1$2")));
        var (left, said) = (RigFile.Read("r", text), RigFile.Read("r", open));
        Assert.Equal(
            (left.DrawnBy, string.Join(' ', left.Instruments), left.HasLid, left.HasFinishingPot, left.Channels),
            (said.DrawnBy, string.Join(' ', said.Instruments), said.HasLid, said.HasFinishingPot, said.Channels));
        Assert.Equal((double.Round(left.LeastDepth.Inches, 6), double.Round(left.FloodDepth.Inches, 6)), (double.Round(said.LeastDepth.Inches, 6), double.Round(said.FloodDepth.Inches, 6)));
    }

    [GeneratedRegex("^( *)# (.*)$")]
    private static partial Regex Commented();

    [Fact]
    public void Two_pans_are_asked_for_each_with_its_size_floor_channels_and_depths()
    {
        var making = Said([.. TwoPans, "yes"]);
        Assert.Equal(RigMade.Written, making.End);
        var rig = RigFile.Read("r", making.Text);
        var back = rig.Back!;
        Assert.Equal((24, 20), (double.Round(rig.PanLength.Inches, 6), double.Round(rig.PanWidth.Inches, 6)));
        Assert.Equal((48, 24), (double.Round(back.Length.Inches, 6), double.Round(back.Width.Inches, 6)));
        Assert.Equal((true, 4.5, 3, 2), (back.HasFlues, double.Round(back.HeatedTimes, 6), rig.Channels, back.Channels));
        Assert.Equal((2, 1, 3, 9), (double.Round(back.RunDepth.Inches, 6), double.Round(back.LeastDepth.Inches, 6), double.Round(back.FloodDepth.Inches, 6), double.Round(back.WallDepth.Inches, 6)));
        Assert.Equal((1.25, 0.5, 8), (double.Round(rig.RunDepth.Inches, 6), double.Round(rig.LeastDepth.Inches, 6), double.Round(rig.WallDepth.Inches, 6)));
    }

    [Fact]
    public void Of_a_second_pan_only_its_size_must_be_known()
    {
        var making = Said("us", "2 ft", "2 ft", "no", "yes", "4 ft x 2 ft", "rest", "yes");
        Assert.Equal((false, 1, 48), (RigFile.Read("r", making.Text).Back!.HasFlues, RigFile.Read("r", making.Text).Back!.Channels, double.Round(RigFile.Read("r", making.Text).Back!.Length.Inches, 6)));
        Assert.Null(RigFile.Read("r", Said([.. Least, "rest", "yes"]).Text).Back);
    }

    [Fact]
    public void A_float_that_is_not_there_after_all_takes_the_second_pan_with_it()
    {
        var making = Said([.. TwoPans, "float no", "1 gal", "yes"]);
        Assert.Equal(RigMade.Written, making.End);
        Assert.Equal((null, Feed.ByHand), (RigFile.Read("r", making.Text).Back, RigFile.Read("r", making.Text).Feed));
    }

    [Fact]
    public void A_file_that_is_there_already_is_asked_about_before_it_is_replaced()
    {
        var making = Begun(there: "old shed");
        Say(making, [.. Least, "rest", "yes"]);
        Assert.Contains("A rig file is there already: 'old shed'.", making.Page.Ask, StringComparison.Ordinal);
        Assert.Null(making.End);
        making.Hear("no");
        Assert.Equal("RIG FILE   all answered", making.Page.Title);
        Assert.DoesNotContain("there already", making.Page.Ask, StringComparison.Ordinal);
        Say(making, "yes", "yes");
        Assert.Equal(RigMade.Written, making.End);
    }

    [Theory]
    [InlineData("emergency", RigMade.Emergency)]
    [InlineData("!", RigMade.Emergency)]
    [InlineData("STOP", RigMade.Stopped)]
    public void S2_the_emergency_and_the_stop_are_one_word_away_from_every_question(string word, RigMade end)
    {
        for (var answered = 0; answered <= Whole.Length; answered++)
        {
            var making = Said(Whole[..answered]);
            making.Hear(word);
            Assert.Equal(end, making.End);
        }
    }

    [Fact]
    public void Pictures_can_be_left_out_for_an_ear()
    {
        var making = Said("us", "no pictures");
        Assert.Empty(making.Page.Picture);
        making.Hear("pictures");
        Assert.NotEmpty(making.Page.Picture);
    }

    [Fact]
    public void R8_whatever_is_typed_nothing_is_thrown_and_a_file_that_is_made_is_read()
    {
        string[] words = [.. Whole, .. TwoPans, .. Least, "rest", "back", "yes", "no", "", "anew", "length", "depth 20 in", "wall 1 in", "units metric", "units imperial", "é'\"# {", "\0", "1e9 in", "-3", "usual"];
        var made = 0;
        Gen.Int[0, words.Length - 1].Array[1, 60].Holds(
            typed =>
            {
                var making = Said([.. typed.Select(at => words[at])]);
                Assert.NotNull(making.Page.Hint);
                if (making.End == RigMade.Written)
                {
                    RigFile.Read("r", making.Text);
                    made++;
                }
            },
            cases: 300);
        Assert.True(made > 0);
    }

    [GeneratedRegex("^( *)# ")]
    private static partial Regex CommentedOut();

    private static string AskOf(string name) => name switch
    {
        "length" => "How long is the pan, inside?",
        "draft" => "Does a blower drive air under the fire?",
        "float" => "Does a float valve hold the depth of the pan?",
        "channels" => "How many channels does the sap run through?",
        "depth" => "How deep does the sap stand while it boils?",
        "brick" => "How much firebrick does the fire heat?",
        "tank" => "How much does the head tank hold?",
        "wood" => "How dry is the wood?",
        "has" => "Which of these are there?",
        _ => "What is the rig called?",
    };

    private static RigMaking Begun(string? there = null) => new("/home/rig.yaml", there, _ => ["It boils."]);

    private static RigMaking Said(params string[] typed)
    {
        var making = Begun();
        Say(making, typed);
        return making;
    }

    private static void Say(RigMaking making, params string[] typed)
    {
        foreach (var words in typed)
        {
            making.Hear(words);
        }
    }

    private static Rig Made(params string[] typed)
    {
        var making = Said(typed);
        Assert.Equal(RigMade.Written, making.End);
        return RigFile.Read("r", making.Text);
    }
}
