using System.Globalization;
using System.Text.RegularExpressions;
using Panside.Guide.Hearing.Terms;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Rigs.Making;

/// <summary>
/// What is asked about a rig, in this order: first what has no usual, then what may be left as usual. What stands in no question,
/// as the syrup's density, is as usual and can be changed in the file.
/// </summary>
internal static partial class RigQuestions
{
    /// <summary>A number without a unit under this, for a pan's side, is more likely feet or meters.</summary>
    private const double LeastBareSide = 12;

    /// <summary>9 x 4 1/2 x 2 1/2 in of common firebrick: no source.</summary>
    private const double PoundsOfBrick = 7.5;

    private const int LongestName = 32;

    /// <summary>The answer that there is none of it.</summary>
    public const string None = "none";

    /// <summary>A lid, as it stands in an answer.</summary>
    public const string Lid = "lid";

    /// <summary>A finishing pot, as it stands in an answer.</summary>
    public const string Pot = "finishing pot";

    private static readonly Dictionary<string, (string Share, string Told)> Dryness = new(StringComparer.OrdinalIgnoreCase)
    {
        ["dry"] = ("20 %", "dry"),
        ["half dry"] = ("35 %", "half dry"),
        ["half-dry"] = ("35 %", "half dry"),
        ["green"] = ("70 %", "green"),
        ["wet"] = ("70 %", "green"),
    };

