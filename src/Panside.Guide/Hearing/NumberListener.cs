using System.Text.RegularExpressions;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Hearing;

/// <summary>Hears numbers: <c>tank 22</c>, <c>7 lb wood</c>, and a bare one, which answers what is asked.</summary>
/// <param name="setting">What the session runs on.</param>
internal sealed partial class NumberListener(Setting setting)
{
    private readonly TalkListener _talk = new(setting);
    private readonly BareNumber _bare = new(setting);

    /// <summary>What a number means, with its name or without; null where a line holds none that stands for something.</summary>
    /// <param name="at">When it was said.</param>
    /// <param name="said">The words, with single spaces.</param>
    /// <param name="open">The open prompt; null where nothing is asked.</param>
    public Understood? Hear(Moment at, string said, Prompt? open)
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
            return setting.Readings.Words.ContainsKey(name) || DeedName.Said.ContainsKey(name)
                ? new MeansNothing($"'{unitWord}' is no unit that is known here. Expected: {UnitNames.SpokenOf(Kind(name))}.") { IsCertain = _talk.IsStrange(unitWord) }
                : null;
        }

        if (setting.Rig.Back is not null && PanNames.IsFront(name))
        {
            name = "depth";
        }

        if (setting.Rig.Back is not null && PanNames.OfBack(name)
            && (unit is null || unit.Value.Kind() == Dimension.Length))
        {
            // Of two pans "back 2" is short for the depth of that one; "back 15" can be minutes, and is never guessed at.
            if (unit is null && open?.Ask != ReadingName.BackPanDepth.Code && UnitSystem.Length(new(value, ReadingName.BackPanDepth.UnitIn(setting.Units))) > setting.Rig.Back.FloodDepth)
            {
                return new MeansNothing($"'{said}' can be a depth or minutes. Of the pan say 'back pan {value:0.##} {ReadingName.BackPanDepth.UnitIn(setting.Units).Code()}'.");
            }

            name = "back pan";
        }

        if (setting.Readings.Words.TryGetValue(name, out var reading))
        {
            // Two percent sap: people say percent, and mean Brix.
            unit = unit == Unit.Percent && reading.Kind == Dimension.Sugar ? Unit.Brix : unit;
            return Held(value, unit ?? Assumed(reading, open), measure => measure.Unit.Kind() == reading.Kind
                ? new MeansLine(new Reading(at, reading, measure))
                : OtherKind(at, reading, measure, said));
        }

        if (DeedName.Said.TryGetValue(name, out var deed) && deed.Kind is { } kind)
        {
            var assumed = deed.Reads?.UnitIn(setting.Units) ?? setting.Units.Preferred(kind);
            return Held(value, unit ?? assumed, measure => measure.Unit.Kind() == kind
                ? new MeansLine(new Did(at, deed, measure))
                : new MeansNothing($"'{said}': {deed.Spoken} wants {UnitNames.SpokenOf(kind)}."));
        }

        return null;
    }

    /// <summary>What an amount means, where its quantity can hold it; else why not.</summary>
    private static Understood Held(double value, Unit unit, Func<Measure, Understood> means) =>
        Measure.Of(value, unit) is { } measure ? means(measure) : new MeansNothing($"{Measure.Fault(value, unit)}.");

    /// <summary><c>pan 12 Brix</c> and <c>draw 2 qt</c>: the unit says which of two things is meant.</summary>
    private static Understood OtherKind(Moment at, ReadingName name, Measure measure, string said) => (name.Code, measure.Unit.Kind()) switch
    {
        ("pan-depth", Dimension.Sugar) => new MeansLine(new Reading(at, ReadingName.PanBrix, measure)),
        ("draw-temperature", Dimension.Sugar) => new MeansLine(new Reading(at, ReadingName.DrawBrix, measure)),
        ("draw-temperature", Dimension.Volume) => new MeansLine(new Did(at, DeedName.CloseDraw, measure)),
        _ => new MeansNothing($"'{said}': {name.Spoken} is read in {UnitNames.SpokenOf(name.Kind)}, not in {measure.Unit.Shown()}."),
    };

    private Understood Bare(Moment at, string said, double value, string behind, Prompt? open)
    {
        var asked = open is null ? null : setting.Readings.Find(open.Ask);
        var unit = behind.Length == 0 ? null : UnitNames.FromWord(behind);
        if (behind.Length > 0 && unit is null)
        {
            // "7 lb wood", "22 gal tank": the name behind the amount.
            return AmountThenName().Match(said) is { Success: true } match
                && Hear(at, $"{match.Groups["name"].Value} {match.Groups["amount"].Value}", open) is { } turned
                ? turned
                : new MeansNothing($"'{behind}' is no unit that is known here. Expected: {AskedFor.Expected(open)}.") { IsCertain = _talk.IsStrange(behind) };
        }

        if (unit is null && _bare.Of(value, open) is { } meant)
        {
            return Held(value, meant.UnitIn(setting.Units), measure => new MeansLine(new Reading(at, meant, measure)));
        }

        if (asked is not null && (unit is null || unit.Value.Kind() == asked.Kind))
        {
            return Held(value, unit ?? Assumed(asked, open), measure => new MeansLine(new Reading(at, asked, measure)));
        }

        return unit is null
            ? new MeansNothing($"'{said}' of what? Say it with its name, like {(ReadingName.TankVolume.UnitIn(setting.Units) == Unit.Gallon ? "'tank 22', 'depth 1 1/2' or 'draw 217.4'" : "'tank 80', 'depth 4' or 'draw 103'")}.")
            : Held(value, unit.Value, measure => ByUnit(at, said, measure, open));
    }

    private Understood ByUnit(Moment at, string said, Measure measure, Prompt? open)
    {
        var name = measure.Unit.Kind() switch
        {
            Dimension.Temperature => ReadingName.DrawTemperature,
            Dimension.Length => ReadingName.PanDepth,
            Dimension.Sugar => measure.Value >= 40 ? ReadingName.HydrometerBrix : ReadingName.SapBrix,
            _ => null,
        };
        // Of one pan nothing is measured with a ruler but its depth, whatever is asked.
        if (name is not null && (open is null || setting.Readings.Find(open.Ask) is null || (name == ReadingName.PanDepth && setting.Rig.Back is null)))
        {
            // A ruler stands in a tank as well.
            return open?.Ask == ReadingName.TankVolume.Code ? new MeansUnsure(new Reading(at, name, measure)) : new MeansLine(new Reading(at, name, measure));
        }

        if (open is not null && setting.Readings.Find(open.Ask) is { } asked)
        {
            return new MeansNothing(
                $"'{said}' is understood as {measure}; {asked.Spoken} is asked. Expected: {AskedFor.Expected(open)}. Anything else wants its name before it, like 'tank 12 gal'.");
        }

        return measure.Unit.Kind() switch
        {
            Dimension.Mass => new MeansLine(new Did(at, DeedName.AddWood, measure)),
            Dimension.Volume => new MeansNothing($"'{said}' of what? Say 'tank {measure}', 'drew {measure}', 'poured {measure}' or 'refill {measure}'."),
            _ => new MeansNothing($"'{said}' is understood as {measure}. Expected: {AskedFor.Expected(open)}."),
        };
    }

    private Unit Assumed(ReadingName name, Prompt? open) =>
        open is { Unit: { } unit } && open.Ask == name.Code ? unit : name.UnitIn(setting.Units);

    private Dimension Kind(string name) =>
        setting.Readings.Words.GetValueOrDefault(name)?.Kind ?? DeedName.Said.GetValueOrDefault(name)?.Kind ?? Dimension.Volume;

    [GeneratedRegex(@"^(?<name>[a-zA-Z][a-zA-Z \-]*?)\s*[=:+]?\s*(?<amount>[-−]?[0-9.,¼½¾⅛⅜⅝⅞⅓⅔].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex NameThenNumber();

    [GeneratedRegex(@"^(?<amount>[0-9.,¼½¾⅛⅜⅝⅞⅓⅔ /\-]+\s*[a-zA-Z°""'/%]+)\s+(?:of |in the |in )?(?<name>[a-zA-Z][a-zA-Z ]*)$", RegexOptions.CultureInvariant)]
    private static partial Regex AmountThenName();

    [GeneratedRegex(@"\b(is|at|was|now|reads|shows|has)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Filler();
}
