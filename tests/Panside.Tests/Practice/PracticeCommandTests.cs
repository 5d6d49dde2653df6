using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

[Collection(ConsoleAlone.Name)]
public class PracticeCommandTests
{
    [Theory]
    [InlineData("--judge", "--mistype")]
    [InlineData("--judge", "--picture")]
    public void Two_runs_at_once_are_refused(string one, string other)
    {
        var run = Captured.Run("practice", one, "1", other, "1");
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains($"{one} and {other}", run.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--unattended", "--refresher")]
    [InlineData("--unattended", "--paused")]
    [InlineData("--judge=1", "--at=2031-03-08 16:00")]
    [InlineData("--unattended", "--say=true")]
    public void What_is_for_a_person_is_refused_where_there_is_none(string run, string own)
    {
        var refused = Captured.Run("practice", run, own);
        Assert.Equal(ExitStatus.Unusable, refused.Status);
        Assert.Contains($"{own.Split('=')[0]}: is for a person", refused.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--at", "yesterday")]
    [InlineData("--refresher", "--stream")]
    [InlineData("--theme", "purple")]
    public void What_makes_no_sense_is_refused(string one, string other) =>
        Assert.Equal(ExitStatus.Unusable, Captured.Run("practice", one, other).Status);
}
