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
        new("channels", "How many channels does the sap run through?", "Each channel is sweeter than the one before; the last one scorches first.", RigPictures.Channels)
        {
            Expected = _ => $"{RigLimit.Channels.Low} to {RigLimit.Channels.High}; 1 is an undivided pan",
            Usual = answers => answers.Rig.Channels.ToString(CultureInfo.InvariantCulture),
            Read = (said, _) => int.TryParse(ChannelsWord().Replace(said, ""), NumberStyles.None, CultureInfo.InvariantCulture, out var channels)
                && channels >= RigLimit.Channels.Low && channels <= RigLimit.Channels.High
                ? RigReply.Of(channels.ToString(CultureInfo.InvariantCulture), channels == 1 ? "1 channel" : $"{channels} channels")
                : RigReply.Not($"'{said}' is not understood. Expected: a whole number, {RigLimit.Channels.Low} to {RigLimit.Channels.High}."),
        },
        new("depth", "How deep does the sap stand while it boils?", "The depth says how much the pan holds before it runs low.", RigPictures.Depth)
        {
            Expected = answers => Expected(RigLimit.RunDepth, answers.Units, "1 1/2", "4"),
            Usual = answers => Amount.Shown(answers.Units.From(RigDefaults.RunDepth)),
            Read = (said, answers) => Sized(said, RigLimit.RunDepth, answers.Units, " deep"),
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
        new("reads", "Which instruments are there?", "Nothing is asked that only a missing one shows.", RigPictures.Instruments)
        {
            Expected = _ => "all, none, or some of thermometer, hydrometer, refractometer, sight glass",
            Usual = _ => "all but a glass",
            Read = Instruments,
        },
        new("lid", "Is there a lid for the pan?", "A lid goes on once the pan is still, and only then.", RigPictures.Lid)
        {
            Expected = _ => "yes or no",
            Usual = _ => "yes",
            Read = (said, _) => IsYes(said, "lid") ? RigReply.Of("true", "yes") : IsNo(said, "none", "no lid") ? RigReply.Of("false", "no")
                : RigReply.Not($"'{said}' is not understood. Expected: yes or no."),
        },
        new("pot", "Is syrup finished in a pot of its own?", "What tests thin then goes into the pot, not back.", RigPictures.Pot)
        {
            Expected = _ => "yes or no",
            Usual = _ => "no",
            Read = (said, _) => IsYes(said, "pot") ? RigReply.Of("true", "yes") : IsNo(said, "none", "no pot") ? RigReply.Of("false", "no")
                : RigReply.Not($"'{said}' is not understood. Expected: yes or no."),
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

    private static RigReply Instruments(string said, RigAnswers answers)
    {
        var plain = said.ToLowerInvariant();
        if (plain == "all" || IsNo(plain, "none"))
        {
            return RigReply.Of(plain == "all" ? $"[{string.Join(", ", Rig.KnownInstruments)}]" : "none", plain == "all" ? "all" : "none");
        }

        var named = Rig.KnownInstruments.Where(instrument => plain.Contains(instrument, StringComparison.Ordinal)).ToList();
        var rest = named.Aggregate(plain, (left, name) => left.Replace(name, "", StringComparison.Ordinal)).Replace("and", "", StringComparison.Ordinal).Trim(' ', ',');
        return named.Count > 0 && rest.Replace(",", "", StringComparison.Ordinal).Trim().Length == 0
            ? RigReply.Of($"[{string.Join(", ", named)}]", named.Count == 1 ? named[0] : $"{named.Count} of them")
            : RigReply.Not($"'{said}' is not understood. Expected: all, none, or some of {string.Join(", ", Rig.KnownInstruments)}.");
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

    [GeneratedRegex(@"\s*channels?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex ChannelsWord();

    [GeneratedRegex(@"^(?<number>[0-9]{1,4})\s*(?:full |fire|(?<thin>thin |half ))?(?:bricks?|(?<thin>splits?))$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Bricks();
}