    /// <summary>All of them.</summary>
    public static IReadOnlyList<RigQuestion> All { get; } =
    [
        new("units", "Which units do you read in?", "Numbers typed without a unit are read so, and all is shown so.", RigPictures.Units)
        {
            Expected = _ => "us, metric or imperial",
            Usual = _ => UnitSystem.Us.Code,
            Read = (said, _) => UnitSystem.All.FirstOrDefault(one => one.Code.Equals(said, StringComparison.OrdinalIgnoreCase)) is { } units
                ? RigReply.Of(units.Code, units.Code)
                : RigReply.Not($"'{said}' is none of the three. Expected: us, metric or imperial."),
        },
        new("length", "How long is the pan, inside?", "The pan's area says how fast it boils and how much sap it holds.", RigPictures.Length)
        {
            Expected = answers => Expected(RigLimit.PanLength, answers.Units, "4 ft", "1.2 m"),
            Read = (said, answers) => Side(said, RigLimit.PanLength, answers.Units),
        },
        new("width", "How wide is the pan, inside?", "The pan's area says how fast it boils and how much sap it holds.", RigPictures.Width)
        {
            Expected = answers => Expected(RigLimit.PanWidth, answers.Units, "23 1/2", "60"),
            Read = (said, answers) => Side(said, RigLimit.PanWidth, answers.Units),
        },
        new("draft", "Does a blower drive air under the fire?", "With a blower coals burn out in a third of the time.", RigPictures.Draft)
        {
            Expected = _ => "yes or no; or gas, oil, electric where no wood burns",
            Usual = _ => "no blower",
            Read = (said, _) => said.ToLowerInvariant() is "gas" or "oil" or "electric" ? RigReply.Of(said.ToLowerInvariant(), $"{said.ToLowerInvariant()} heat")
                : IsYes(said, "blower", "forced", "fan") ? RigReply.Of("forced", "a blower")
                : IsNo(said, "no blower", "natural", "none") ? RigReply.Of("natural", "no blower")
                : RigReply.Not($"'{said}' is not understood. Expected: yes with a blower, no without; or gas, oil, electric."),
        },
        new("float", "Does a float valve hold the depth of the pan?", "Without one, sap comes only when you open the valve.", RigPictures.Float)
        {
            Expected = _ => "yes or no; or valve, for one that you set by hand",
            Usual = _ => "fed by hand",
            Read = (said, _) => IsYes(said, "float") ? RigReply.Of("float", "a float valve")
                : IsNo(said, "by hand", "hand", "none", "pail") ? RigReply.Of("hand", "fed by hand")
                : said.Equals("valve", StringComparison.OrdinalIgnoreCase) ? RigReply.Of("valve", "a valve set by hand")
                : RigReply.Not($"'{said}' is not understood. Expected: yes with a float valve, no without; or valve."),
        },
        new("pail", "How much sap goes in with one pail?", "Sap is asked for by the pail, little and often.", RigPictures.Pail)
        {
            Applies = answers => answers.IsFedByHand,
            Expected = answers => Expected(RigLimit.Pail, answers.Units, "2", "7"),
            Usual = answers => Amount.Shown(HandMeasure(answers)),
            Read = (said, answers) => Sized(said, RigLimit.Pail, answers.Units, " a pail"),
        },
        new("behind", "Does a second pan stand behind it and feed it?", "Both boil over one fire; whichever runs low first decides.", RigPictures.Behind)
        {
            Applies = answers => answers["float"]?.Value == "float",
            Expected = answers => answers.Units == UnitSystem.Metric ? "no, or its length by its width, inside, like 120 cm by 60 cm" : "no, or its length by its width, inside, like 4 ft by 2 ft",
            Usual = _ => "one pan",
            Read = BehindSize,
        },
        new("flues", "What does its floor look like?", "Flues take up more of the fire's heat than a flat floor.", RigPictures.Flues)
        {
            Applies = answers => answers.HasPanBehind,
            Expected = answers => $"flat; or flues, like '6 flues {(answers.Units == UnitSystem.Metric ? "18 cm" : "7 in")} deep' or 'factor 4'",
            Usual = _ => "flat",
            Read = Flues,
        },
        new("rear", "How deep does the sap stand in it, over any flues?", "It feeds the pan in front; its flues burn when it runs low.", RigPictures.Rear)
        {
            Applies = answers => answers.HasPanBehind,
            Expected = answers => DepthsExpected(answers, "2", "5"),
            Usual = answers => Amount.Shown(answers.Units.From(RigDefaults.RunDepth)),
            Read = (said, answers) => Depths(said, answers, DepthWords),
        },
        new("channels", "How many channels does the sap run through?", "Each channel is sweeter than the one before; the last one scorches first.", RigPictures.Channels)
        {
            Expected = answers => $"{RigLimit.Channels.Low} to {RigLimit.Channels.High}; 1 is an undivided pan{(answers.HasPanBehind ? "; '3 and 2' of both, this one first" : "")}",
            Usual = answers => answers.Rig.Channels.ToString(CultureInfo.InvariantCulture),
            Read = Channels,
        },
        new("depth", "How deep does the sap stand while it boils?", "The depth says how much the pan holds before it runs low.", RigPictures.Depth)
        {
            Expected = answers => DepthsExpected(answers, "1 1/2", "4"),
            Usual = answers => Amount.Shown(answers.Units.From(RigDefaults.RunDepth)),
            Read = (said, answers) => Depths(said, answers, [.. DepthWords.Where(word => word != "wall")]),
        },
        new("wall", "How high is the wall of the pan?", "A pan is flooded for the shutdown, and foam rises.", RigPictures.Wall)
        {
            Expected = answers => Expected(RigLimit.WallDepth, answers.Units, "8", "20"),
            Usual = answers => Amount.Shown(answers.Units.From(RigDefaults.WallDepth)),
            Read = (said, answers) => Sized(said, RigLimit.WallDepth, answers.Units, " high"),
        },
        new("brick", "How much firebrick does the fire heat?", "Hot brick goes on boiling the pan after the last wood.", RigPictures.Brick)
        {
            Expected = answers => $"none, bricks like '16 bricks' or '30 thin bricks', or {Range(RigLimit.Firebrick, answers.Units)}",
            Usual = answers => Amount.Shown(answers.Units.From(answers.Rig.Firebrick)),
            Read = Brick,
        },
        new("tank", "How much does the head tank hold?", "No reading of the tank over this is believed.", RigPictures.Tank)
        {
            Expected = answers => Expected(RigLimit.Tank, answers.Units, "35", "130"),
            Usual = _ => "not known",
            Read = (said, answers) => Sized(said, RigLimit.Tank, answers.Units, ", full"),
        },
        new("boils", "How much does it boil away in an hour?", "A burner's heat is known by what it boils away at its full flame.", RigPictures.Boils)
        {
            Applies = answers => answers.IsBurner,
            Expected = answers => Expected(RigLimit.Boils, answers.Units, "8", "30"),
            Usual = answers => Amount.Shown(answers.Units.From(answers.Rig.Boils)),
            Read = (said, answers) => Sized(said, RigLimit.Boils, answers.Units, " boiled away"),
        },
        new("charge", "How much wood is one charge?", "Wood and time between two charges say how fast the pan boils.", RigPictures.Charge)
        {
            Applies = answers => !answers.IsBurner,
            Expected = answers => Expected(RigLimit.Charge, answers.Units, "7", "3"),
            Usual = answers => Amount.Shown(answers.Units.From(answers.Rig.Charge)),
            Read = (said, answers) => Sized(said, RigLimit.Charge, answers.Units, " of wood a charge"),
        },
        new("interval", "How long is it from one charge to the next?", "Wood and time between two charges say how fast the pan boils.", RigPictures.Interval)
        {
            Applies = answers => !answers.IsBurner,
            Expected = answers => Expected(RigLimit.Interval, answers.Units, "8", "8"),
            Usual = answers => Amount.Shown(new Measure(answers.Rig.Interval.TotalMinutes, Unit.Minute)),
            Read = (said, answers) => Sized(said, RigLimit.Interval, answers.Units, " between charges"),
        },
        new("wood", "How dry is the wood?", "Water in the wood takes heat that would boil sap.", RigPictures.Wood)
        {
            Applies = answers => !answers.IsBurner,
            Expected = answers => $"dry, half dry, green, or {Range(RigLimit.WoodMoisture, answers.Units)}",
            Usual = _ => "dry",
            Read = (said, answers) => Dryness.TryGetValue(said, out var dryness)
                ? RigReply.Of($"{{ moisture: {dryness.Share} }}", $"{dryness.Told} wood", dryness.Told)
                : Sized(said, RigLimit.WoodMoisture, answers.Units, " of water in the wood") is { Answer: { Value: { } value } answer }
                    ? RigReply.Of($"{{ moisture: {value} }}", answer.Told)
                    : RigReply.Not($"'{said}' is not understood. Expected: dry, half dry, green, or {Range(RigLimit.WoodMoisture, answers.Units)}."),
        },
        new("draw", "How does syrup come out of the pan?", "A batch is poured out whole; a ladle takes what is syrup.", RigPictures.Draw)
        {
            Expected = _ => "valve, ladle or pour",
            Usual = _ => "valve",
            Read = (said, _) => said.ToLowerInvariant() is "valve" or "ladle" or "pour" ? RigReply.Of(said.ToLowerInvariant(), said.ToLowerInvariant())
                : RigReply.Not($"'{said}' is not understood. Expected: valve, ladle or pour."),
        },
        new("has", "Which of these are there?", "Nothing is asked or said of what is not there.", RigPictures.Has)
        {
            Expected = _ => "all, none, or some of them, like 'thermometer, hydrometer, lid'",
            Usual = _ => "no glass, no pot",
            Read = (said, _) => Things(said),
        },
        new("altitude", "How high above the sea is the sugarhouse?", "Water boils cooler up high; your thermometer in boiling water takes over.", RigPictures.Altitude)
        {
            Expected = answers => Expected(RigLimit.Altitude, answers.Units, "900 ft", "270 m", UnitOfHeight(answers.Units)),
            Usual = answers => new Measure(0, UnitOfHeight(answers.Units)).ToString(),
            Read = (said, answers) => Sized(
                said.Equals("sea level", StringComparison.OrdinalIgnoreCase) ? "0" : said, RigLimit.Altitude, answers.Units, " above the sea", UnitOfHeight(answers.Units)),
        },
        new("name", "What is the rig called?", "What boils teach is kept for the rig of this name.", RigPictures.Name)
        {
            Expected = _ => $"a name of at most {LongestName} letters",
            Usual = RigText.UsualName,
            Read = (said, _) => said.Length <= LongestName
                ? RigReply.Of(said, $"'{said}'")
                : RigReply.Not($"That name has {said.Length} letters. Expected: at most {LongestName}."),
        },
    ];

