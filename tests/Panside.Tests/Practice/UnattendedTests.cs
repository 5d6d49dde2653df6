using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Practice.Scenarios;
using Panside.Workshop.Trials;

namespace Panside.Tests.Practice;

public class UnattendedTests
{
    private const string Forced = "two-by-four-forced.yaml";
    private const string Natural = "two-by-four-natural.yaml";

    /// <summary>Here each rig with each guidance once; <c>panside-workshop trials</c>, which <c>.ci/run</c> runs, tries all beginnings with all four.</summary>
    [Theory]
    [InlineData(Forced, "beginner", "cold-start", 30)]
    [InlineData(Forced, "practised", "raw-sap", 3)]
    [InlineData(Natural, "beginner", "last-hour", 4)]
    [InlineData(Natural, "practised", "cold-start", 1)]
    public void Who_follows_the_advice_ends_safe_with_an_unharmed_pan_and_adds_no_wood_after_it_is_held(string rig, string guidance, string scenario, long seed) =>
        Assert.Null(BoilTrials.Followed(rig, guidance == "beginner" ? Guidance.Beginner : Guidance.Practised, scenario, seed).Fault());

    /// <summary>A question that came between once kept the operator from telling a charge, and a second one burned the pan (seed 1244).</summary>
    [Fact]
    public void Each_charge_that_goes_in_is_told_before_the_next()
    {
        var boil = new PracticeBoil(Forced, "practised", Scenario.ColdStart, 1244);
        var charge = boil.Rig.Makeup.Rig.Charge.Kilograms * boil.Rig.Makeup.WoodHeat;
        var told = boil.Said.Zip(boil.WoodMegajoules).Where(one => IsCharge(one.First)).Select(one => one.Second).ToList();
        Assert.InRange(told.Count, 8, 40);
        Assert.All(told.Zip(told.Skip(1)), pair => Assert.InRange(pair.Second - pair.First, 0.5 * charge, 1.5 * charge));
        Assert.True(boil.Outcome.IsGood);
    }

    [Fact]
    public void The_same_seed_gives_the_same_bytes_and_another_seed_another_rig()
    {
        string Record(long seed) => new PracticeBoil(Forced, "beginner", Scenario.LastHour, seed).Record;
        Assert.Equal(Record(5), Record(5));
        Assert.NotEqual(Record(5), Record(6));
    }

    [Fact]
    public void Seeds_make_rigs_that_boil_and_cool_differently()
    {
        var boils = Enumerable.Range(1, 3).Select(seed => new PracticeBoil(Natural, "beginner", Scenario.LastHour, seed).Outcome).ToList();
        Assert.Equal(3, boils.Select(outcome => outcome.BoiledAwayAfterHold.Liters).Distinct().Count());
    }

    [Fact]
    public void An_operator_who_only_types_is_understood_too()
    {
        var boil = PracticeBoil.Of(Natural, "beginner", Scenario.ColdStart, 1);
        Assert.Contains(boil.Said, one => one.Line is Text && one.Answers.OfType<HeardLine>().Any(heard => heard.As is Reading));
        Assert.Contains(boil.Said, one => one.Line is Reading);
        Assert.Contains(boil.Said, one => one.Line is Observed);
        Assert.Equal(0, boil.Outcome.Refused);
    }

    private static bool IsCharge((LineIn Line, IReadOnlyList<LineOut> Answers) one) =>
        (one.Answers.OfType<HeardLine>().FirstOrDefault()?.As ?? one.Line) is Did { Name.Code: "add-wood" };
}
