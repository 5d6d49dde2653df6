using System.Globalization;
using System.Xml.Linq;
using Panside.Journal;
using Panside.Reporting;
using Panside.Tests.Reckon;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Reporting;

/// <summary>The season as pictures: its days, its boils, and what they were told ahead beside what came.</summary>
public class SeasonPictureTests
{
    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    private static readonly string Demos = Path.Combine(RepositoryFiles.Root, "demo-sessions");

    private static readonly Lazy<IReadOnlyList<Picture>> Drawn = new(() =>
        [.. SeasonReport.Of(SeasonBook.Of(Demos, practice: false).WithTold(Demos), practice: false).Parts.OfType<Picture>()]);

    [Fact]
    public void A_season_has_three_pictures_that_stand_in_one_page_without_a_name_twice()
    {
        Assert.Equal(3, Drawn.Value.Count);
        var names = XDocument.Parse("<x>" + string.Concat(Drawn.Value.Select(picture => picture.Svg)) + "</x>").Descendants().Attributes("id").Select(id => id.Value).ToList();
        Assert.Equal(names.Distinct(), names);
        Assert.Equal(3, Captured.Run("season", Demos, "--html").Out.Split("<figure>").Length - 1);
        Assert.Contains("Told ahead, and what came:", Captured.Run("season", Demos).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Each_picture_stands_under_what_it_shows_and_no_word_in_the_wide_table_is_broken()
    {
        var page = Captured.Run("season", Demos, "--html").Out;
        Assert.Equal(
            ["Sap, syrup and yield, day by day", "How fast it boiled, and the wood for it", "What was told ahead, and what came", "Every boil"],
            page.Split("<h2>").Skip(1).Select(part => part[..part.IndexOf('<', StringComparison.Ordinal)]));
        Assert.Equal(3, page.Split("</h2>\n<figure>").Length - 1);
        Assert.Contains("<table class=\"many\">", page, StringComparison.Ordinal);
        Assert.Contains(".many th, .many td { overflow-wrap: break-word;", page, StringComparison.Ordinal);
    }

    [Fact]
    public void The_days_have_a_bar_of_sap_for_every_boil_and_a_dot_of_yield_for_every_one_that_has_it()
    {
        var book = SeasonBook.Of(Demos, practice: false);
        Assert.Equal(book.Boils.Count(boil => boil.Balance is { Liters: > 0 }), Of(0, "circle").Count());
        Assert.Equal(book.Boils.Count(boil => boil.Sap is not null), Of(0, "polyline").Count(line => (string?)line.Attribute("stroke") == "#52606d") - 1);
    }

    [Fact]
    public void The_boils_have_a_dot_of_rate_each_and_wood_only_for_those_that_drew_syrup()
    {
        var book = SeasonBook.Of(Demos, practice: false);
        Assert.Equal(book.Boils.Count(boil => boil.LitersPerHour is not null), Of(1, "circle").Count() - 1);
        Assert.Equal(book.Boils.Count(boil => boil.KilogramsPerSyrup is not null), Of(1, "polyline").Count(line => (string?)line.Attribute("stroke") == "#52606d") - 1);

        // By hand from the long boil's outcome: 147 lb of wood, 0.94 gal of syrup.
        var column = SeasonColumns.Of(book).Single(one => one.Key == "wood-per-syrup");
        Assert.Equal(147 / 0.94, column.Of(book.Boils.Single(boil => boil.File == "long-boil.jsonl"))!.Value, 0.5);
    }

    [Fact]
    public void Wood_for_all_syrup_counts_the_wood_of_boils_that_drew_none()
    {
        var book = SeasonBook.Of(Demos, practice: false);
        var all = SeasonColumns.Of(book).Single(one => one.Key == "wood-per-syrup").Total!.Value;
        Assert.Equal(book.Boils.Where(boil => boil.Wood is not null).Sum(boil => boil.Wood!.Value.Kilograms) / book.Boils.Sum(boil => boil.Syrup!.Value.Liters), all * 0.45359237 / 3.785411784, 1e-6);
    }

    [Fact]
    public void What_was_told_ahead_stands_beside_what_came_as_the_record_has_it()
    {
        // What was said in the long boil: the draw opened at 16:57, and the telling nearest to half an hour before it stands in the record.
        var told = Told("long-boil");
        var draw = told.Single(one => one.What == ToldAhead.Kind.FirstDraw);
        var record = RecordGlance.Read(Story.Demo("long-boil"));
        var opened = record.Said.OfType<Guide.Lines.Did>().First(did => did.Name == Guide.Lines.DeedName.OpenDraw).At.Time;
        Assert.Equal(new TimeOnly(16, 57, 5), TimeOnly.FromDateTime(opened.DateTime));
        Assert.InRange(draw.Came, 20, 40);
        Assert.Contains(
            record.Answers.OfType<Guide.Lines.ForecastLine>(),
            line => line.Forecast.Name == "minutes-to-draw" && line.Forecast.P50 == draw.Likely && double.Abs((opened - line.At!.Value.Time).TotalMinutes - draw.Came) < 1e-9);

        // The last wood at 18:25; seen still at 18:58 after a look at 18:48 at which it was not.
        var still = told.Single(one => one.What == ToldAhead.Kind.Still);
        Assert.InRange(still.Came, 20, 33);
        Assert.Equal(10, still.Came - still.CameAfter, 0.2);
        Assert.Equal(3, told.Count);
    }

    [Fact]
    public void A_last_wood_that_the_operator_chose_is_no_test_of_its_forecast()
    {
        Assert.DoesNotContain(Told("flat-by-hand"), one => one.What == ToldAhead.Kind.LastWood);
        Assert.Contains(Told("first-shutdown"), one => one.What == ToldAhead.Kind.LastWood);
    }

    [Theory]
    [InlineData(10, 20, 30, 25, 25, 5, true)]
    [InlineData(10, 20, 30, 15, 25, 0, true)]
    [InlineData(10, 20, 30, 40, 45, 20, false)]
    [InlineData(10, 20, 30, 28, 45, 8, true)]
    [InlineData(10, 20, 30, 5, 5, 15, false)]
    public void A_miss_is_what_lies_between_the_middle_and_what_came_and_looks_leave_open_what_they_do(
        double soonest, double likely, double latest, double after, double came, double miss, bool held)
    {
        var told = new ToldAhead(ToldAhead.Kind.Still, soonest, likely, latest, after, came);
        Assert.Equal((miss, held), (told.Miss, told.IsHeld));
    }

    [Fact]
    public void A_record_that_is_damaged_or_has_no_end_tells_nothing_and_breaks_nothing()
    {
        using var scratch = new Scratch();
        var lines = File.ReadAllLines(Story.Demo("long-boil"));
        File.WriteAllLines(scratch["open.jsonl"], lines.Take(400));
        File.WriteAllLines(scratch["torn.jsonl"], [.. lines.Where((_, index) => index < 20 || index % 3 != 0).Select((line, index) => index % 7 == 6 ? line[..(line.Length / 2)] : line), lines[^2], lines[^1]]);
        var book = SeasonBook.Of(scratch.Folder, practice: false).WithTold(scratch.Folder);
        Assert.Equal(2, book.Boils.Count);
        Assert.Empty(book.Boils.Single(boil => boil.File == "open.jsonl").Told);
        Assert.NotEmpty(HtmlPages.Of(SeasonReport.Of(book, practice: false)));
    }

    [Fact]
    public void Nothing_lies_outside_a_page()
    {
        foreach (var picture in Drawn.Value)
        {
            var root = XDocument.Parse(picture.Svg).Root!;
            var (width, height) = ((double)root.Attribute("width")!, (double)root.Attribute("height")!);
            var places = root.Descendants().Attributes("points").SelectMany(points => points.Value.Split(' ')).Select(pair => pair.Split(','))
                .Concat(root.Descendants().Where(one => one.Attribute("cx") is not null).Select(one => new[] { one.Attribute("cx")!.Value, one.Attribute("cy")!.Value }))
                .Concat(root.Descendants(Svg + "text").Select(one => new[] { one.Attribute("x")!.Value, one.Attribute("y")!.Value })).ToList();
            Assert.NotEmpty(places);
            Assert.All(places, place =>
            {
                Assert.InRange(double.Parse(place[0], CultureInfo.InvariantCulture), 0, width);
                Assert.InRange(double.Parse(place[1], CultureInfo.InvariantCulture), 0, height);
            });
        }
    }

    [Fact]
    public void The_pictures_in_the_docs_are_the_programs_own()
    {
        Pictures.SameFile(Drawn.Value[0].Svg, "docs", "season-days.svg");
        Pictures.SameFile(Drawn.Value[1].Svg, "docs", "season-boils.svg");
        Pictures.SameFile(Drawn.Value[2].Svg, "docs", "season-told.svg");
    }

    private static IReadOnlyList<ToldAhead> Told(string name)
    {
        var boil = SeasonBook.Of(Demos, practice: false).Boils.Single(boil => boil.File == name + ".jsonl");
        return [.. ToldAhead.Of(RecordGlance.Read(Story.Demo(name)), boil.FiredHours)];
    }

    private static IEnumerable<XElement> Of(int picture, string element) => XDocument.Parse(Drawn.Value[picture].Svg).Descendants(Svg + element);
}
