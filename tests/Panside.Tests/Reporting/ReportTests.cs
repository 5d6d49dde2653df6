using System.Xml.Linq;
using Panside.Commands;
using Panside.Reporting;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Reporting;

public class ReportTests
{
    [Theory]
    [InlineData("md", "# Boil of 2031-03-08")]
    [InlineData("html", "<!DOCTYPE html>")]
    [InlineData("csv", "at,what,name,value,unit\n")]
    public void A_demo_session_is_told_in_each_form(string form, string begins)
    {
        var run = Captured.Run("report", Story.Demo("first-shutdown"), "--format", form);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.StartsWith(begins, run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_no_record_is_told_with_its_place()
    {
        var run = Captured.Run("report", Path.Combine(RepositoryFiles.Root, "README.md"));
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains("README.md:1:1: no session line was found", run.Errors, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boil_of_one_line_is_told_too()
    {
        var story = Story.Said(StreamRun.Tick(0));
        Assert.Contains("Not ended", MarkdownPages.Of(BoilReport.Of(story)), StringComparison.Ordinal);
        Assert.Contains("<svg", HtmlPages.Of(BoilReport.Of(story)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_practised_boil_says_so_in_its_title()
    {
        var story = Story.Said(StreamRun.Tick(0));
        var setting = new Guide.Knowledge.Setting(story.Setting.Flow, story.Setting.Rig, Guide.Knowledge.Guidance.Beginner, "test", practice: true);
        Assert.StartsWith("PRACTICE", BoilReport.Of(story with { Setting = setting }).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_person_typed_is_text_and_never_markup()
    {
        var story = Story.Said(StreamRun.Tick(0), StreamRun.Text(1, "note <script>x</script> | *a*"), StreamRun.Text(2, "note lot <b>"));
        var html = HtmlPages.Of(BoilReport.Of(story));
        Assert.DoesNotContain("<script", html, StringComparison.Ordinal);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
        Assert.Contains("\\<script\\>x\\</script\\> \\| \\*a\\*", MarkdownPages.Of(BoilReport.Of(story)), StringComparison.Ordinal);
    }

    /// <summary>Whoever does not see color still tells lines apart: no two kinds of line in one panel share both dash and width.</summary>
    [Fact]
    public void Lines_of_one_panel_differ_by_more_than_color()
    {
        XNamespace svg = "http://www.w3.org/2000/svg";
        var picture = BoilCharts.Of(Story.Of(Story.Demo("long-boil")));
        var lines = XDocument.Parse(picture.Svg).Descendants(svg + "polyline")
            .Select(line => ((string?)line.Attribute("stroke"), Form: $"{line.Attribute("stroke-width")?.Value} {line.Attribute("stroke-dasharray")?.Value}"))
            .Distinct().ToList();
        Assert.True(lines.Count >= 6);
        Assert.All(lines.GroupBy(line => line.Form), group => Assert.True(group.Count() <= 2, group.Key));
        var measured = lines.Single(line => line.Item1 == "#c2500a").Form;
        Assert.Single(lines, line => line.Form == measured);
    }

    [Fact]
    public void Nothing_of_the_charts_lies_outside_the_page()
    {
        XNamespace svg = "http://www.w3.org/2000/svg";
        foreach (var name in new[] { "first-shutdown", "float-stuck", "long-boil" })
        {
            var root = XDocument.Parse(BoilCharts.Of(Story.Of(Story.Demo(name))).Svg).Root!;
            var (width, height) = ((double)root.Attribute("width")!, (double)root.Attribute("height")!);
            foreach (var points in root.Descendants().Attributes("points"))
            {
                Assert.All(points.Value.Split(' ').Select(pair => pair.Split(',')), pair =>
                {
                    Assert.InRange(Number(pair[0]), 0, width);
                    Assert.InRange(Number(pair[1]), 0, height);
                });
            }

            Assert.All(root.Descendants(svg + "circle"), dot => Assert.InRange(Number(dot.Attribute("cx")!.Value), 60, width));
        }
    }

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
