using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Panside.Reporting;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Reporting;

/// <summary>The report opened and printed by a real browser.</summary>
public partial class BrowserTests
{
    private const string NoBrowser = "No chromium; .ci/run installs it.";

    /// <summary>What the page becomes: how much was fetched, how many marks have a size, whether anything is wider than the window.</summary>
    private const string Look = """
        <script>addEventListener('load', () => {
          const drawn = [...document.querySelectorAll('svg polyline, svg circle, svg polygon')].filter(one => { const box = one.getBBox(); return box.width + box.height > 0; }).length;
          const words = [...document.querySelectorAll('svg text')].filter(one => one.getBBox().width > 0).length;
          const fetched = performance.getEntriesByType('resource').length;
          const over = document.documentElement.scrollWidth - document.documentElement.clientWidth;
          document.body.dataset.look = [drawn, words, fetched, over].join(' ');
        });</script>
        """;

    private static readonly Lazy<string> Report = new(() => HtmlPages.Of(BoilReport.Of(Story.Of(Story.Demo("long-boil")))));

    [Theory]
    [InlineData(1200)]
    [InlineData(688)]
    [InlineData(360)]
    public void The_charts_are_drawn_nothing_is_fetched_and_nothing_is_wider_than_the_window(int width)
    {
        Assert.SkipUnless(Browser.IsThere, NoBrowser);
        using var scratch = new Scratch();
        var page = Report.Value.Replace("default-src 'none';", "default-src 'none'; script-src 'unsafe-inline';", StringComparison.Ordinal).Replace("</body>", Look + "</body>", StringComparison.Ordinal);
        File.WriteAllText(scratch["report.html"], page);
        var dom = Browser.Run(scratch["report.html"], "--dump-dom", $"--window-size={width},1400");
        var look = Looked().Match(dom).Groups["look"].Value.Split(' ').Select(number => int.Parse(number, CultureInfo.InvariantCulture)).ToArray();
        Assert.Equal(4, look.Length);
        Assert.InRange(look[0], 120, 2000);
        Assert.InRange(look[1], 50, 500);
        Assert.Equal(0, look[2]);
        Assert.Equal(0, look[3]);
    }

    [Fact]
    public void Nothing_in_the_file_names_anything_outside_it()
    {
        Assert.DoesNotMatch("""(?i)\b(src|href|srcset|action|poster|data)\s*=|url\(|@import|<(script|link|iframe|object|embed|img)""", Report.Value);
        Assert.Equal(["http://www.w3.org/2000/svg"], Address().Matches(Report.Value).Select(match => match.Value).Distinct());
    }

    [Theory]
    [InlineData("A4", 595, 842)]
    [InlineData("letter", 612, 792)]
    public void It_prints_on_either_paper_on_a_few_pages(string paper, int width, int height)
    {
        Assert.SkipUnless(Browser.IsThere, NoBrowser);
        using var scratch = new Scratch();

        // The file names no paper, so that the printer's is taken; a browser without a window has to be told of one.
        Assert.DoesNotMatch("@page[^}]*size", Report.Value);
        File.WriteAllText(scratch["report.html"], Report.Value.Replace("@page {", $"@page {{ size: {paper};", StringComparison.Ordinal));
        Browser.Run(scratch["report.html"], $"--print-to-pdf={scratch["report.pdf"]}", "--no-pdf-header-footer");
        var pages = Box().Matches(Encoding.Latin1.GetString(File.ReadAllBytes(scratch["report.pdf"])));
        Assert.InRange(pages.Count, 1, 4);
        Assert.All(pages, page =>
        {
            Assert.Equal(width, double.Parse(page.Groups["width"].Value, CultureInfo.InvariantCulture), 1.0);
            Assert.Equal(height, double.Parse(page.Groups["height"].Value, CultureInfo.InvariantCulture), 1.0);
        });
    }

    [Fact]
    public void The_charts_in_the_docs_are_the_programs_own() =>
        Pictures.SameFile(BoilCharts.Of(Story.Of(Story.Demo("long-boil"))).Svg, "docs", "report.svg");

    /// <summary>A browser's letters are its machine's, so the picture is not compared; it is made with the other ones.</summary>
    [Fact]
    public void A_picture_of_the_report_can_be_taken()
    {
        Assert.SkipUnless(Browser.IsThere, NoBrowser);
        using var scratch = new Scratch();
        File.WriteAllText(scratch["report.html"], Report.Value);
        var picture = Environment.GetEnvironmentVariable("PANSIDE_WRITE_PICTURES") == "1" ? Path.Combine(RepositoryFiles.Root, "docs", "report.png") : scratch["report.png"];
        Browser.Run(scratch["report.html"], $"--screenshot={picture}", "--window-size=840,1480");
        Assert.InRange(new FileInfo(picture).Length, 50_000, 1_000_000);
        Assert.True(File.Exists(Path.Combine(RepositoryFiles.Root, "docs", "report.png")));
    }

    [GeneratedRegex("data-look=\"(?<look>[0-9 -]+)\"")]
    private static partial Regex Looked();

    [GeneratedRegex("https?://[^\"'< ]+")]
    private static partial Regex Address();

    [GeneratedRegex(@"/MediaBox\s*\[\s*0\s+0\s+(?<width>[0-9.]+)\s+(?<height>[0-9.]+)\s*\]")]
    private static partial Regex Box();
}
