using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Picturing;
using Panside.Reporting;

namespace Panside.Tests.Reporting;

/// <summary>The colors of pictures and pages, in print and on a dark screen, measured as the screen's are.</summary>
public partial class InkTests
{
    /// <summary>Grid lines are there to be seen only by who looks for them.</summary>
    private static readonly (string Name, string Color, double Least)[] Inks =
    [
        ("words", Ink.Text, Contrast.OfText), ("came, read", Ink.Truth.Color, Contrast.OfText), ("told, its middle", Ink.Median.Color, Contrast.OfText),
        ("told, its ends", Ink.Forecast, Contrast.OfText), ("tank, wood", Ink.Tank.Color, Contrast.OfText), ("what happened", Ink.Mark.Color, Contrast.OfText),
        ("frame", Ink.Border.Color, Contrast.OfMarks),
    ];

    [Fact]
    public void O17_every_ink_stands_out_from_its_ground_in_print_and_in_the_dark() => Assert.All(Inks, ink =>
    {
        Assert.True(Printed(ink.Color) >= ink.Least, $"{ink.Name}: {Printed(ink.Color):0.0}");
        Assert.True(Darkened(ink.Color) >= ink.Least, $"{ink.Name} in the dark: {Darkened(ink.Color):0.0}");
    });

    [Fact]
    public void O17_lines_and_words_stand_out_from_the_band_of_what_was_told_too()
    {
        var band = Contrast.Laid(Ink.Forecast, Ink.Band, Ink.Ground);
        foreach (var (color, least) in new[] { (Ink.Text, Contrast.OfText), (Ink.Median.Color, Contrast.OfMarks), (Ink.Truth.Color, Contrast.OfMarks), (Ink.Tank.Color, Contrast.OfMarks) })
        {
            Assert.True(Contrast.Of(Contrast.Parts(color), band) >= least, color);
            Assert.True(Contrast.Of(Contrast.Inverted(Contrast.Parts(color)), Contrast.Inverted(band)) >= least, color + " in the dark");
        }
    }

    [Fact]
    public void O17_the_words_of_the_page_stand_out_from_it_in_the_light_and_in_the_dark_and_the_dark_is_made_as_it_is_measured()
    {
        var page = HtmlPages.Of(new("Title", []));
        var pairs = Pair().Matches(page).Select(pair => Contrast.Of(Whole(pair.Groups["text"].Value), Whole(pair.Groups["ground"].Value))).ToList();
        Assert.Equal(2, pairs.Count);
        Assert.All(pairs, contrast => Assert.True(contrast >= Contrast.OfText, $"{contrast:0.0}"));
        Assert.Contains("svg { filter: invert(.92) hue-rotate(180deg); }", page, StringComparison.Ordinal);
    }

    /// <summary>Every color that a picture of the season or of a boil is drawn in is one of those that are measured, or a grid line's.</summary>
    [Fact]
    public void No_picture_has_a_color_that_is_not_measured()
    {
        var demos = Path.Combine(RepositoryFiles.Root, "demo-sessions");
        var story = Story.Of(Story.Demo("first-shutdown"));
        var pictures = SeasonReport.Of(SeasonBook.Of(demos, practice: false).WithTold(demos), practice: false).Parts.Concat(BoilReport.Of(story).Parts).OfType<Picture>().ToList();
        Assert.Equal(5, pictures.Count);
        var colors = pictures.SelectMany(picture => Color().Matches(picture.Svg)).Select(color => color.Groups["color"].Value).Distinct();
        Assert.Empty(colors.Except([.. Inks.Select(ink => ink.Color), Ink.Ground, Ink.Grid.Color]));
    }

    [Fact]
    public void The_page_on_reports_has_the_table_of_contrasts() =>
        Assert.Contains(string.Join('\n', Table()) + "\n", RepositoryFiles.Read("docs", "report.md"), StringComparison.Ordinal);

    private static IEnumerable<string> Table()
    {
        yield return "| ink | print | dark | at least |";
        yield return "| --- | --: | --: | --: |";
        foreach (var (name, color, least) in Inks)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"| {name} | {Printed(color):0.0} | {Darkened(color):0.0} | {least:0.0} |");
        }
    }

    private static double Printed(string color) => Contrast.Of(color, Ink.Ground);

    private static double Darkened(string color) => Contrast.Of(Contrast.Inverted(Contrast.Parts(color)), Contrast.Inverted(Contrast.Parts(Ink.Ground)));

    private static string Whole(string color) => color.Length == 4 ? string.Concat(color.Skip(1).SelectMany(letter => new[] { letter, letter })) : color;

    [GeneratedRegex(@"body \{[^}]*\bcolor: (?<text>#[0-9a-f]+); background: (?<ground>#[0-9a-f]+);")]
    private static partial Regex Pair();

    [GeneratedRegex(@"(?:fill|stroke)=""(?<color>#[0-9a-f]{6})""")]
    private static partial Regex Color();
}