    private static Measure HandMeasure(RigAnswers answers) => answers.Units.From(answers.Rig.Pail);

    /// <summary>What can be there beside the pan: the instruments of a rig file, a lid and a finishing pot.</summary>
    private static IReadOnlyList<string> AllThings { get; } = [.. Rig.KnownInstruments, Lid, Pot];

    private static RigReply Things(string said)
    {
        var plain = said.ToLowerInvariant().Replace(Pot, "pot", StringComparison.Ordinal).Replace("pot", Pot, StringComparison.Ordinal);
        if (plain == "all")
        {
            return RigReply.Of(string.Join(", ", AllThings), "all");
        }

        if (IsNo(plain, None))
        {
            return RigReply.Of(None, None);
        }

        var named = AllThings.Where(thing => plain.Contains(thing, StringComparison.Ordinal)).ToList();
        var rest = named.Aggregate(plain, (left, name) => left.Replace(name, "", StringComparison.Ordinal)).Replace("and", "", StringComparison.Ordinal)
            .Replace(",", "", StringComparison.Ordinal);
        return named.Count > 0 && string.IsNullOrWhiteSpace(rest)
            ? RigReply.Of(string.Join(", ", named), named.Count == 1 ? named[0] : $"{named.Count} of them")
            : RigReply.Not($"'{said}' is not understood. Expected: all, none, or some of {string.Join(", ", AllThings)}.");
    }

