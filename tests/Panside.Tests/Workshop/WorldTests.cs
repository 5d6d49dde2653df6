using Panside.Guide.Rigs;
using Panside.Practice.Chance;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;
using Panside.Tests.Practice;
using Panside.Workshop.Worlds;

namespace Panside.Tests.Workshop;

/// <summary>Every world that forecasts are judged in is a rig as rigs are: it keeps its books, and does what common practice reports.</summary>
public class WorldTests
{
    private const double LitersAGallon = 3.785;
    private const double Relative = 1e-6;
    private const int Hour = 3600;

    private static readonly string[] Wood = ["two-by-four-natural.yaml", "two-by-four-forced.yaml"];
    private static readonly string[] Others = ["flat-by-hand.yaml", "gas-divided.yaml", "one-channel.yaml"];

    public static TheoryData<string, string> OnTwoByFour { get; } = [.. AllWorlds.Names.SelectMany(name => Wood.Select(file => (name, file)))];

    public static TheoryData<string, string> OnEveryRig { get; } = [.. AllWorlds.Names.SelectMany(name => Wood.Concat(Others).Select(file => (name, file)))];

    /// <summary>The practised world's forced rig boils sooner, and its figures are held in <see cref="PracticeRigTests"/>.</summary>
    public static TheoryData<string, string> OnTwoByFourOtherwise { get; } =
        [.. AllWorlds.InOrder.Skip(1).SelectMany(world => Wood.Select(file => (world.Name, file)))];

    [Theory]
    [MemberData(nameof(OnEveryRig))]
    public void Heat_water_and_sugar_are_neither_made_nor_lost(string world, string file)
    {
        var rig = Drawn(world, file, seed: 3);
        var start = rig.Truth;
        Fire(rig, 2 * Hour);
        rig.OpenDraw();
        rig.Step(30);
        rig.CloseDraw();
        rig.SpreadCoals();
        rig.PourIn(Volume.FromLiters(2));
        rig.ShutBurner();
        rig.Step(2 * Hour);
        var (end, ledger, makeup) = (rig.Truth, rig.Truth.Ledger, rig.Makeup);
        var came = ledger.Wood + ledger.Brought.Heat + ledger.Fed.Heat;
        var went = ledger.Stack + ledger.Walls + ledger.Air + ledger.Steam.Heat + ledger.Drawn.Heat + ledger.Leaked.Heat;
        var stored = Stored(makeup, end) - Stored(makeup, start);
        Assert.True(came > 50);
        Assert.InRange((came - ledger.Fed.Heat - went - stored) / came, -Relative, Relative);

        var (from, to) = (Whole(start), Whole(end));
        var gone = ledger.Steam + ledger.Drawn + ledger.Leaked;
        Assert.True(ledger.Steam.Water > 10);
        Assert.InRange((from.Water + ledger.Brought.Water - gone.Water - to.Water) / from.Water, -Relative, Relative);
        Assert.InRange((from.Sugar + ledger.Brought.Sugar - gone.Sugar - to.Sugar) / from.Sugar, -Relative, Relative);
    }

    [Fact]
    public void A_batch_that_is_poured_out_takes_its_sugar_along_and_a_pan_off_the_fire_gets_no_heat()
    {
        var rig = Drawn("practised", "flat-by-hand.yaml", seed: 5);
        var start = rig.Truth;
        Fire(rig, Hour);
        var (held, least) = (rig.Truth.Pan.Sum(cell => cell.Mass), rig.LeastDepth);
        var poured = rig.EmptyPan();
        Assert.True(poured.Liters > 0.8 * held);
        rig.Step(Hour / 3);
        Assert.Equal("still", Sights.Boil(rig.Makeup, rig.Truth));
        Assert.Equal((false, least), (rig.IsScorched, rig.LeastDepth));
        rig.FillPan(Volume.FromLiters(15), isWater: false);
        Fire(rig, Hour);
        Assert.Contains(Sights.Boil(rig.Makeup, rig.Truth), new[] { "steady", "rolling" });
        var (end, ledger, makeup) = (rig.Truth, rig.Truth.Ledger, rig.Makeup);
        var came = ledger.Wood + ledger.Brought.Heat + ledger.Fed.Heat;
        var went = ledger.Stack + ledger.Walls + ledger.Air + ledger.Steam.Heat + ledger.Drawn.Heat + ledger.Leaked.Heat;
        Assert.InRange((came - ledger.Fed.Heat - went - (Stored(makeup, end) - Stored(makeup, start))) / came, -Relative, Relative);
        var gone = ledger.Steam + ledger.Drawn + ledger.Leaked;
        Assert.InRange((Whole(start).Sugar + ledger.Brought.Sugar - gone.Sugar - Whole(end).Sugar) / Whole(start).Sugar, -Relative, Relative);
    }

