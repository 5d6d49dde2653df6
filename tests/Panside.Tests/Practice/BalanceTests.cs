using Panside.Practice.Mishaps;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;

namespace Panside.Tests.Practice;

public class BalanceTests
{
    private const double Relative = 1e-9;

    public static TheoryData<string, long> Rigs { get; } = new()
    {
        { "two-by-four-forced.yaml", 1 }, { "two-by-four-forced.yaml", 2 }, { "two-by-four-natural.yaml", 3 }, { "two-by-four-natural.yaml", 4 },
        { "flue-and-syrup-pan.yaml", 7 }, { "flue-and-syrup-pan.yaml", 8 },
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

    /// <summary>Tank and pan together, whatever goes wrong: what leaks, what a fault adds and what the pails bring is in the ledger.</summary>
    [Theory]
    [MemberData(nameof(MishapTests.Kinds), MemberType = typeof(MishapTests))]
    public void Under_each_fault_heat_water_and_sugar_are_neither_made_nor_lost(string kind)
    {
        var (start, end, makeup) = Boiled("two-by-four-forced.yaml", 6, kind);
        var (from, to, ledger) = (Whole(start) + start.Tank, Whole(end) + end.Tank, end.Ledger);
        var came = ledger.Wood + ledger.Found + ledger.Brought.Heat;
        var went = ledger.Stack + ledger.Walls + ledger.Air + ledger.Steam.Heat + ledger.Drawn.Heat + ledger.Leaked.Heat;
        var stored = Stored(end, makeup) + end.Tank.Heat - Stored(start, makeup) - start.Tank.Heat;
        Assert.InRange((came - went - stored) / came, -Relative, Relative);

        var gone = ledger.Steam + ledger.Drawn + ledger.Leaked;
        Assert.InRange((from.Water + ledger.Brought.Water - gone.Water - to.Water) / from.Water, -Relative, Relative);
        Assert.InRange((from.Sugar + ledger.Brought.Sugar - gone.Sugar - to.Sugar) / from.Sugar, -Relative, Relative);
        Assert.Equal(kind is "tank-leak" or "tank-emptied" or "sap-watery", ledger.Leaked != default);
        Assert.Equal(kind is "coals-heaped", ledger.Found > 1);
        Assert.True(ledger.Brought.Water > 1 || kind is "water-spilled");
    }

    [Theory]
    [InlineData("two-by-four-natural.yaml")]
    [InlineData("flue-and-syrup-pan.yaml")]
    public void Stirred_end_to_end_the_channels_of_the_front_pan_are_nearly_one_and_nothing_is_lost(string file)
    {
        var rig = new PracticeRig(PracticeBoil.RigOf(file), Scenario.ColdStart, 7);
        for (var charge = 0; charge < 9; charge++)
        {
            rig.AddWood(Mass.FromKilograms(4));
            rig.Step(540);
        }

        double Apart() => rig.Truth.Pan[^1].Fraction - rig.Truth.Pan[rig.Makeup.BackCells].Fraction;
        var (before, apart) = (Whole(rig.Truth), Apart());
        Assert.True(apart > 0.002, $"{apart}");
        rig.Stir();
        Assert.InRange(Apart() / apart, -0.05, 0.3);
        Assert.Equal(before.Sugar, Whole(rig.Truth).Sugar, 1e-9);
        Assert.Equal(before.Water, Whole(rig.Truth).Water, 1e-9);
        Assert.Equal(before.Heat, Whole(rig.Truth).Heat, 1e-9);
    }

    /// <summary>Everything that can happen to a rig: firing, a draw, foam, coals spread, flood by the float, pouring, lid; and a fault.</summary>
    private static (Truth Start, Truth End, Makeup Makeup) Boiled(string file, long seed, string? kind = null)
    {
        var rig = new PracticeRig(PracticeBoil.RigOf(file), Scenario.ColdStart with
        {
            Mishaps = kind is null ? [] : [new(kind, Awaits.FireLit, 40, 40)],
        }, seed);
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
        rig.Stir();
        if (kind is not null)
        {
            rig.PourBack();
            rig.CoolPan(Volume.FromLiters(3));
            rig.RefillWithWater(Volume.FromLiters(2));
            rig.FillPan(Volume.FromLiters(2), isWater: true);
            rig.FillPan(Volume.FromLiters(2), isWater: false);
        }

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
