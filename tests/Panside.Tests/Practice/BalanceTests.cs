using Panside.Practice;
using Panside.Practice.Physics;
using Panside.Reckoning.Quantities;

namespace Panside.Tests.Practice;

public class BalanceTests
{
    private const double Relative = 1e-9;

    public static TheoryData<string, long> Rigs { get; } = new()
    {
        { "two-by-four-forced.yaml", 1 }, { "two-by-four-forced.yaml", 2 }, { "two-by-four-natural.yaml", 3 }, { "two-by-four-natural.yaml", 4 },
    };

    [Theory]
    [MemberData(nameof(Rigs))]
    public void Heat_is_neither_made_nor_lost(string file, long seed)
    {
        var (start, end, makeup) = Boiled(file, seed);
        var stored = Stored(end, makeup) - Stored(start, makeup);
        var came = end.Ledger.Wood + end.Ledger.Fed.Heat;
        var went = end.Ledger.Stack + end.Ledger.Walls + end.Ledger.Air + end.Ledger.Steam.Heat + end.Ledger.Drawn.Heat;
        Assert.True(came > 100);
        Assert.InRange((came - went - stored) / came, -Relative, Relative);
    }

    [Theory]
    [MemberData(nameof(Rigs))]
    public void Water_and_sugar_are_neither_made_nor_lost(string file, long seed)
    {
        var (start, end, _) = Boiled(file, seed);
        var (before, after) = (Whole(start), Whole(end));
        var came = before + end.Ledger.Fed;
        Assert.InRange((came.Water - end.Ledger.Steam.Water - end.Ledger.Drawn.Water - after.Water) / came.Water, -Relative, Relative);
        Assert.InRange((came.Sugar - end.Ledger.Drawn.Sugar - after.Sugar) / came.Sugar, -Relative, Relative);
        Assert.True(end.Ledger.Steam.Water > 20);
        Assert.True(end.Ledger.Drawn.Sugar > 0.1);
    }

    [Fact]
    public void What_leaves_the_tank_comes_to_the_pan()
    {
        var (start, end, _) = Boiled("two-by-four-natural.yaml", 5);
        Assert.InRange((start.Tank.Water - end.Tank.Water - end.Ledger.Fed.Water) / start.Tank.Water, -Relative, Relative);
    }

    /// <summary>Everything that can happen to a rig: firing, a draw, foam, coals spread, flood by the float, pouring, lid.</summary>
    private static (Truth Start, Truth End, Makeup Makeup) Boiled(string file, long seed)
    {
        var rig = new PracticeRig(PracticeBoil.RigOf(file), Scenario.ColdStart, seed);
        var start = rig.Truth;
        for (var charge = 0; charge < 9; charge++)
        {
            rig.AddWood(Mass.FromKilograms(2 + (0.3 * charge)));
            rig.Step(540);
        }

        rig.OpenDraw();
        rig.Step(40);
        rig.CloseDraw();
        rig.AddDefoamer();
        rig.SpreadCoals();
        rig.Step(600);
        rig.PourIn(Volume.FromLiters(3));
        rig.Flood();
        rig.Step(900);
        rig.Cover();
        rig.Step(7200);
        return (start, rig.Truth, rig.Makeup);
    }

    private static Cell Whole(Truth truth) => truth.Pan.Aggregate((a, b) => a + b);

    private static double Stored(Truth truth, Makeup makeup) =>
        Fire.Fuel(truth) + (truth.BrickCelsius * makeup.BrickCapacity) + Whole(truth).Heat;
}