    private static Unit UnitOfHeight(UnitSystem units) => units == UnitSystem.Metric ? Unit.Meter : Unit.Foot;

    private static bool IsYes(string said, params string[] words) => Is(said, "yes", words);

    private static bool IsNo(string said, params string[] words) => Is(said, "no", words);

    private static bool Is(string said, string answer, string[] words) =>
        (Vocabulary.Answers.TryGetValue(said, out var meant) && meant == answer) || words.Contains(said, StringComparer.OrdinalIgnoreCase);

    private static string Expected(RigLimit limit, UnitSystem units, string like, string likeMetric, Unit? shown = null) =>
        $"{Range(limit, units, shown)}, like {(units == UnitSystem.Metric ? likeMetric : like)}";

    /// <summary>The limit in the person's own unit, so that what is asked and what is refused agree.</summary>
    private static string Range(RigLimit limit, UnitSystem units, Unit? shown = null)
    {
        var unit = shown ?? units.Preferred(limit.Dimension);
        double In(double value) => limit.Dimension switch
        {
            Dimension.Volume => units.From(Volume.FromUsGallons(value), unit).Value,
            Dimension.VolumeRate => units.From(VolumeRate.FromUsGallonsPerHour(value)).Value,
            Dimension.Share or Dimension.Time => value,
            _ => units.Convert(new(value, limit.Unit), unit).Value,
        };
        return string.Create(CultureInfo.InvariantCulture, $"{In(limit.Low):0.##} to {In(limit.High):0.##} {unit.Shown()}");
    }

    private static RigReply Sized(string said, RigLimit limit, UnitSystem units, string what, Unit? assumed = null)
    {
        var (read, fault) = MeasureText.Read(said, limit.Dimension, assumed ?? units.Preferred(limit.Dimension));
        if (read is not { } measure)
        {
            return RigReply.Not($"{fault}. Expected: {Range(limit, units, assumed)}.");
        }

        return limit.Allows(limit.ValueOf(measure, units))
            ? RigReply.Of(measure.ToString(), $"{measure}{what}")
            : RigReply.Not($"{measure} is out of what such rigs have. Expected: {Range(limit, units, assumed)}.");
    }

