using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

public class NextTenMinutesTests
{
    /// <summary>A balance: over whole charges the ten minutes to come, asked at each minute, have the mean of what then leaves.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Over_whole_charges_it_has_the_mean_of_what_leaves(bool forced)
    {
        var rig = EnsembleRig.Fired(EnsembleRig.Cold(forced), 216);
        var interval = (int)rig.Rig.Interval.TotalMinutes;
        var told = 0.0;
        var before = rig.Members[Field.Evaporated].Average();
        for (var minute = 0; minute < 4 * interval; minute++)
        {
            rig = minute % interval == 0 ? rig.Charged(rig.Rig.UsualCharge) : rig;
            told += rig.Forecasts.NextTenMinutes(firing: true).AsReckoned.At(0.5) / (4 * interval);
            rig = rig.After(1);
        }

        var left = (rig.Members[Field.Evaporated].Average() - before) * 60 / (4 * interval);
        Assert.InRange(told / left, 0.93, 1.07);
    }

    /// <summary>Without wood it falls from charge to charge, and is the same water that the shutdown is told with.</summary>
    [Fact]
    public void Without_wood_it_is_what_leaves_in_the_next_ten_minutes()
    {
        var rig = EnsembleRig.AtLastCharge(forced: false).After(20);
        var later = rig.After(10);
        var left = Enumerable.Range(0, rig.Count).Select(member => 6 * (later.Members[Field.Evaporated][member] - rig.Members[Field.Evaporated][member])).Average();
        Assert.InRange(rig.Forecasts.NextTenMinutes(firing: false).At(0.5) / left, 0.9, 1.1);
        Assert.True(later.Forecasts.NextTenMinutes(firing: false).At(0.5) < rig.Forecasts.NextTenMinutes(firing: false).At(0.5));
    }

    [Fact]
    public void It_leaves_the_ensemble_as_it_is()
    {
        var rig = EnsembleRig.AtLastCharge(forced: true);
        var before = rig.Members[Field.Evaporated].ToArray();
        _ = rig.Forecasts.NextTenMinutes(firing: true);
        Assert.Equal(before, rig.Members[Field.Evaporated]);
    }
}
