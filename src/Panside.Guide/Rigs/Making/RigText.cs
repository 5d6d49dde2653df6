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
        Pans(text, answers, usual);
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
        if (answers["draw"]?.Value is not null || usual is not null)
        {
            text.Append(answers["draw"]?.Value is null ? "# draw:\n" : "draw:\n");
            Line(text, answers["draw"]?.Value is null ? "#   " : "  ", "by", answers["draw"], Drawn(usual), "valve, ladle or pour: how syrup comes out");
        }

        Things(text, answers["has"]?.Value, usual);
        return text.ToString();
    }

    private static string? Drawn(Rig? usual) => usual?.DrawnBy switch { null => null, DrawnBy.Pour => "pour", DrawnBy.Ladle => "ladle", _ => "valve" };

    private static void Wood(StringBuilder text, RigAnswers answers, Rig? usual)
    {
        Line(text, "  ", "charge", answers["charge"], usual is null ? null : Amount.Shown(answers.Units.From(usual.Charge)), "wood, at one opening of the door");
        Line(text, "  ", "interval", answers["interval"], usual is null ? null : new Measure(usual.Interval.TotalMinutes, Unit.Minute).ToString(), "from one charge to the next");
        Line(text, "  ", "wood", answers["wood"], usual is null ? null : "{ moisture: 20 % }", "its water, as a part of the dry wood's weight");
    }

    /// <summary>The name of a rig that was given none.</summary>
    public static string UsualName(RigAnswers answers) =>
        $"my rig, {answers["length"]?.Value ?? RigLimit.PanLength.Example} by {answers["width"]?.Value ?? RigLimit.PanWidth.Example}";

    /// <summary>One pan, or two in the order of the sap.</summary>
    private static void Pans(StringBuilder text, RigAnswers answers, Rig? usual)
    {
        var (length, width) = (answers["length"]?.Value ?? RigLimit.PanLength.Example, answers["width"]?.Value ?? RigLimit.PanWidth.Example);
        var channels = answers["channels"]?.Value?.Split(" and ");
        UsualDepths? front = usual is null ? null : new(usual.RunDepth, usual.LeastDepth, usual.FloodDepth, usual.WallDepth);
        if (!answers.HasPanBehind)
        {
            text.Append("pan:\n");
            Pan(text, "  ", (length, width), channels?[0], usual?.Channels, DepthsOf(answers, "depth", "wall"), front, answers.Units);
            return;
        }

        text.Append("pans:".PadRight(NoteColumn)).Append(" # in the order of the sap: the one behind, then the one with the draw-off\n");
        var (back, flues) = (usual?.Back, answers["flues"]?.Value);
        var behind = answers["behind"]!.Value!.Split(" by ");
        Pan(text, "    ", (behind[0], behind[1]), channels is [_, var rear] ? rear : null, back?.Channels, DepthsOf(answers, "rear", null), back is null ? null : new(back.RunDepth, back.LeastDepth, back.FloodDepth, back.WallDepth), answers.Units,
            flues is null or RigQuestions.None ? null : flues);
        Pan(text, "    ", (length, width), channels?[0], usual?.Channels, DepthsOf(answers, "depth", "wall"), front, answers.Units);
    }

    private static void Pan(
        StringBuilder text, string indent, (string Length, string Width) size, string? channels, int? usualChannels, Dictionary<string, string> depths,
        UsualDepths? usual, UnitSystem units, string? flues = null)
    {
        Line(text, indent.Length > 2 ? "  - " : indent, "length", size.Length, "inside, from the door's end to the stack's");
        Line(text, indent, "width", size.Width, "inside");
        if (flues is not null)
        {
            Line(text, indent, "flues", flues, "below its floor");
        }

        Line(text, indent, "channels", channels is null ? null : new(channels, ""), usualChannels?.ToString(CultureInfo.InvariantCulture), "1 is an undivided pan");
        Depths(text, indent, depths, usual, units);
    }

    /// <summary>The depths that were answered, by their keys.</summary>
    private static Dictionary<string, string> DepthsOf(RigAnswers answers, string name, string? wall)
    {
        var depths = (answers[name]?.Value ?? "").Split("; ", StringSplitOptions.RemoveEmptyEntries).Select(part => part.Split(' ', 2)).ToDictionary(part => part[0], part => part[1]);
        if (wall is not null && answers[wall]?.Value is { } high)
        {
            depths["wall"] = high;
        }

        return depths;
    }

    private static void Depths(StringBuilder text, string indent, Dictionary<string, string> depths, UsualDepths? usual, UnitSystem units)
    {
        if (depths.Count == 0 && usual is null)
        {
            return;
        }

        text.Append(indent).Append(depths.Count > 0 ? "depth:\n" : "# depth:\n");
        indent += depths.Count > 0 ? "  " : "#   ";
        void Depth(string key, Length? taken, string note) => Line(
            text, indent, key, depths.TryGetValue(key, out var told) ? new(told, "") : null, taken is { } length ? Amount.Shown(units.From(length)) : null, note);
        Depth("run", usual?.Run, "of the sap while it boils");
        Depth("least", usual?.Least, "that it must never fall below while hot");
        if (!depths.ContainsKey("flood") && depths.TryGetValue("run", out var run) && MeasureText.Read(run, Dimension.Length, null).Measure is { } measure
            && UnitSystem.Length(measure) + OverRunDepth is var deeper && deeper > RigDefaults.FloodDepth)
        {
            Line(text, indent, "flood", units.From(deeper).ToString(), "for a shutdown: an inch deeper than it runs");
        }
        else
        {
            Depth("flood", usual?.Flood, "for a shutdown");
        }

        Depth("wall", usual?.Wall, "from the bottom to the rim");
    }

    /// <summary>What there is to read with, a lid, a pot; the usual, not used, where nobody said.</summary>
    private static void Things(StringBuilder text, string? has, Rig? usual)
    {
        void Thing(string key, Func<string, string> told, Func<Rig, string> taken, string note) =>
            Line(text, "", key, has is null ? null : new(told(has), ""), usual is null ? null : taken(usual), note);
        static string Listed(IEnumerable<string> instruments) => string.Join(", ", instruments) is { Length: > 0 } named ? $"[{named}]" : RigQuestions.None;
        static string Flag(bool there) => there ? "true" : "false";
        Thing("instruments", said => Listed(Rig.KnownInstruments.Where(instrument => said.Contains(instrument, StringComparison.Ordinal))), rig => Listed(rig.Instruments), "what is there to read with");
        Thing("lid", said => Flag(said.Contains(RigQuestions.Lid, StringComparison.Ordinal)), rig => Flag(rig.HasLid), "whether the pan has one");
        Thing("finishing pot", said => Flag(said.Contains(RigQuestions.Pot, StringComparison.Ordinal)), rig => Flag(rig.HasFinishingPot), "whether syrup is finished in a pot of its own");
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

    /// <summary>The depths of a pan that are taken where none are told.</summary>
    private sealed record UsualDepths(Length Run, Length Least, Length Flood, Length Wall);

    private static string Quoted(string name) => $"'{name.Replace("'", "''", StringComparison.Ordinal)}'";
}
