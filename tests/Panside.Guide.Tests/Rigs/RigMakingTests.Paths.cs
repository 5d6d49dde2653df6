using CsCheck;
using Panside.Guide.Rigs;
using Panside.Guide.Rigs.Making;
using Panside.Laws;

namespace Panside.Guide.Tests.Rigs;

/// <content>Every path through the questions.</content>
public partial class RigMakingTests
{
    /// <summary>
    /// Every path through the questions, by answers drawn from all that each may be given, ends in a file that is read back without a fault and
    /// says what was answered.
    /// </summary>
    [Fact]
    public void On_every_path_the_file_is_read_back_and_no_more_than_twenty_are_asked() => Gen.Int[0, 1_000_000].Array[24].Holds(
        drawn =>
        {
            var (making, answered) = (Begun(), new Dictionary<string, string>());
            for (var at = 0; making.Page.Title.Contains("question", StringComparison.Ordinal); at++)
            {
                Assert.InRange(at, 0, 19);
                var question = RigQuestions.All.Single(one => one.Ask == making.Page.Ask);
                var choices = AnswersTo(question.Name);
                var typed = choices[drawn[at] % choices.Length];
                if (question.Usual is null && typed == "I don't know")
                {
                    Assert.StartsWith("x Nobody but you", Assert.Single(making.Hear(typed)), StringComparison.Ordinal);
                    typed = choices[0];
                }

                var reply = Assert.Single(making.Hear(typed));
                Assert.True(reply.StartsWith("  Heard", StringComparison.Ordinal) || reply.StartsWith("  As usual", StringComparison.Ordinal), $"{question.Name} '{typed}': {reply}");
                answered[question.Name] = typed;
            }

            making.Hear("yes");
            Assert.Equal(RigMade.Written, making.End);
            var rig = RigFile.Read("rig.yaml", making.Text);
            Assert.Equal(answered.GetValueOrDefault("behind", "no") is not ("no" or "I don't know"), rig.Back is not null);
            Assert.Equal(answered["draft"] is "gas" or "oil" or "electric", rig.IsBurner);
            Assert.Equal(answered["draw"] switch { "pour" => DrawnBy.Pour, "ladle" => DrawnBy.Ladle, _ => DrawnBy.Valve }, rig.DrawnBy);
            Assert.Equal(answered["has"] is "all" or "hydrometer, pot", rig.HasFinishingPot);
        },
        cases: 400);

    /// <summary>What each question may be given: what goes together with all the others.</summary>
    private static string[] AnswersTo(string name) => name switch
    {
        "units" => ["us", "metric", "imperial", "I don't know"],
        "length" => ["50 in", "1.2 m", "4 ft 2 in", "I don't know"],
        "width" => ["23 1/2 in", "60 cm", "2 ft", "I don't know"],
        "draft" => ["no", "yes", "gas", "oil", "electric", "I don't know"],
        "float" => ["yes", "yes", "no", "valve", "I don't know"],
        "pail" => ["1 gal", "7 L", "I don't know"],
        "behind" => ["4 ft by 2 ft", "120 cm x 60 cm", "no", "I don't know"],
        "flues" => ["flat", "6 flues 7 in deep", "4, 12 cm", "factor 4", "I don't know"],
        "rear" => ["2 in", "5 cm, least 2 cm", "2 in, least 1 in, flood 3 in, wall 9 in", "I don't know"],
        "channels" => ["3", "1", "5 channels", "I don't know"],
        "depth" => ["1 1/2 in", "4 cm, least 1.5 cm", "run 2 in, flood 3 in", "I don't know"],
        "wall" => ["8 in", "20 cm", "I don't know"],
        "brick" => ["none", "16 bricks", "50 kg", "I don't know"],
        "tank" => ["35 gal", "130 L", "I don't know"],
        "boils" => ["8 gal/h", "30 L/h", "I don't know"],
        "charge" => ["7 lb", "3 kg", "I don't know"],
        "interval" => ["8 min", "I don't know"],
        "wood" => ["dry", "half dry", "25 %", "I don't know"],
        "draw" => ["valve", "ladle", "pour", "I don't know"],
        "has" => ["all", "none", "lid", "hydrometer, pot", "thermometer and sight glass", "I don't know"],
        "altitude" => ["900 ft", "270 m", "sea level", "I don't know"],
        _ => ["north shed", "O'Brien: # {x}", "I don't know"],
    };
}
