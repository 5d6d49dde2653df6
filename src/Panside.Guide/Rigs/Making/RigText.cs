using System.Globalization;
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
    /// <param name="answers">The answers.</param>
    /// <param name="usual">The rig that they make: what was not answered is shown beside the rest; null where nobody reads it.</param>
    public static string Of(RigAnswers answers, Rig? usual = null)
    {
        var units = answers.Units;
        var text = new StringBuilder()
            .Append("# A rig file: what this boiler is. Change what is wrong; 'panside check' tells every slip.\n")
            .Append("# A line that begins with # is not used: it shows the usual for such a pan, which is taken.\n");
        Line(text, "", "rig", Quoted(answers["name"]?.Value ?? UsualName(answers)), "a name, shown and kept in the record");
        Line(text, "", "units", answers["units"]?.Value ?? UnitSystem.Us.Code, "what is shown, and meant where no unit is typed");
        Line(text, "", "altitude", answers["altitude"], usual is null ? null : units == UnitSystem.Metric ? "0 m" : "0 ft", "above the sea");
        text.Append("pan:\n");
        Line(text, "  ", "length", answers["length"]?.Value ?? RigLimit.PanLength.Example, "inside, from the door's end to the stack's");
        Line(text, "  ", "width", answers["width"]?.Value ?? RigLimit.PanWidth.Example, "inside");
        Line(text, "  ", "channels", answers["channels"], usual?.Channels.ToString(CultureInfo.InvariantCulture), "1 is an undivided pan");
        Depths(text, answers, usual);
        text.Append("fire:\n");
        if (answers.IsBurner)
        {
            Line(text, "  ", "kind", answers["draft"]!.Value!, "wood, gas, oil or electric");
            Line(text, "  ", "boils", answers["boils"], usual is null ? null : Amount.Shown(units.From(usual.Boils)), "in an hour, at its full flame");
        }
        else
        {
            Line(text, "  ", "draft", answers["draft"]?.Value ?? "natural", "forced by a blower, or natural");
        }

        Line(text, "  ", "firebrick", answers["brick"], usual is null ? null : Amount.Shown(units.From(usual.Firebrick)), "what the fire heats");
        if (!answers.IsBurner)
        {
            Wood(text, answers, usual);
        }

        text.Append("feed:\n");
        Line(text, "  ", "by", answers["float"]?.Value ?? (answers["float"] is null ? "float" : "hand"), "float, hand or valve: how sap comes in");
        if (answers.IsFedByHand)
        {
            Line(text, "  ", "pail", answers["pail"], usual is null ? null : Amount.Shown(units.From(usual.Pail)), "what is poured at once");
        }

        Line(text, "  ", "tank", answers["tank"], usual is null ? null : Amount.Shown(units.From(usual.Tank)), "what the head tank holds, full");
        if (answers["draw"]?.Value is { } drawn)
        {
            text.Append("draw:\n");
            Line(text, "  ", "by", drawn, "valve, ladle or pour: how syrup comes out");
        }

        Line(text, "", "instruments", answers["reads"], null, "what is there to read with");
        Line(text, "", "lid", answers["lid"], null, "whether the pan has one");
        Line(text, "", "finishing pot", answers["pot"], null, "whether syrup is finished in a pot of its own");
        return text.ToString();
    }

    private static void Wood(StringBuilder text, RigAnswers answers, Rig? usual)
    {
        Line(text, "  ", "charge", answers["charge"], usual is null ? null : Amount.Shown(answers.Units.From(usual.Charge)), "wood, at one opening of the door");
        Line(text, "  ", "interval", answers["interval"], usual is null ? null : new Measure(usual.Interval.TotalMinutes, Unit.Minute).ToString(), "from one charge to the next");
        Line(text, "  ", "wood", answers["wood"], usual is null ? null : "{ moisture: 20 % }", "its water, as a part of the dry wood's weight");
    }

    /// <summary>The name of a rig that was given none.</summary>
    public static string UsualName(RigAnswers answers) =>
        $"my rig, {answers["length"]?.Value ?? RigLimit.PanLength.Example} by {answers["width"]?.Value ?? RigLimit.PanWidth.Example}";

    private static void Depths(StringBuilder text, RigAnswers answers, Rig? usual)
    {
        var isAnswered = answers["depth"]?.Value is not null || answers["wall"]?.Value is not null;
        if (!isAnswered && usual is null)
        {
            return;
        }

        text.Append(isAnswered ? "  depth:\n" : "  # depth:\n");
        var indent = isAnswered ? "    " : "  #   ";
        Line(text, indent, "run", answers["depth"], usual is null ? null : Amount.Shown(answers.Units.From(usual.RunDepth)), "of the sap while it boils");
        if (answers["depth"]?.Value is { } run && MeasureText.Read(run, Dimension.Length, null).Measure is { } measure
            && UnitSystem.Length(measure) + OverRunDepth is var deeper && deeper > RigDefaults.FloodDepth)
        {
            Line(text, indent, "flood", answers.Units.From(deeper).ToString(), "for a shutdown: an inch deeper than it runs");
        }

        Line(text, indent, "wall", answers["wall"], usual is null ? null : Amount.Shown(answers.Units.From(usual.WallDepth)), "from the bottom to the rim");
    }

    /// <summary>A line that is used where it was answered, and shows the usual where it was not.</summary>
    private static void Line(StringBuilder text, string indent, string key, RigAnswer? answer, string? usual, string note)
    {
        if (answer?.Value is { } value)
        {
            Line(text, indent, key, value, answer.Note.Length > 0 ? $"{note}: {answer.Note}" : note);
        }
        else if (usual is not null)
        {
            Line(text, indent.Contains('#', StringComparison.Ordinal) ? indent : indent + "# ", key, usual, note);
        }
    }

    private static void Line(StringBuilder text, string indent, string key, string value, string note) =>
        text.Append($"{indent}{key}: {value}".PadRight(NoteColumn)).Append(" # ").Append(note).Append('\n');

    private static string Quoted(string name) => $"'{name.Replace("'", "''", StringComparison.Ordinal)}'";
}