    /// <summary>A side of the pan. A small number without a unit is asked for again: 4 is four feet more often than four inches.</summary>
    private static RigReply Side(string said, RigLimit limit, UnitSystem units)
    {
        var large = units == UnitSystem.Metric ? Unit.Meter : Unit.Foot;
        return MeasureText.TryNumber(said, out var number, out var unit) && unit.Length == 0 && number > 0 && number < LeastBareSide
            ? RigReply.Not($"{said} of what? Say '{said} {large.Shown()}' or '{said} {units.Preferred(Dimension.Length).Shown()}'.")
            : Sized(said, limit, units, limit == RigLimit.PanLength ? " long" : " wide");
    }

    /// <summary>The depths of a pan, as a rig file names them.</summary>
    private static string[] DepthWords => ["run", "least", "flood", "wall"];

    private static string DepthsExpected(RigAnswers answers, string like, string likeMetric) =>
        $"{Expected(RigLimit.RunDepth, answers.Units, like, likeMetric)}; with more: '{(answers.Units == UnitSystem.Metric ? $"{likeMetric}, least 2" : $"{like}, least 3/4")}'";

    /// <summary>The depth that a pan is run at, alone, or with others behind it: <c>2, least 1, flood 3</c>.</summary>
    private static RigReply Depths(string said, RigAnswers answers, string[] words)
    {
        var found = new List<(string Word, RigAnswer Answer)>();
        foreach (var part in said.Split([", ", ";"], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            var word = words.FirstOrDefault(word => part.StartsWith(word + " ", StringComparison.OrdinalIgnoreCase));
            var limit = word switch { "least" => RigLimit.LeastDepth, "flood" => RigLimit.FloodDepth, "wall" => RigLimit.WallDepth, _ => RigLimit.RunDepth };
            var read = Sized(word is null ? part : part[word.Length..].Trim(), limit, answers.Units, word is null or "run" ? " deep" : "");
            if (read.Answer is not { } answer)
            {
                return read;
            }

            if (found.Exists(one => one.Word == (word ?? "run")))
            {
                return RigReply.Not($"'{said}' tells one depth twice. Expected: one each of {string.Join(", ", words)}.");
            }

            found.Add((word ?? "run", answer));
        }

        return found.Count == 0 ? Sized(said, RigLimit.RunDepth, answers.Units, " deep")
            : RigReply.Of(
                string.Join("; ", found.Select(one => $"{one.Word} {one.Answer.Value}")),
                string.Join(", ", found.Select(one => one.Word == "run" ? one.Answer.Told : $"{one.Word} {one.Answer.Told}")));
    }

    private static RigReply BehindSize(string said, RigAnswers answers)
    {
        if (IsNo(said, None, "one", "one pan"))
        {
            return RigReply.Of(None, "one pan");
        }

        if (By().Split(said) is not [var length, var width])
        {
            return RigReply.Not($"'{said}' is no length by a width. Expected: no, or like '{(answers.Units == UnitSystem.Metric ? "120 cm by 60 cm" : "4 ft by 2 ft")}'.");
        }

        var (one, other) = (Side(length, RigLimit.PanLength, answers.Units), Side(width, RigLimit.PanWidth, answers.Units));
        return one.Answer is null ? one : other.Answer is null ? other
            : RigReply.Of($"{one.Answer.Value} by {other.Answer.Value}", $"{one.Answer.Value} by {other.Answer.Value}");
    }

    private static RigReply Flues(string said, RigAnswers answers)
    {
        if (IsNo(said, None, "flat", "flat floor"))
        {
            return RigReply.Of(None, "flat");
        }

        if (Factor().Match(said) is { Success: true } factor
            && double.TryParse(factor.Groups["number"].Value, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var times)
            && times >= RigLimit.HeatedTimes.Low && times <= RigLimit.HeatedTimes.High)
        {
            return RigReply.Of(FormattableString.Invariant($"{{ area factor: {times} }}"), FormattableString.Invariant($"factor {times}"));
        }

        if (FluesOf().Match(said) is not { Success: true } match || !int.TryParse(match.Groups["number"].Value, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            || number < RigLimit.Flues.Low || number > RigLimit.Flues.High)
        {
            return RigReply.Not($"'{said}' is not understood. Expected: flat, {RigLimit.Flues.Low} to {RigLimit.Flues.High} flues with their depth, or factor {RigLimit.HeatedTimes.Low} to {RigLimit.HeatedTimes.High}.");
        }

        var depth = Sized(match.Groups["depth"].Value, RigLimit.FlueDepth, answers.Units, "");
        return depth.Answer is { Value: { } deep } ? RigReply.Of($"{{ depth: {deep}, number: {number} }}", $"{number}, {deep} deep") : depth;
    }

    /// <summary>Channels of a pan; of two, those of the one behind may follow.</summary>
    private static RigReply Channels(string said, RigAnswers answers)
    {
        var parts = answers.HasPanBehind ? And().Split(ChannelsWord().Replace(said, "")) : [ChannelsWord().Replace(said, "")];
        var numbers = parts.Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var channels) ? channels : 0).ToList();
        return numbers.Count <= 2 && numbers.TrueForAll(channels => channels >= RigLimit.Channels.Low && channels <= RigLimit.Channels.High)
            ? RigReply.Of(
                string.Join(" and ", numbers.Select(channels => channels.ToString(CultureInfo.InvariantCulture))),
                numbers is [1] ? "1 channel" : $"{string.Join(" and ", numbers.Select(channels => channels.ToString(CultureInfo.InvariantCulture)))} channels")
            : RigReply.Not($"'{said}' is not understood. Expected: a whole number, {RigLimit.Channels.Low} to {RigLimit.Channels.High}.");
    }

