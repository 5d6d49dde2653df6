using System.Numerics;
using CsCheck;
using Panside.Laws;
using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

/// <summary>The vectors' loop against one member reckoned in plain numbers: so the width of vectors changes nothing.</summary>
public class SteppingTests
{
    [Fact]
    public void Every_member_goes_as_a_plain_reckoning_of_it_goes() => RandomMembers.Gen.Holds(at => Agrees(at.Forced, at.Members, at.Run), cases: 300);

    [Fact]
    public void It_does_so_over_hours_of_small_steps_as_well()
    {
        var run = new Run { Steps = 1080, StepMinutes = 1.0 / 6, WoodMegajoules = 3.8, HeldLiters = 28, TankEnds = true, DrawFraction = 0.669 };
        Agrees(false, RandomMembers.Of(false, 3, 64), run);
        Agrees(false, RandomMembers.Of(false, 3, 64), run with { DrawFraction = 0 });
        Agrees(true, RandomMembers.Of(true, 4, 64), run with { DrawFraction = 0, WoodMegajoules = 0 });
        Agrees(true, RandomMembers.Of(true, 5, 64), run with { DrawFraction = 0, WithoutSugar = true });
    }

    [Fact]
    public void A_member_s_place_changes_no_digit_of_it()
    {
        var members = RandomMembers.Of(true, 11, 32);
        int[] places = [.. Enumerable.Range(0, 32).Select(at => (at + 5) % 32)];
        var moved = members.Picked(places);
        var run = new Run { Steps = 200, StepMinutes = 1, WoodMegajoules = 4, HeldLiters = 28, TankEnds = true };
        Stepping.Go(members, Constants(true), run);
        Stepping.Go(moved, Constants(true), run);
        for (var field = 0; field < members.Fields; field++)
        {
            Assert.Equal(members.Picked(places)[field], moved[field]);
        }
    }

    [Fact]
    public void A_count_that_no_vector_divides_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Members(1001, 6));

    [Fact]
    public void Eight_members_fill_vectors_of_any_width() => Assert.Equal(0, 8 % Vector<double>.Count);

    internal static RigConstants Constants(bool forced) => RigConstants.Of(EnsembleRig.Of(forced), EnsembleRig.Boiling);

    private static bool Agrees(bool forced, Members members, Run run)
    {
        var before = members.Copy();
        var result = Stepping.Go(members, Constants(forced), run);
        for (var member = 0; member < members.Count; member++)
        {
            var plain = new ScalarMember(Constants(forced), run).Go(before, member);
            Same(plain.Draw, result.DrawMinutes[member], "draw", member, run.StepMinutes);
            if (run.DrawFraction > 0)
            {
                continue; // A block goes on until its last member has come to the draw.
            }

            double Of(int field) => members[field][member];
            (double Expected, double Actual, string What)[] rows =
            [
                (plain.Least, result.LeastLiters[member], "least"),
                (plain.Empty, result.EmptyMinutes[member], "empty"),
                (plain.Flame, Of(Field.Flame), "flame"), (plain.Coals, Of(Field.Coals), "coals"), (plain.Brick, Of(Field.Brick), "brick"),
                (plain.Pan, Of(Field.Pan), "pan"), (plain.Celsius, Of(Field.Temperature), "celsius"), (plain.Tank, Of(Field.Tank), "tank"),
                (plain.Evaporated, Of(Field.Evaporated), "evaporated"), (plain.Fed, Of(Field.Fed), "fed"),
                (plain.Steam, Of(Field.Steam), "steam"), (plain.Rate, Of(Field.Rate), "rate"),
                .. plain.Sugar.Select((sugar, cell) => (sugar, Of(Field.Sugar + cell), $"sugar {cell}")),
            ];
            Same(plain.Still, result.StillMinutes[member], "still", member, run.StepMinutes);
            Assert.All(rows, row => Same(row.Expected, row.Actual, row.What, member));
        }

        return true;
    }

    /// <summary>Sums in another order differ in the last digits; where they fall on two sides of a bound, by one step of time.</summary>
    private static void Same(double expected, double actual, string what, int member, double step = 0)
    {
        var near = expected.Equals(actual) || double.Abs(expected - actual) <= double.Max(step, 1e-11 * double.Max(double.Abs(expected), 1));
        Assert.True(near, $"{what} of member {member}: {expected:R} expected, {actual:R} found");
    }
}
