using System.Globalization;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;

namespace Panside.Guide.Tests.Flows;

public class FlowValueTests
{
    [Theory]
    [InlineData(null, "Asked again in 5 minutes.", 5)]
    [InlineData("7 min", "Asked again in 7 minutes.", 7)]
    public void Later_puts_off_for_as_long_as_the_flow_says(string? putOff, string told, int minutes)
    {
        var session = new Session(new Setting(Read(putOff is null ? "" : $"values: {{ put-off: {putOff} }}\n"), RigFile.Read("r", RepositoryFiles.Read("flows", "rigs", "two-by-four-natural.yaml")), Guidance.Beginner, "test") { Members = Conversation.Few });
        var start = new DateTimeOffset(2031, 3, 8, 17, 0, 0, TimeSpan.FromHours(-5));
        session.Hear(new Tick(Moment.Of(start)));
        Assert.Contains(session.Hear(new Text(Moment.Of(start), "later")), line => line is ToldLine(_, _, var text) && text == told);
        Assert.False(session.IsDue(Moment.Of(start.AddMinutes(minutes - 1))));
        Assert.True(session.IsDue(Moment.Of(start.AddMinutes(minutes))));
    }

    [Fact]
    public void The_page_tells_each_value_with_what_is_usual_and_what_it_may_be()
    {
        var page = RepositoryFiles.Read("docs", "values.md");
        Assert.All(FlowValue.All, value => Assert.Contains(
            string.Create(CultureInfo.InvariantCulture, $"| `{value.Name}` | {value.Usual.TotalMinutes} min | {value.Least.TotalMinutes} to {value.Most.TotalMinutes} min |"), page, StringComparison.Ordinal));
        Assert.All(FlowValue.All, value => Assert.InRange(value.Usual, value.Least, value.Most));
    }

    private static Flow Read(string values) => FlowFile.Read("f", RepositoryFiles.Read("flows", "divided-pan.yaml") + values, Vocabularies.Flow);
}