    private static RigReply Brick(string said, RigAnswers answers)
    {
        if (IsNo(said, "none", "no brick"))
        {
            return RigReply.Of(new Measure(0, answers.Units.Preferred(Dimension.Mass)).ToString(), "no firebrick");
        }

        if (Bricks().Match(said) is not { Success: true } match)
        {
            return Sized(said, RigLimit.Firebrick, answers.Units, " of firebrick");
        }

        var isThin = match.Groups["thin"].Success;
        var number = int.Parse(match.Groups["number"].Value, CultureInfo.InvariantCulture);
        var told = $"{number} {(isThin ? "thin bricks" : "bricks")}";
        var mass = answers.Units.From(Mass.FromPounds(number * PoundsOfBrick * (isThin ? 0.5 : 1)));
        var weight = new Measure(double.Round(mass.Value), mass.Unit);
        return RigLimit.Firebrick.Allows(RigLimit.Firebrick.ValueOf(weight, answers.Units))
            ? RigReply.Of(weight.ToString(), $"{told}, {weight}", told)
            : RigReply.Not($"{told} would be {weight}. Expected: {Range(RigLimit.Firebrick, answers.Units)}.");
    }

    [GeneratedRegex(@"\s*(?:\bby\b|\bx\b|×|, )\s*", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex By();

    [GeneratedRegex(@"\s*(?:\band\b|,)\s*", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex And();

    [GeneratedRegex(@"^(?:area )?factor (?<number>[0-9.]{1,6})$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Factor();

    [GeneratedRegex(@"^(?<number>[0-9]{1,3})(?: flues?)?(?: of|,| x|:)? (?<depth>[0-9].*?)(?: deep)?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex FluesOf();

    [GeneratedRegex(@"\s*channels?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ChannelsWord();

    [GeneratedRegex(@"^(?<number>[0-9]{1,4})\s*(?:full |fire|(?<thin>thin |half ))?(?:bricks?|(?<thin>splits?))$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Bricks();
}
