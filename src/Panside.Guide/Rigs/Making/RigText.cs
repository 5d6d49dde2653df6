using System.Text;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs.Making;

/// <summary>Answers as the text of a rig file that a person can read and change.</summary>
internal static class RigText
{
    /// <summary>A pan that runs deeper is flooded this much deeper than it runs: common practice, no source.</summary>
    private static readonly Length OverRunDepth = Length.FromInches(1);

    private const int NoteColumn = 32;

    /// <summary>The text. What was not answered and must stand there is written as for the built-in rig.</summary>
    public static string Of(RigAnswers answers)
    {
        var text = new StringBuilder()
            .Append("# A rig file: what this boiler is. Change what is wrong; 'panside check' tells every slip (docs/rigs.md).\n")
            .Append("# A line that begins with # is not used: there the usual for a pan of this size is taken.\n");
        Line(text, "", "rig", Quoted(answers["name"]?.Value ?? UsualName(answers)), "a name, shown and kept in the record");
        Line(text, "", "units", answers["units"]?.Value ?? UnitSystem.Us.Code, "what is shown, and meant where no unit is typed");
        Line(text, "", "altitude", answers["altitude"], "0 ft", "above the sea");
        text.Append("pan:\n");
        Line(text, "  ", "length", answers["length"]?.Value ?? RigLimit.PanLength.Example, "inside, from the door's end to the stack's");
        Line(text, "  ", "width", answers["width"]?.Value ?? RigLimit.PanWidth.Example, "inside");
        Line(text, "  ", "channels", answers["channels"], "3", "1 is an undivided pan");
        Depths(text, answers);
        text.Append("fire:\n");
        Line(text, "  ", "draft", answers["draft"]?.Value ?? "forced", "forced by a blower, or natural");
        Line(text, "  ", "firebrick", answers["brick"], "120 lb", "what the fire heats");
        Line(text, "  ", "charge", answers["charge"], "7 lb", "wood, at one opening of the door");
        Line(text, "  ", "interval", answers["interval"], "8 min", "from one charge to the next");
        Line(text, "  ", "wood", answers["wood"], "{ species: sugar maple, moisture: 20 % }", "water in the wood, of its dry weight");
        text.Append("feed:\n");
        Line(text, "  ", "float", answers["float"]?.Value ?? "true", "whether a float valve holds the depth");
        Line(text, "  ", "tank", answers["tank"], "35 gal", "what the head tank holds, full");
        return text.ToString();
    }

    /// <summary>The name of a rig that was given none.</summary>
    public static string UsualName(RigAnswers answers) =>
        $"my rig, {answers["length"]?.Value ?? RigLimit.PanLength.Example} by {answers["width"]?.Value ?? RigLimit.PanWidth.Example}";

    private static void Depths(StringBuilder text, RigAnswers answers)
    {
        var (run, wall) = (answers["depth"]?.Value, answers["wall"]?.Value);
        text.Append(run is null && wall is null ? "  # depth:\n" : "  depth:\n");
        var indent = run is null && wall is null ? "  #   " : "    ";
        Line(text, indent, "run", answers["depth"], "1 1/2 in", "of the sap while it boils");
        if (run is not null && MeasureText.Read(run, Dimension.Length, null).Measure is { } measure
            && UnitSystem.Length(measure) + OverRunDepth is var deeper && deeper > RigDefaults.FloodDepth)
        {
            Line(text, indent, "flood", answers.Units.From(deeper).ToString(), "for a shutdown: an inch deeper than it runs");
        }

        Line(text, indent, "wall", answers["wall"], "8 in", "from the bottom to the rim");
    }

    /// <summary>A line that is used where it was answered, and shows how to write it where it was not.</summary>
    private static void Line(StringBuilder text, string indent, string key, RigAnswer? answer, string example, string note)
    {
        if (answer?.Value is { } value)
        {
            Line(text, indent, key, value, answer.Note.Length > 0 ? $"{note}: {answer.Note}" : note);
        }
        else
        {
            Line(text, indent.Contains('#', StringComparison.Ordinal) ? indent : indent + "# ", key, example, note);
        }
    }

    private static void Line(StringBuilder text, string indent, string key, string value, string note) =>
        text.Append($"{indent}{key}: {value}".PadRight(NoteColumn)).Append(" # ").Append(note).Append('\n');

    private static string Quoted(string name) => $"'{name.Replace("'", "''", StringComparison.Ordinal)}'";
}