    [Theory]
    [MemberData(nameof(OnTwoByFourOtherwise))]
    public void Common_practice_boils_a_cold_pan_and_boils_away_as_much(string world, string file)
    {
        var rig = Nominal(world, file);
        var boils = new List<(long Second, string Seen)>();
        Fire(rig, Hour, () => boils.Add((rig.Second, Sights.Boil(rig.Makeup, rig.Truth))));
        Assert.InRange(boils.First(one => one.Seen is "steady" or "rolling").Second / 60.0, 12, 40);
        Fire(rig, Hour / 2);
        var before = rig.Truth.Ledger.Steam.Water;
        Fire(rig, 3 * Hour / 2);
        var forced = rig.Makeup.Forced;
        Assert.InRange((rig.Truth.Ledger.Steam.Water - before) / LitersAGallon / 1.5, forced ? 10 : 6, forced ? 14 : 10);
    }

    public static TheoryData<string, string, double> OverABurner { get; } =
        [.. AllWorlds.Names.SelectMany(name => new[] { ("gas", 8.0), ("gas", 4), ("oil", 14), ("electric", 6) }.Select(burner => (name, burner.Item1, burner.Item2)))];

    [Theory]
    [MemberData(nameof(OverABurner))]
    public void A_burner_boils_away_what_its_file_says(string name, string kind, double gallonsPerHour)
    {
        var text = FormattableString.Invariant($"rig: r\nunits: us\naltitude: 600 ft\npan: {{ length: 48 in, width: 24 in }}\nfire: {{ kind: {kind}, boils: {gallonsPerHour} gal/h }}\nfeed: {{ by: float }}\n");
        var world = AllWorlds.Wanted(name);
        var burner = RigFile.Read("rig.yaml", text) with { Tank = Volume.FromLiters(400) };
        var rig = new PracticeRig(world.Made(Makeup.Nominal(burner) with { World = world }, null), Sap, RandomStream.For(1, "start"));
        Fire(rig, 3 * Hour / 2);
        var before = rig.Truth.Ledger.Steam.Water;
        Fire(rig, Hour);
        Assert.InRange((rig.Truth.Ledger.Steam.Water - before) / LitersAGallon / gallonsPerHour, 0.93, 1.07);
    }

    /// <summary>With a blower, a third to six tenths of what it is without one, and a third to a half of how long.</summary>
    [Theory]
    [MemberData(nameof(OnTwoByFourOtherwise))]
    public void Common_practice_goes_still_after_the_last_charge(string world, string file)
    {
        var rig = Nominal(world, file);
        Fire(rig, 3 * Hour);
        rig.AddWood(rig.Makeup.Rig.Charge);
        var (liters, still) = RunAhead.WithoutWood(rig);
        var forced = rig.Makeup.Forced;
        Assert.InRange(liters / LitersAGallon, forced ? 3.0 / 3 : 3, forced ? 4.3 : 7);
        Assert.InRange(still, forced ? 45 / 3 : 45, forced ? 120 / 2 : 120);
    }

    /// <summary>In the middle of a charge the bed counts as deep, long after the last one as spent.</summary>
    [Theory]
    [MemberData(nameof(OnTwoByFour))]
    public void The_eye_sees_a_deep_bed_in_a_steady_fire_and_none_in_the_end(string world, string file)
    {
        var rig = Nominal(world, file);
        Fire(rig, 2 * Hour);
        rig.AddWood(rig.Makeup.Rig.Charge);
        rig.Step((long)rig.Makeup.Rig.Interval.TotalSeconds / 2);
        Assert.Equal("deep", Sights.Coals(rig.Makeup, rig.Truth));
        rig.Step(4 * Hour);
        Assert.Equal("spent", Sights.Coals(rig.Makeup, rig.Truth));
    }

