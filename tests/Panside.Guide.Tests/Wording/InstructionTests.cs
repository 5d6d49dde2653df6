using Panside.Guide.Wording;

namespace Panside.Guide.Tests.Wording;

public sealed class InstructionTests
{
    [Theory]
    [InlineData("Read the head tank.", 1, 0)]
    [InlineData("Look at float, valve and tank; say yes when sap feeds the pan.", 1, 1)]
    [InlineData("Set filter, pail and hydrometer cup in reach; say yes when they stand there.", 1, 1)]
    [InlineData("Look the pan over; say yes when it is clean, level and sound.", 1, 1)]
    [InlineData("Under 218 °F, shut the draw-off; say 'drew' with the volume.", 1, 1)]
    [InlineData("Pour it back at the draw-off side, or finish it apart; say yes.", 1, 1)]
    [InlineData("If the pan is low, pour sap in.", 1, 0)]
    [InlineData("Light the fire and open the draft.", 2, 0)]
    [InlineData("Fill the pan to 1.5 in or more, then read its depth.", 2, 0)]
    [InlineData("Smell and look at it; say yes when it is clear.", 2, 1)]
    [InlineData("Put in a charge of dry wood, 7 lb, and shut the door.", 2, 0)]
    [InlineData("Pour cold sap in now. Add no wood. Then read the depth.", 3, 0)]
    [InlineData("Press the float down and let it go.", 2, 0)]
    [InlineData("Pan low? Pour sap in now and type: dry.", 1, 1)]
    public void Actions_are_told_from_what_is_said_to_them(string text, int actions, int replies)
    {
        var asked = Instruction.Of(text);
        Assert.Equal((actions, replies), (asked.Actions.Count, asked.Replies.Count));
    }

    [Theory]
    [InlineData("Flame can roll out of an open door and burn face and sleeves.")]
    [InlineData("Coals throw heat and sparks through the open door at bare hands and face.")]
    [InlineData("A stack is red hot. Smoke in the room kills; it carries carbon monoxide.")]
    [InlineData("The channels are apart, and the draw-off was never read.")]
    public void A_hazard_asks_for_nothing(string text) => Assert.Empty(Instruction.Of(text).Actions);

    [Theory]
    [InlineData("Steam scalds. Reach out; keep clear of it.")]
    [InlineData("Carbon monoxide kills unseen. Never boil in a closed room.")]
    [InlineData("Foam scalds; stay out of its way.")]
    public void A_hazard_that_asks_for_something_is_found_out(string text) => Assert.NotEmpty(Instruction.Of(text).Actions);

    [Fact]
    public void A_question_is_one() => Assert.True(Instruction.Of("Fire on? Yes boils on, no begins the shutdown.").IsQuestion);
}
