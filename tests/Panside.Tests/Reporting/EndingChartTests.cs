using System.Xml.Linq;
using Panside.Reporting;
using Panside.Tests.Screen.Support;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Reporting;

/// <summary>The one picture that a report begins with: water still to leave, told and come.</summary>
public class EndingChartTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Lazy<BoilStory> Shutdown = new(() => Story.Of(Story.Demo("first-shutdown")));

    [Fact]
    public void What_came_begins_at_the_last_wood_and_falls_to_nothing_at_the_end()
    {
        var came = Points("#c2500a");
        Assert.InRange(came.Count, 5, 2000);

        // A reading may show that a little less had gone than was reckoned; on the whole it falls.
        Assert.All(came.Zip(came.Skip(1)), pair => Assert.True(pair.Second.X >= pair.First.X && pair.Second.Y >= pair.First.Y - 8));
        Assert.True(came[^1].Y > came[0].Y + 50);
        Assert.Equal(Bottom, came[^1].Y, 0.2);
        var told = Points("#174a7e");
        Assert.True(told[0].X < came[0].X);
        Assert.Equal(told[^1].X, came[^1].X, 0.2);
    }

    [Fact]
    public void Its_words_tell_what_was_told_at_the_last_wood_and_what_came()
    {
        var words = EndingChart.Of(Shutdown.Value)!.Words;
        Assert.Matches(@"^At the last wood [\d.]+ to [\d.]+ gal were told still to leave; [\d.]+ gal came, as reckoned\. The tank held [\d.]+ gal\.$", words);
        var residual = Shutdown.Value.Residuals.Last(one => one.At.Time <= Shutdown.Value.Wood[^1].At.Time).Forecast;
        Assert.Contains($"{residual.P5:0.#} to {residual.P95:0.#} gal", words);
    }

    [Fact]
    public void It_stands_before_the_evening_and_the_evening_before_the_batch()
    {
        var parts = BoilReport.Of(Shutdown.Value).Parts;
        Assert.Equal(
            ["Water still to leave, told and come", "The evening", "Debrief", "Batch sheet", "What happened"],
            parts.OfType<Heading>().Select(heading => heading.Text));
        Assert.IsType<Picture>(parts.SkipWhile(part => part is not Heading).ElementAt(1));
        var html = HtmlPages.Of(BoilReport.Of(Shutdown.Value));
        var names = XDocument.Parse("<x>" + string.Concat(parts.OfType<Picture>().Select(picture => picture.Svg)) + "</x>").Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(names.Distinct(), names);
        Assert.Contains("prefers-color-scheme: dark", html, StringComparison.Ordinal);
    }

    [Fact]
    public void A_boil_whose_wood_was_never_held_has_none() =>
        Assert.Null(EndingChart.Of(Story.Said(Tick(0), Text(1, "tank 20"), Text(2, "lit"), Text(3, "wood"), Text(20, "boil rolling"))));

    [Theory]
    [InlineData("first-shutdown")]
    [InlineData("long-boil")]
    [InlineData("float-stuck")]
    [InlineData("hand-fed")]
    [InlineData("refill")]
    public void Nothing_of_it_lies_outside_the_page(string name)
    {
        if (EndingChart.Of(Story.Of(Story.Demo(name))) is not { } picture)
        {
            Assert.Equal("float-stuck", name);
            return;
        }

        var root = XDocument.Parse(picture.Svg).Root!;
        var (width, height) = ((double)root.Attribute("width")!, (double)root.Attribute("height")!);
        Assert.All(root.Descendants().Attributes("points").SelectMany(points => Places(points.Value)), place =>
        {
            Assert.InRange(place.X, 0, width);
            Assert.InRange(place.Y, 0, height);
        });
    }

    [Fact]
    public void The_picture_in_the_docs_is_the_programs_own() => Pictures.SameFile(EndingChart.Of(Shutdown.Value)!.Svg, "docs", "ending.svg");

    /// <summary>The lower edge of the frame: the one border that comes back to where it began.</summary>
    private static double Bottom => Lines().Where(line => (string?)line.Attribute("stroke") == "#7b8794").Select(line => Places(line.Attribute("points")!.Value).ToList())
        .Single(places => places.Count == 5).Max(place => place.Y);

    private static List<(double X, double Y)> Points(string stroke) =>
        [.. Places(Lines().Where(line => (string?)line.Attribute("stroke") == stroke).MaxBy(line => line.Attribute("points")!.Value.Length)!.Attribute("points")!.Value)];

    private static IEnumerable<XElement> Lines() => XDocument.Parse(EndingChart.Of(Shutdown.Value)!.Svg).Descendants(Svg + "polyline");

    private static IEnumerable<(double X, double Y)> Places(string points) => points.Split(' ').Select(pair => pair.Split(',')).Select(pair => (Number(pair[0]), Number(pair[1])));

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
