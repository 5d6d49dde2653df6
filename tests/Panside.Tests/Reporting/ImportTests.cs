using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Reporting;
using Panside.Tests.Reckon;
using Panside.Tests.Records;

namespace Panside.Tests.Reporting;

public class ImportTests
{
    private const string Head = "at,what,name,value,unit\n";

    [Fact]
    public void What_a_boil_gave_as_csv_is_brought_in_again_with_the_same_facts_and_sums()
    {
        using var scratch = new Scratch();
        var story = Story.Of(Story.Demo("long-boil"));
        File.WriteAllText(scratch["boil.csv"], FactRows.Of(story));
        var run = Captured.Run("import", scratch["boil.csv"], "--journal", scratch["boil.jsonl"], "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        Assert.Equal($"{story.Facts.Count} of {story.Facts.Count} rows taken into {scratch["boil.jsonl"]}\n", run.Out);

        var again = Story.Of(scratch["boil.jsonl"]);
        Assert.Equal(FactRows.Of(story), FactRows.Of(again));
        Assert.Equal(story.Outcome!.Wood, again.Outcome!.Wood);
        Assert.Equal(story.Outcome.SyrupMade, again.Outcome.SyrupMade);
        Assert.Equal(story.Outcome.SapUsed!.Value.Value, again.Outcome.SapUsed!.Value.Value, 1.0);
        Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["boil.jsonl"])).Exit);
    }

    [Fact]
    public void A_notebooks_few_rows_make_a_boil_of_the_book_that_claims_no_safety()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["notebook.csv"], "\uFEFF" + Head.TrimEnd() + """

            2031-03-08T12:00:00-05:00,reading,tank-volume,30,gal
            2031-03-08T12:01:00-05:00,reading,sap-brix,2.1,Brix
            2031-03-08T12:05:00-05:00,did,lit-fire
            2031-03-08T12:30:00-05:00,observed,boil,rolling,
            2031-03-08T18:00:00-05:00,did,close-draw,1,qt
            2031-03-08T19:00:00-05:00,reading,tank-volume,4,gal
            """.ReplaceLineEndings("\r\n"));
        Directory.CreateDirectory(scratch["sessions"]);
        var run = Captured.Run("import", scratch["notebook.csv"], "--journal", scratch["sessions/a.jsonl"], "--home", scratch.Folder);
        Assert.Equal((ExitStatus.Done, ""), (run.Status, run.Errors));
        var boil = Assert.Single(SeasonBook.Of(scratch["sessions"], false).Boils);
        Assert.Equal((true, false, 26.0, 0.25, 2.1), (boil.HasEnded, boil.IsSafe, double.Round(boil.Sap!.Value.UsGallons, 1), double.Round(boil.Syrup!.Value.UsGallons, 3), boil.SapBrix));

        // Nobody was asked at the gate: the record, the book and the report say so, and nothing says unsafe.
        Assert.False(boil.IsJudged);
        Assert.Contains("\"safe\":false,\"judged\":false", File.ReadAllText(scratch["sessions/a.jsonl"]), StringComparison.Ordinal);
        var season = SeasonTests.Told(scratch["sessions"]);
        Assert.Contains("not judged", season, StringComparison.Ordinal);
        var report = Captured.Run("report", scratch["sessions/a.jsonl"]).Out;
        Assert.Contains("Brought in from a table: whether it was clear to leave was not judged.", report, StringComparison.Ordinal);
        foreach (var said in new[] { season, report, Captured.Run("season", scratch["sessions"], "--csv").Out })
        {
            Assert.DoesNotContain("unsafe", said, StringComparison.Ordinal);
            Assert.DoesNotContain("without being clear", said, StringComparison.Ordinal);
        }

        Assert.Equal(ExitStatus.Done, Captured.Run("check", scratch["sessions/a.jsonl"]).Status);
        Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["sessions/a.jsonl"])).Exit);
    }

    [Theory]
    [InlineData("2031-03-08T12:00:00-05:00,reading,tank-volume,sixty,gal", ":2:1: 'value' is \"sixty\", expected a number")]
    [InlineData("2031-03-08T12:00:00-05:00,reading,tank-volume,60,lb", ":2:1: 'unit' is \"lb\", expected one of gal")]
    [InlineData("2031-03-08T12:00:00-05:00,reading,tank,60,gal", ":2:1: 'reading' is \"tank\", expected one of tank-volume")]
    [InlineData("yesterday,reading,tank-volume,60,gal", ":2:1: 'at' is \"yesterday\", expected RFC 3339")]
    [InlineData("2031-03-08T12:00:00-05:00,saw,boil,rolling,", ":2:1: Nothing is said, expected exactly one of")]
    [InlineData("2031-03-08T12:00:00-05:00,did,lit-fire,,,,", "the row has 7 cells")]
    [InlineData("2031-03-08T12:00:00-05:00,did,lit-fire\n2031-03-08T11:00:00-05:00,did,add-wood", ":3:1: the time goes back")]
    [InlineData("", ":1:1: there is no row")]
    public void A_faulty_row_is_told_with_its_place_and_leaves_nothing_behind(string rows, string told)
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["boil.csv"], Head + rows);
        var run = Captured.Run("import", scratch["boil.csv"], "--journal", scratch["boil.jsonl"], "--home", scratch.Folder);
        Assert.Equal(ExitStatus.Unusable, run.Status);
        Assert.Contains(told, run.Errors, StringComparison.Ordinal);
        Assert.False(File.Exists(scratch["boil.jsonl"]));
    }

    [Fact]
    public void What_no_rig_could_have_is_left_out_and_told_and_a_record_is_never_written_over()
    {
        using var scratch = new Scratch();
        File.WriteAllText(scratch["boil.csv"], Head + "2031-03-08T12:00:00-05:00,reading,draw-temperature,900,degF\n2031-03-08T12:01:00-05:00,reading,tank-volume,20,gal\n");
        var run = Captured.Run("import", scratch["boil.csv"], "--journal", scratch["boil.jsonl"], "--home", scratch.Folder);
        Assert.Equal(ExitStatus.Wrong, run.Status);
        Assert.Contains("boil.csv:2:1:", run.Errors, StringComparison.Ordinal);
        Assert.StartsWith("1 of 2 rows", run.Out, StringComparison.Ordinal);
        Assert.Single(Story.Of(scratch["boil.jsonl"]).Facts, fact => fact is Reading);
        Assert.Equal(ExitStatus.Unusable, Captured.Run("import", scratch["boil.csv"], "--journal", scratch["boil.jsonl"], "--home", scratch.Folder).Status);
    }
}
