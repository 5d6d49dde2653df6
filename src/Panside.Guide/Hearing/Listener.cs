using System.Text.RegularExpressions;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Sessions;

namespace Panside.Guide.Hearing;

/// <summary>Understands what a person types, with the open prompt in mind: a bare number answers what is asked.</summary>
public sealed partial class Listener(Setting setting)
{
    private const int LongestText = 400;

    /// <summary>What the text means.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="text">The text.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public Understood Understand(Moment at, string text, Prompt? open)
    {
        var said = Spaces().Replace(text.Trim(), " ").TrimEnd('.', '!', ',');
        if (text.Trim() == "!")
        {
            said = "!";
        }

        if (said.Length is 0 or > LongestText)
        {
            return new MeansNothing(said.Length == 0 ? "Nothing was typed." : "That is too long to be a reading: use 'note' and keep it short.");
        }

        if (said.StartsWith("note ", StringComparison.OrdinalIgnoreCase) || said.Equals("note", StringComparison.OrdinalIgnoreCase))
        {
            return new MeansWord("note", said.Length > 5 ? said[5..] : "");
        }

        if (Supposition.Behind(said) is { } supposed)
        {
            return new MeansWord(Supposition.Word, supposed);
        }

        return Word(at, said, open) ?? Amount(at, said, open) ?? Lost(said, open);
    }

    private Understood? Word(Moment at, string said, Prompt? open)
    {
        if (open is not null && ObservationName.FromCode(open.Ask) is { } asked
            && asked.States.FirstOrDefault(state => state.Equals(said, StringComparison.OrdinalIgnoreCase)) is { } state)
        {
            return new MeansLine(new Observed(at, asked, state));
        }

        if (Vocabulary.Answers.TryGetValue(said, out var answer))
        {
            return new MeansLine(new Answer(at, answer));
        }

        if (setting.Flow.Words.TryGetValue(said, out var word))
        {
            return new MeansWord(word, "");
        }

        if (Vocabulary.States.TryGetValue(said, out var seen))
        {
            return new MeansLine(new Observed(at, seen.Name, seen.State));
        }

        if (Vocabulary.Own.TryGetValue(said, out var own))
        {
            return new MeansWord(own, "");
        }

        if (Vocabulary.Deeds.TryGetValue(said, out var refill) && refill == DeedName.RefillTank.Code)
        {
            return new MeansNothing("How much? Say 'refill 10 gal'; or read the tank: 'tank 22'.");
        }

        return Vocabulary.Deeds.TryGetValue(said, out var deed)
            ? new MeansLine(new Did(at, DeedName.FromCode(deed)!, null))
            : null;
    }

    private Understood? Amount(Moment at, string said, Prompt? open)
    {
        if (MeasureText.TryNumber(said, out var bare, out var behind))
        {
            return Bare(at, said, bare, behind, open);
        }

        if (NameThenNumber().Match(said) is not { Success: true } match
            || !MeasureText.TryNumber(match.Groups["amount"].Value, out var value, out var unitWord))
        {
            return null;
        }

        var name = Filler().Replace(match.Groups["name"].Value.Trim(), "").Trim();
        var unit = unitWord.Length == 0 ? null : UnitNames.FromWord(unitWord);
        if (unitWord.Length > 0 && unit is null)
        {
            return Vocabulary.Readings.ContainsKey(name) || Vocabulary.Deeds.ContainsKey(name)
                ? new MeansNothing($"'{unitWord}' is no unit that is known here. Expected: {UnitNames.CodesOf(Kind(name))}.")
                : null;
        }

        if (Vocabulary.Readings.TryGetValue(name, out var reading))
        {
            var readingName = ReadingName.FromCode(reading)!;
            if (unit is { } written && written.Kind() != readingName.Kind)
            {
                return OtherKind(at, readingName, new(value, written), said);
            }

            return new MeansLine(new Reading(at, readingName, new(value, unit ?? Assumed(readingName, open))));
        }

        if (Vocabulary.Deeds.TryGetValue(name, out var deedCode) && DeedName.FromCode(deedCode) is { Kind: { } kind } deed)
        {
            var assumed = deed == DeedName.CloseDraw ? setting.Units.SmallVolume : setting.Units.Preferred(kind);
            var measure = new Measure(value, unit ?? assumed);
            return measure.Unit.Kind() == kind
                ? new MeansLine(new Did(at, deed, measure))
                : new MeansNothing($"'{said}': {deed.Spoken} wants {UnitNames.CodesOf(kind)}.");
        }

        return null;
    }

