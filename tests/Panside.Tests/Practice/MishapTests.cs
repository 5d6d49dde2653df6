using Panside.Practice.Mishaps;
using Panside.Practice.Physics;
using Panside.Practice.Scenarios;
using Panside.Practice.Simulation;
using Panside.Reckoning.Quantities;
using Panside.Workshop.Trials;

namespace Panside.Tests.Practice;

public class MishapTests
{
    private const string Forced = "two-by-four-forced.yaml";

    public static TheoryData<string> Kinds { get; } = [.. ScenarioFile.Faults.Select(fault => fault.Name)];

    /// <summary>At the rig, at an instrument or in the operator: something is other than without it.</summary>
    [Theory]
    [MemberData(nameof(Kinds))]
    public void A_fault_changes_the_rig_or_an_instrument_or_the_operator(string kind)
    {
        var (with, without) = (Fired(kind), AsUsual.Value);
        Assert.Equal([kind], with.Begun.Select(one => one.Name));
        Assert.True(
            with.Truth != without.Truth || with.Kit != without.Kit || with.Temper != without.Temper || with.WaterLeft != without.WaterLeft);
    }

    /// <summary>
    /// The advice followed: whatever goes wrong, no pan burns or runs dry, and what is promised at leaving comes true. Here with the faults that
    /// come closest to it; <c>panside-workshop trials</c>, which <c>.ci/run</c> runs, tries all.
    /// </summary>
    [Theory]
    [InlineData("float-stuck-shut")]
    [InlineData("valve-half-shut")]
    [InlineData("feed-freezing")]
    [InlineData("tank-leak")]
    [InlineData("tank-emptied")]
    [InlineData("foam-sudden")]
    [InlineData("pan-scaled")]
    [InlineData("coals-heaped")]
    [InlineData("operator-leaves")]
    [InlineData("operator-skips")]
    [InlineData("laptop-off")]
    public void F5_S1_with_the_advice_followed_no_fault_burns_or_empties_a_pan(string kind) =>
        Assert.Null(FaultTrials.Followed(kind, FaultTrials.SeedFollowed).Fault());

    public static TheoryData<string, long> Emptying { get; } = [.. FaultTrials.Emptying];

    /// <summary>What empties a pan is told ten minutes before the floor shows.</summary>
    [Theory]
    [MemberData(nameof(Emptying))]
    public void F5_what_empties_the_pan_is_answered_ten_minutes_before_the_floor_shows(string kind, long seed) =>
        Assert.Null(FaultTrials.Alarmed(kind, seed).Fault());

    /// <summary>Whatever else goes wrong: the alarm that comes first, of the fault or of the last charge, leaves ten minutes. The others are trials too.</summary>
    [Theory]
    [InlineData("float-stuck-open")]
    [InlineData("draw-off-drips")]
    [InlineData("foam-strong")]
    [InlineData("ruler-high")]
    [InlineData("pan-tilted")]
    [InlineData("operator-skips")]
    [InlineData("laptop-off")]
    [InlineData("water-spilled")]
    public void F5_no_fault_shows_the_floor_within_ten_minutes_of_the_first_alarm_or_without_one(string kind) =>
        Assert.Null(FaultTrials.Ahead(kind, FaultTrials.SeedAhead).Fault());

    /// <summary>
    /// Three charges at once once burned a scaled pan of an inch and a half, as no fire should, since each burned as if it had the air to
    /// itself; and a flood begun anew at each reminder never ended in a pan that leans.
    /// </summary>
    [Theory]
    [InlineData("beginner", 33)]
    [InlineData("practised", 75)]
    public void With_the_advice_followed_a_heavy_hand_burns_no_pan_and_comes_to_an_end(string guidance, long seed)
    {
        var boil = new PracticeBoil(Forced, guidance, ScenarioLibrary.Of("heavy-hand"), seed);
        Assert.False(boil.Outcome.IsScorched);
        Assert.True(boil.Outcome.IsGood);
        Assert.InRange(boil.Outcome.Seconds, 3600, 4 * 3600);
    }

    /// <summary>The pan had been read low, and the draw-off was not asked for again before it smelled.</summary>
    [Fact]
    public void A_pan_that_was_read_low_has_its_draw_off_watched_before_it_burns() =>
        Assert.False(new PracticeBoil(Forced, "beginner", ScenarioLibrary.Of("heavy-hand"), 117).Outcome.IsScorched);

    [Fact]
    public void An_inch_and_a_half_takes_any_fire()
    {
        var rig = new PracticeRig(PracticeBoil.RigOf(Forced), Scenario.RawSap with
        {
            Mishaps = [new("pan-scaled", Awaits.Beginning, 0, 0, Strength: 0.5)],
        }, seed: 3);
        for (var charge = 0; charge < 9; charge++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge * 1.33);
            rig.AddDefoamer();
            rig.Step(240);
        }

        Assert.True(rig.Depth.Meters > 0.03);
        Assert.Equal(0, rig.Truth.Scorch);
    }

    [Fact]
    public void Whoever_frees_the_float_ends_what_hung_it()
    {
        var rig = Fired("float-stuck-shut");
        Assert.False(rig.FeedsWell);
        rig.FreeFeed();
        Assert.True(rig.FeedsWell);
    }

    [Fact]
    public void The_same_seed_has_the_same_faults_and_another_has_others()
    {
        string Of(long seed)
        {
            var rig = new PracticeRig(PracticeBoil.RigOf(Forced), Scenario.LastHour with
            {
                Mishaps = [new(null, Awaits.Beginning, 0, 30), new(null, Awaits.Beginning, 0, 30, Chance: 0.5)],
            }, seed);
            rig.Step(2400);
            return string.Join(' ', rig.Begun);
        }

        Assert.Equal(Of(1), Of(1));
        Assert.True(Enumerable.Range(1, 8).Select(seed => Of(seed)).Distinct().Count() > 4);
    }

    /// <summary>Fired without any fault; only looked at.</summary>
    private static readonly Lazy<PracticeRig> AsUsual = new(() => Fired(null));

    private static PracticeRig Fired(string? kind)
    {
        var rig = new PracticeRig(PracticeBoil.RigOf(Forced), Scenario.ColdStart with
        {
            Mishaps = kind is null ? [] : [new(kind, Awaits.FireLit, 40, 40)],
        }, seed: 3);
        for (var charge = 0; charge < 6; charge++)
        {
            rig.AddWood(rig.Makeup.Rig.Charge);
            rig.Step(480);
        }

        return rig;
    }
}