    [Theory]
    [MemberData(nameof(OnTwoByFour))]
    public void The_same_seed_is_the_same_rig_and_another_one_is_not(string world, string file)
    {
        PracticeRig Boiled(long seed)
        {
            var rig = Drawn(world, file, seed);
            Fire(rig, Hour);
            return rig;
        }

        var (one, same, other) = (Boiled(5), Boiled(5), Boiled(6));
        AssertSame(one.Truth, same.Truth);
        Assert.NotEqual(one.Truth.Ledger, other.Truth.Ledger);
        Assert.NotEqual(one.Makeup.ToPan, other.Makeup.ToPan);
    }

    [Theory]
    [MemberData(nameof(OnTwoByFour))]
    public void Looking_ahead_leaves_the_rig_as_it_is(string world, string file)
    {
        var (looked, not) = (Drawn(world, file, seed: 8), Drawn(world, file, seed: 8));
        foreach (var rig in new[] { looked, not })
        {
            Fire(rig, Hour);
        }

        var (before, makeup) = (looked.Truth, looked.Makeup);
        RunAhead.WithoutWood(looked);
        RunAhead.Rate(looked, looked.SecondsSinceWood, 600);
        RunAhead.MinutesToDraw(looked, looked.SecondsSinceWood, 600, 30);
        Assert.Same(before, looked.Truth);
        Assert.Same(makeup, looked.Makeup);
        Fire(looked, Hour / 2);
        Fire(not, Hour / 2);
        AssertSame(looked.Truth, not.Truth);
    }

    private static void AssertSame(Truth one, Truth other)
    {
        Assert.Equal(one.Ledger, other.Ledger);
        Assert.Equal(one.Pan.AsEnumerable(), other.Pan);
        Assert.Equal(one.Charges.AsEnumerable(), other.Charges);
        Assert.Equal(one.Own.AsEnumerable(), other.Own);
        Assert.Equal((one.Tank, one.Coals, one.BrickCelsius, one.Boil, one.Foam), (other.Tank, other.Coals, other.BrickCelsius, other.Boil, other.Foam));
    }

    private static PracticeRig Nominal(string name, string file)
    {
        var world = AllWorlds.Wanted(name);
        var makeup = world.Made(Makeup.Nominal(LargeTank(file)) with { World = world }, null);
        return new(makeup, Sap, RandomStream.For(1, "start"));
    }

    private static PracticeRig Drawn(string world, string file, long seed) => PracticeRig.In(AllWorlds.Wanted(world), LargeTank(file), Sap, seed);

    private static Scenario Sap => Scenario.RawSap with { TankLiters = 600 };

    private static Guide.Rigs.Rig LargeTank(string file) => PracticeBoil.RigOf(file) with { Tank = Volume.FromLiters(400) };

    /// <summary>Charges at their interval, or a burner; portions by hand, or a valve set every minute.</summary>
    private static void Fire(PracticeRig rig, int seconds, Action? everyMinute = null)
    {
        var (makeup, interval) = (rig.Makeup, (int)rig.Makeup.Rig.Interval.TotalSeconds);
        for (var second = 0; second < seconds; second += 60)
        {
            if (!makeup.Rig.IsBurner && (rig.SecondsSinceWood >= interval || !rig.IsFired))
            {
                rig.AddWood(makeup.Rig.Charge);
            }
            else if (makeup.Rig.IsBurner && !rig.Truth.BurnerOn)
            {
                rig.LightBurner();
            }

            if (makeup.Rig.Feed == Feed.ByHand && rig.Depth < makeup.Rig.RunDepth - (makeup.Rig.Portion / makeup.Rig.PanArea * 0.5))
            {
                rig.PourPortion(makeup.Rig.Portion);
            }

            rig.AddDefoamer();
            rig.Step(60);
            everyMinute?.Invoke();
        }
    }

    private static Cell Whole(Truth truth) => truth.Pan.Aggregate(truth.Tank, (a, b) => a + b);

    private static double Stored(Makeup makeup, Truth truth) =>
        makeup.World.Fuel(truth) + makeup.World.Stored(makeup, truth) + Whole(truth).Heat;
}
