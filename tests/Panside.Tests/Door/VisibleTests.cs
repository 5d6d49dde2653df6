using System.Globalization;
using System.Text.Json;
using CsCheck;
using Panside.Commands;
using Panside.Faces;
using Panside.Guide.Words;
using Panside.Laws;
using Panside.Reporting;
using Panside.Tests.Checks;
using Panside.Tests.Reckon;
using Panside.Tests.Stream;

namespace Panside.Tests.Door;

/// <summary>No text from outside moves a terminal's cursor, turns its reading direction, hides a letter or begins a line.</summary>
public class VisibleTests
{
    /// <summary>An escape sequence, the same begun with a C1 control, a turn to the left, a zero width, a separator, a bell, a line of its own, a tag.</summary>
    private const string Nasty = "\u001b[2J\u009b31m\u202egpj\u200b\u2028\u0007\r\nx\U000E0041\u2066";

    private static readonly Gen<string> Texts = Gen.OneOf(
        Gen.String, Gen.Char[(char)0, (char)0x2FF].Array[0, 30].Select(letters => new string(letters)),
        Gen.OneOf("\u001b", "\u009b", "\u202e", "\u2066", "\u200f", "\uFEFF", "\u2028", "\u0085", "\n", "\r", "a", "é", "🍁", "\ud83c", "\udf41", "\U000E0041").Array[0, 12].Select(string.Concat));

    [Fact]
    public void No_control_and_nothing_without_a_sign_of_its_own_is_left_in_a_line() => Texts.Holds(
        text =>
        {
            var shown = Visible.Line(text);
            for (var at = 0; at < shown.Length; at += char.IsSurrogatePair(shown, at) ? 2 : 1)
            {
                Assert.True(shown[at] == '\t' || CharUnicodeInfo.GetUnicodeCategory(shown, at) is not (UnicodeCategory.Control or UnicodeCategory.Format
                    or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate));
            }

            Assert.Equal(shown, Visible.Line(shown));
            Assert.Equal(Visible.Lines(text), string.Join('\n', text.Split('\n').Select(Visible.Line)));
        },
        cases: 3000);

    [Theory]
    [InlineData("north shed, 2 × 4; 217.4 °F — ½ 🍁", "north shed, 2 × 4; 217.4 °F — ½ 🍁")]
    [InlineData("a\u001b[31mb", "a\\u001B[31mb")]
    [InlineData("a\nb", "a\\u000Ab")]
    [InlineData("\U000E0041", "\\uDB40\\uDC41")]
    public void What_has_a_sign_stays_and_what_has_none_is_shown_by_its_number(string text, string shown) => Assert.Equal(shown, Visible.Line(text));

    [Fact]
    public void A_text_written_letter_by_letter_is_shown_as_one_written_at_once() => Texts.Where(text => !text.Any(char.IsSurrogate)).Holds(
        text =>
        {
            using var said = new StringWriter();
            var writer = new GuardedWriter(said, isQuiet: false);
            foreach (var letter in text)
            {
                writer.Write(letter);
            }

            Assert.Equal(Visible.Lines(text), said.ToString());
        });

    [Fact]
    public void Names_of_rigs_arguments_and_files_reach_no_terminal_with_controls_in_them()
    {
        using var scratch = new Scratch();
        using var aside = new Aside(scratch.Folder);
        var rig = Library.BuiltIn("rigs/" + Library.BuiltInRig);
        var name = rig.Split('\n').First(line => line.StartsWith("rig:", StringComparison.Ordinal));
        File.WriteAllText(scratch["rig.yaml"], rig.Replace(name, $"rig: {JsonSerializer.Serialize(Nasty)}", StringComparison.Ordinal));
        File.WriteAllText(scratch["key.yaml"], rig + $"\n{JsonSerializer.Serialize(Nasty)}: 1\n");
        File.WriteAllText(scratch["bad\u001b[31m\u202e.yaml"], "rig: [");
        File.WriteAllText(scratch["table.csv"], "at,what,name,value,unit\n2031-03-08T17:00:00-05:00,reading,tank-volume,20,gal\n");
        var journal = scratch["sessions/boil.jsonl"];
        Captured[] runs =
        [
            Captured.Run("import", scratch["table.csv"], "--rig", scratch["rig.yaml"], "--journal", journal),
            Typed.Into([$"note {Nasty}", Nasty, "status"], "boil", "--plain", "--rig", scratch["rig.yaml"]),
            Captured.Run("check", scratch["rig.yaml"], scratch["key.yaml"], scratch["bad\u001b[31m\u202e.yaml"], journal),
            Captured.Run("replay", "--plain", journal),
            Captured.Run("report", journal),
            Captured.Run("season", scratch["sessions"]),
            Captured.Run("season", "--csv", scratch["sessions"]),
            Captured.Run("season", "--json", scratch["sessions"]),
            Captured.Run("check", Nasty),
            Captured.Run(Nasty),
            Captured.Run("boil", "--guidance", Nasty),
            Captured.Run("reckon", "draw-point", "--boiling-water", Nasty),
        ];
        Assert.All(runs, run =>
        {
            Assert.True(run.Status != ExitStatus.OurFault, run.Errors);
            Assert.Equal(run.Out + run.Errors, Visible.Lines(run.Out + run.Errors));
        });
        Assert.Contains(runs, run => run.Out.Contains("\\u001B[2J", StringComparison.Ordinal));
        using var json = JsonDocument.Parse(runs[7].Out);
        Assert.Contains(Nasty, Strings(json.RootElement), StringComparison.Ordinal);
    }

    [Fact]
    public void A_line_on_the_stream_holds_no_control()
    {
        var run = StreamRun.Of([StreamRun.Tick(0), StreamRun.Text(1, Nasty), StreamRun.Text(1, "note " + Nasty)]);
        Assert.DoesNotContain(run.Output, letter => char.IsControl(letter) && letter != '\n');
    }

    [Theory]
    [InlineData("=cmd|'/C calc'!A0", "'=cmd|'/C calc'!A0")]
    [InlineData("+1+1", "'+1+1")]
    [InlineData("@SUM(A1)", "'@SUM(A1)")]
    [InlineData("-2+3", "'-2+3")]
    [InlineData("'=1", "''=1")]
    [InlineData("-2.5", "-2.5")]
    [InlineData("north shed", "north shed")]
    [InlineData("'tis", "'tis")]
    public void A_name_is_no_formula_in_a_table_and_comes_back_as_it_was(string name, string cell)
    {
        Assert.Equal(cell + "\n", Csv.Of([[name]]));
        Assert.Equal(name, Assert.Single(Csv.Rows(cell).Single().Cells));
    }

    [Fact]
    public void A_table_comes_back_as_it_was() => Gen.OneOf("=", "+", "-", "@", "'", "1", "a", ",", "\"", "\n").Array[1, 6].Select(string.Concat).Where(cell => cell.Trim() == cell).Holds(
        cell => Assert.Equal([cell, "end"], Csv.Rows(Csv.Of([[cell, "end"]])).Single().Cells), cases: 500);

    private static string Strings(JsonElement element) => element.ValueKind switch
    {
        JsonValueKind.String => element.GetString() + "\n",
        JsonValueKind.Array => string.Concat(element.EnumerateArray().Select(Strings)),
        JsonValueKind.Object => string.Concat(element.EnumerateObject().Select(property => Strings(property.Value))),
        _ => "",
    };
}
