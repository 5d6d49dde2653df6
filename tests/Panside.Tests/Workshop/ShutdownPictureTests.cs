using System.Globalization;
using System.Xml.Linq;
using Panside.Picturing;
using Panside.Tests.Reckon;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Workshop;

/// <summary>The picture in the docs, drawn by the command that they name.</summary>
public class ShutdownPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly Lazy<string> Drawn = new(() =>
    {
        using var scratch = new Scratch();
        var rig = Path.Combine(RepositoryFiles.Root, "flows", "rigs", "two-by-four-natural.yaml");
        var run = Captured.Workshop("picture", scratch["shutdown.svg"], "--rig", rig, "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, "", ""), (run.Status, run.Out, run.Errors));
        return File.ReadAllText(scratch["shutdown.svg"]);
    });

    private static XElement Picture => XDocument.Parse(Drawn.Value).Root!;

    [Fact]
    public void The_page_on_the_model_shows_the_programs_own_picture() => Pictures.SameFile(Drawn.Value, "docs", "shutdown.svg");

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        Assert.Equal("title description", (string?)Picture.Attribute("aria-labelledby"));
        Assert.Contains("two by four, natural draft", (string?)Picture.Element(Svg + "title"), StringComparison.Ordinal);
        Assert.Matches("last charge [0-9:]+, .*At the last charge: water still to leave [0-9.]+ to [0-9.]+ gal", (string?)Picture.Element(Svg + "desc"));
    }

    [Fact]
    public void Wide_bands_hold_narrow_ones_and_narrow_ones_the_median()
    {
        var bands = Picture.Elements(Svg + "polygon").Select(Points).Where(points => points.Length > 4).ToList();
        var medians = Picture.Elements(Svg + "polyline").Where(line => (string?)line.Attribute("stroke") == Ink.Median.Color)
            .Select(Points).Where(points => points.Length > 2).ToList();
        Assert.Equal((4, 2), (bands.Count, medians.Count));
        foreach (var (wide, narrow, median) in new[] { (bands[0], bands[1], medians[0]), (bands[2], bands[3], medians[1]) })
        {
            for (var (high, low) = (0, wide.Length - 1); high < low; high++, low--)
            {
                // Down the page is down in value.
                double[] down = [wide[high].Y, narrow[high].Y, median[high].Y, narrow[low].Y, wide[low].Y];
                Assert.Equal(down.Order(), down);
                Assert.Equal(wide[high].X, wide[low].X);
            }
        }
    }

    [Fact]
    public void Everything_lies_within_its_panels_and_the_page()
    {
        var frames = Picture.Elements(Svg + "polyline").Select(Points).Where(points => points.Length == 5 && points[0] == points[4]).ToList();
        Assert.Equal(3, frames.Count);
        var curves = Picture.Elements().Where(one => one.Name.LocalName is "polyline" or "polygon").Select(Points).Where(points => points.Length > 5);
        Assert.All(curves, curve => Assert.Contains(frames, frame => curve.All(point =>
            point.X >= frame[0].X && point.X <= frame[2].X && point.Y >= frame[0].Y && point.Y <= frame[2].Y)));
        var width = (double)Picture.Attribute("width")!;
        Assert.All(Picture.Elements(Svg + "text"), text => Assert.InRange((double)text.Attribute("x")!, 0, width));
    }

    [Fact]
    public void It_has_a_ground_of_its_own()
    {
        var ground = Picture.Elements().First(one => one.Name.LocalName is not ("title" or "desc"));
        Assert.Equal((Svg + "rect", "100%", "100%"), (ground.Name, (string?)ground.Attribute("width"), (string?)ground.Attribute("height")));
    }

    [Fact]
    public void A_file_that_is_no_picture_is_not_written_over()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["boil.jsonl"], "kept");
        var run = Captured.Workshop("picture", scratch["boil.jsonl"], "--home", scratch.Folder);
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains("expected a name that ends in .svg", run.Errors, StringComparison.Ordinal);
        Assert.Equal("kept", File.ReadAllText(scratch["boil.jsonl"]));
    }

    private static (double X, double Y)[] Points(XElement element) =>
        [.. ((string)element.Attribute("points")!).Split(' ').Select(pair => pair.Split(',')).Select(pair => (Number(pair[0]), Number(pair[1])))];

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
