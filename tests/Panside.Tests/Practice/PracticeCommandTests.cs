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
}
