using Panside.Guide.Lines;
using Panside.Reporting;
using static Panside.Tests.Stream.StreamRun;

namespace Panside.Tests.Reporting;

/// <summary>What a report is made from: what was taken as true, and nothing that was taken back or doubted.</summary>
public class StoryTests
{
    [Fact]
    public void Wood_and_draws_of_the_long_boil_come_to_its_outcome()
    {
        var story = Story.Of(Story.Demo("long-boil"));
        Assert.Equal(story.Outcome!.Wood!.Value.Value, story.Wood.Sum(one => one.Value), 0.01);
        Assert.Equal(21, story.Wood.Count);
        Assert.Equal([2, 1.75], story.Draws.Select(one => double.Round(one.Value, 6)));
        Assert.Equal(story.Facts.Count(fact => fact is Did { Name.Code: "add-wood" or "lit-fire" }), story.Wood.Count);
    }

    [Fact]
    public void What_was_taken_back_is_not_told()
    {
        var story = Story.Said(Tick(0), Text(1, "tank 20"), Text(2, "lit"), Text(3, "wood"), Text(4, "wood 12 lb"), Text(5, "undo"), Text(6, "boil rolling"), Text(7, "undo"), Text(8, "tank 19"), Text(9, "undo"));
        Assert.Equal(["tank-volume", "lit-fire", "add-wood"], story.Facts.Select(fact => fact is Reading reading ? reading.Name.Code : ((Did)fact).Name.Code));
        Assert.Equal(2, story.Wood.Count);
    }

    [Fact]
    public void A_draw_told_anew_is_one_draw_of_the_later_amount()
    {
        var story = Story.Said(
            Tick(0), Text(1, "tank 20"), Text(2, "lit"), Text(20, "boil rolling"), Text(30, "open"), Text(32, "drew 2 qt"), Text(33, "drawn 1 1/2 qt"));
        Assert.Equal(1.5, story.Draws.Sum(one => one.Value), 1e-9);
    }

    [Fact]
    public void A_questioned_reading_that_was_dropped_is_not_told()
    {
        var story = Story.Of(Story.Demo("first-shutdown"));
        Assert.All(story.Of(ReadingName.DrawTemperature), one => Assert.InRange(one.Value, 205, 222));
    }

    [Fact]
    public void Notes_fill_the_batch_sheet_and_what_nobody_told_is_left_to_the_hand()
    {
        var sheet = BatchSheet.Of(Story.Said(Tick(0), Text(1, "note lot 7"), Text(2, "note color amber"), Text(3, "note lots of steam")));
        Assert.Contains(sheet.Rows, row => row is ["Lot number", "7"]);
        Assert.Contains(sheet.Rows, row => row is ["Color class", "amber"]);
        Assert.Contains(sheet.Rows, row => row[0] == "Containers" && row[1].All(letter => letter == '_'));
    }

    [Fact]
    public void The_sugar_of_the_sap_is_told_as_syrup_beside_what_was_drawn()
    {
        // 34 gal less 0.1 at 2.3 Brix; S = 88.2 / x - 0.32 gives 0.89 gal for 66.9 Brix.
        var story = Story.Of(Story.Demo("long-boil"));
        var syrup = MassBalance.Syrup(story.Outcome, story.Units, story.Setting.Rig.Target)!.Value;
        Assert.Equal(33.9 / ((88.2 / 2.3) - 0.32), syrup.UsGallons, 0.02);
    }

    [Fact]
    public void Every_fact_of_the_csv_is_a_line_that_a_program_could_say()
    {
        var rows = Csv.Rows(FactRows.Of(Story.Of(Story.Demo("float-stuck")))).Skip(1).ToList();
        Assert.True(rows.Count > 30);
        Assert.All(rows, row => Assert.IsNotType<Unreadable>(FactRows.Line(row.Cells).Line));
    }

    [Fact]
    public void A_cell_with_commas_quotes_and_line_breaks_is_read_as_it_was_written()
    {
        string[] cells = ["a,b", "say \"yes\"", "two\nlines", "½ 🍁", "x"];
        Assert.Equal(cells, Csv.Rows(Csv.Of([cells])).Single().Cells);
        Assert.Equal([1, 4], Csv.Rows("\"a\nb\",c\n\nd,e").Select(row => row.Line));
    }
}
