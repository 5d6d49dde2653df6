using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;
using Panside.Tests.Practice;
using Panside.Workshop.Worlds;

namespace Panside.Tests.Workshop;

/// <summary>What the worlds whose pan, instruments and operator differ do otherwise than the practised one.</summary>
public class PanWorldTests
{
    private const string File = "two-by-four-natural.yaml";

    [Fact]
    public void A_plug_of_thin_slices_is_steeper_toward_the_draw_off()
    {
        double Steepness(World world)
        {
            var rig = Fired(world, charges: 20);
            var (last, mean) = (rig.Truth.Pan[^1].Fraction, rig.Truth.Pan.Aggregate((a, b) => a + b).Fraction);
            return last / mean;
        }

        Assert.True(Steepness(new FlowingWorld()) > 1.25 * Steepness(World.Practised));
    }

    /// <summary>Half a minute late: behind while the pan heats, right once it boils.</summary>
    [Fact]
    public void The_thermometer_at_the_draw_off_comes_later()
    {
        static double Behind(PracticeRig rig) => rig.Truth.Pan[^1].Celsius(rig.Makeup.Materials) - rig.Makeup.World.DrawCelsius(rig.Makeup, rig.Truth);
        var rig = Fired(new FlowingWorld(), charges: 3);
        var before = rig.Truth.Pan[^1].Celsius(rig.Makeup.Materials);
        rig.Step(30);
        var risen = rig.Truth.Pan[^1].Celsius(rig.Makeup.Materials) - before;
        Assert.True(risen > 0.5);
        Assert.InRange(Behind(rig), 0.6 * risen, 1.2 * risen);
        Assert.InRange(Behind(Fired(new FlowingWorld(), charges: 12)), -0.1, 0.1);
    }

    [Fact]
    public void A_float_that_sticks_moves_in_steps()
    {
        var rig = Fired(new FlowingWorld(), charges: 8);
        var places = new List<double>();
        for (var second = 0; second < 1800; second++)
        {
            rig.Step(1);
            places.Add(rig.Truth.Own[FlowingWorld.Float]);
        }

        var steps = places.Zip(places.Skip(1), (one, next) => double.Abs(next - one)).Where(step => step > 0).ToList();
        Assert.InRange(steps.Count, 2, 60);
        Assert.All(steps, step => Assert.InRange(step, 0.0025, 0.005));
    }

    [Fact]
    public void Marks_are_few()
    {
        var rig = Fired(new MarkedWorld(), charges: 6);
        var instruments = new Instruments(rig, UnitSystem.Us, seed: 1);
        bool IsOn(ReadingName name, Unit unit, double step) => double.Abs(Math.IEEERemainder(instruments.Read(name, unit).Value, step)) < 1e-9;
        Assert.True(IsOn(ReadingName.TankVolume, Unit.Gallon, 1));
        Assert.True(IsOn(ReadingName.PanDepth, Unit.Inch, 0.25));
        Assert.True(IsOn(ReadingName.DrawTemperature, Unit.DegreeFahrenheit, 1));
    }

    [Fact]
    public void An_eye_that_stands_wrong_stays_wrong_and_sees_an_empty_tank()
    {
        var world = new MarkedWorld();
        var off = Enumerable.Range(1, 40).Select(seed =>
        {
            var rig = Drawn(world, seed);
            double Off(double liters) => world.GaugedLiters(rig.Makeup, rig.Truth, liters) - liters;
            var before = Off(50);
            rig.Step(600);
            Assert.Equal(before, Off(80), 1e-9);
            Assert.Equal(0, Off(0));
            return before / rig.Makeup.Rig.Tank.Liters;
        }).ToList();
        Assert.All(off, one => Assert.InRange(double.Abs(one), 0, 0.035));
        Assert.InRange(double.Sqrt(off.Average(one => one * one)), 0.012, 0.028);
    }

    [Fact]
    public void Wind_over_the_pan_wanders_by_a_factor_of_two()
    {
        var wind = Enumerable.Range(0, 600).Select(minute => 2 + (2 * Noise.At(0.3, 60 * minute, 480))).ToList();
        Assert.InRange(wind.Max() / wind.Min(), 1.7, 2);
        Assert.All(wind.Zip(wind.Skip(1), (one, next) => double.Abs(next - one)), step => Assert.InRange(step, 0, 0.5));
    }

    [Fact]
    public void A_low_tank_lets_in_less_than_boils_away_and_a_shut_float_drips()
    {
        var rig = Fired(new PouredWorld(), charges: 8);
        var (makeup, truth) = (rig.Makeup, rig.Truth with { FloatMeters = 0.1 });
        double Lets(Truth then, double liters)
        {
            var tank = then.Tank * (liters / (then.Tank.Mass * makeup.Materials.LitersOf(then.Tank.Fraction, makeup.SapCelsius)));
            return PouredFeed.Fed(makeup, then with { Tank = tank }).Ledger.Fed.Mass - then.Ledger.Fed.Mass;
        }

        var full = makeup.Rig.Tank.Liters;
        Assert.Equal(makeup.MostFeed, Lets(truth, full), 1e-9);
        Assert.InRange(Lets(truth, 0.02 * full) / makeup.MostFeed, 0.15, 0.28); // what the usual fire boils away is 0.31
        Assert.InRange(Lets(truth with { FloatMeters = 0.01 }, full), 1e-5, 0.02 * makeup.MostFeed);
    }

    [Fact]
    public void Portions_by_hand_vary_and_stop_the_boil_of_the_first_cell()
    {
        var rig = PracticeRig.In(new PouredWorld(), PracticeBoil.RigOf("flat-by-hand.yaml"), Scenario.RawSap, seed: 1);
        var poured = new List<double>();
        for (var pour = 0; pour < 6; pour++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge);
            rig.Step(480);
            poured.Add(rig.PourPortion(Volume.FromLiters(2)).Liters);
        }

        Assert.All(poured, liters => Assert.InRange(liters, 1.3, 2.7));
        Assert.True(poured.Max() > 1.15 * poured.Min());
        Assert.True(rig.Truth.Pan[0].Celsius(rig.Makeup.Materials) < rig.Truth.Pan[^1].Celsius(rig.Makeup.Materials));
    }

    private static PracticeRig Drawn(World world, long seed) => PracticeRig.In(world, PracticeBoil.RigOf(File), Scenario.RawSap, seed);

    private static PracticeRig Fired(World world, int charges)
    {
        var rig = PracticeRig.In(world, PracticeBoil.RigOf(File) with { Tank = Volume.FromLiters(400) }, Scenario.RawSap with { TankLiters = 600 }, 4);
        for (var charge = 0; charge < charges; charge++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge);
            rig.AddDefoamer();
            rig.Step((long)rig.Makeup.Rig.Interval.TotalSeconds);
        }

        return rig;
    }
}