    /// <summary><c>pan 12 Brix</c> and <c>draw 2 qt</c>: the unit says which of two things is meant.</summary>
    private static Understood OtherKind(Moment at, ReadingName name, Measure measure, string said)
    {
        if (name == ReadingName.PanDepth && measure.Unit == Unit.Brix)
        {
            return new MeansLine(new Reading(at, ReadingName.PanBrix, measure));
        }

        if (name == ReadingName.DrawTemperature && measure.Unit == Unit.Brix)
        {
            return new MeansLine(new Reading(at, ReadingName.DrawBrix, measure));
        }

        if (name == ReadingName.DrawTemperature && measure.Unit.Kind() == Dimension.Volume)
        {
            return new MeansLine(new Did(at, DeedName.CloseDraw, measure));
        }

        return new MeansNothing($"'{said}': {name.Spoken} is read in {UnitNames.CodesOf(name.Kind)}, not in {measure.Unit.Shown()}.");
    }

    private Understood Bare(Moment at, string said, double value, string behind, Prompt? open)
    {
        var asked = open is null ? null : ReadingName.FromCode(open.Ask);
        var unit = behind.Length == 0 ? null : UnitNames.FromWord(behind);
        if (behind.Length > 0 && unit is null)
        {
            // "7 lb wood", "22 gal tank": the name behind the amount.
            return AmountThenName().Match(said) is { Success: true } match
                && Amount(at, $"{match.Groups["name"].Value} {match.Groups["amount"].Value}", open) is { } turned
                ? turned
                : new MeansNothing($"'{behind}' is no unit that is known here. Expected: {Expected(open)}.");
        }

        if (asked is not null && (unit is null || unit.Value.Kind() == asked.Kind))
        {
            return new MeansLine(new Reading(at, asked, new(value, unit ?? Assumed(asked, open))));
        }

        return unit is null
            ? new MeansNothing($"'{said}' of what? Say it with its name, like 'tank 22', 'depth 1 1/2' or 'draw 217.4'.")
            : ByUnit(at, said, new(value, unit.Value), open);
    }

    private static Understood ByUnit(Moment at, string said, Measure measure, Prompt? open)
    {
        var name = measure.Unit.Kind() switch
        {
            Dimension.Temperature => ReadingName.DrawTemperature,
            Dimension.Length => ReadingName.PanDepth,
            Dimension.Sugar => measure.Value >= 40 ? ReadingName.HydrometerBrix : ReadingName.SapBrix,
            _ => null,
        };
        if (name is not null && (open is null || ReadingName.FromCode(open.Ask) is null))
        {
            return new MeansLine(new Reading(at, name, measure));
        }

        if (open is not null && ReadingName.FromCode(open.Ask) is { } asked)
        {
            return new MeansNothing(
                $"'{said}' is understood as {measure}; {asked.Spoken} is asked. Expected: {Expected(open)}. Anything else wants its name before it, like 'tank 12 gal'.");
        }

        return measure.Unit.Kind() switch
        {
            Dimension.Mass => new MeansLine(new Did(at, DeedName.AddWood, measure)),
            Dimension.Volume => new MeansNothing($"'{said}' of what? Say 'tank {measure}', 'drew {measure}' or 'refill {measure}'."),
            _ => new MeansNothing($"'{said}' is understood as {measure}. Expected: {Expected(open)}."),
        };
    }

    private static MeansNothing Lost(string said, Prompt? open) =>
        new MeansNothing($"'{said}' is not understood. Expected: {Expected(open)}. 'help' lists the words.");

    private static string Expected(Prompt? open)
    {
        if (open is null)
        {
            return "a reading like 'tank 22', something done like 'wood', or something seen like 'boil rolling'";
        }

        if (open.Choices is { } choices)
        {
            return string.Join(", ", choices);
        }

        return open.Ask == Prompt.Confirm || open.Unit is not { } unit
            ? "yes, no, skip or later"
            : $"a number in {UnitNames.CodesOf(unit.Kind())}, skip or later";
    }

    private Unit Assumed(ReadingName name, Prompt? open) =>
        open is { Unit: { } unit } && open.Ask == name.Code ? unit
        : name == ReadingName.DrawnVolume ? setting.Units.SmallVolume
        : setting.Units.Preferred(name.Kind);

    private static Dimension Kind(string name) => Vocabulary.Readings.TryGetValue(name, out var reading)
        ? ReadingName.FromCode(reading)!.Kind
        : DeedName.FromCode(Vocabulary.Deeds[name])!.Kind ?? Dimension.Volume;

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Spaces();

    [GeneratedRegex(@"^(?<name>[a-zA-Z][a-zA-Z \-]*?)\s*[=:+]?\s*(?<amount>[-−]?[\d.,¼½¾⅛⅜⅝⅞⅓⅔].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex NameThenNumber();

    [GeneratedRegex(@"^(?<amount>[\d.,¼½¾⅛⅜⅝⅞⅓⅔ /\-]+\s*[a-zA-Z°""'/%]+)\s+(?:of |in |in the )?(?<name>[a-zA-Z][a-zA-Z ]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex AmountThenName();

    [GeneratedRegex(@"\b(is|at|was|now|reads|shows|has)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Filler();
}
