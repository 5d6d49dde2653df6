using Panside.Commands;
using Panside.Tests.Reckon;

namespace Panside.Tests.Practice;

public class PracticeCommandTests
{
    [Theory]
    [InlineData("--judge")]
    [InlineData("--judge-learned")]
    [InlineData("--mistype")]
    [InlineData("--picture")]
    [InlineData("--habit")]
    public void What_is_the_workshops_is_no_option_of_an_operator(string option)
    {
        Assert.Equal(ExitStatus.Unusable, Captured.Run("practice", option, "1").Status);
        Assert.DoesNotContain(option, Captured.Run("practice", "--help").Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--unattended", "--refresher")]
    [InlineData("--unattended", "--paused")]
    [InlineData("--unattended", "--at=2031-03-08 16:00")]
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

    [Fact]
    public void A_scenario_that_a_rig_never_comes_to_is_refused_and_does_not_open_on_a_boil_that_is_over()
    {
        using var scratch = new Scratch();
        var refused = Captured.Run("practice", "--plain", "--home", scratch.Folder, "--scenario", "draw-due", "--rig", Path.Combine(RepositoryFiles.Root, "flows", "rigs", "flue-and-syrup-pan.yaml"));
        Assert.Equal(ExitStatus.Unusable, refused.Status);
        Assert.Contains("--scenario draw-due: on 'flue pan and syrup pan' the boil was over before it came to that.", refused.Errors, StringComparison.Ordinal);
    }
}
