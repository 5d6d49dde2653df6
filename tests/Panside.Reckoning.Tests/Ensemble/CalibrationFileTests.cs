using System.Text;
using System.Text.Json;
using Panside.Reckoning.Ensemble;

namespace Panside.Reckoning.Tests.Ensemble;

public class CalibrationFileTests
{
    [Fact]
    public void What_was_fitted_stands_in_one_file_that_says_on_what_and_by_which_command()
    {
        var own = CalibrationFile.Own;
        Assert.True(own.Version >= 1);
        Assert.Contains("worlds", own.FittedOn, StringComparison.Ordinal);
        Assert.StartsWith("panside-workshop calibrate", own.FittedBy, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_row_is_what_the_forecast_is_set_right_by()
    {
        foreach (var (forecast, of) in CalibrationFile.Own.Corrections)
        {
            Assert.All(of.Stages, row => Assert.Equal(
                new Correction(row.Shift, row.Below, row.Above, of.Offset), CalibrationFile.Own.Of(forecast, row.Stage, row.Draft == CalibratedDraft.Forced)));
            Assert.Equal(of.Stages.Count, of.Stages.DistinctBy(row => (row.Stage, row.Draft)).Count());
        }

        Assert.Equal(["evaporation-rate", "minutes-to-draw", "minutes-to-last-charge", "minutes-to-still", "residual-evaporation"], CalibrationFile.Own.Corrections.Keys.Order());
        Assert.Equal(Correction.None, Corrections.OfLastCharge(FireStage.Still, forcedDraft: false));
    }

    [Fact]
    public void What_is_written_reads_back_the_same()
    {
        var written = CalibrationFile.Own.Written();
        Assert.Equal(written, CalibrationFile.Read(Encoding.UTF8.GetBytes(written)).Written());
    }

    [Theory]
    [InlineData("\"learned-draw\"", "\"learned-drow\"")]
    [InlineData("\"Warming\"", "\"Tepid\"")]
    [InlineData("\"shift\"", "\"shft\"")]
    public void A_word_that_is_not_known_is_refused(string known, string wrong) =>
        Assert.Throws<JsonException>(() => CalibrationFile.Read(Encoding.UTF8.GetBytes(CalibrationFile.Own.Written().Replace(known, wrong, StringComparison.Ordinal))));
}
