using System.Collections.Immutable;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Practice.Operator;

namespace Panside.Workshop.Judging;

/// <summary>One way in which a hand or an eye slips: what may be typed instead of a reading.</summary>
/// <param name="Name">What it is called in the table.</param>
/// <param name="Of">All texts that it can lead to: of the reading typed, the newest reading of each kind, the rig's units.</param>
internal sealed record Slip(
    string Name, Func<TypedReading, ImmutableDictionary<ReadingName, Measure>, UnitSystem, IEnumerable<string>> Of)
{
    /// <summary>The row of digits of a keyboard.</summary>
    private const string Keys = "1234567890";

    /// <summary>Degrees Brix for one degree Baumé, near enough from sap to syrup: from memory.</summary>
    private const double BrixOfBaume = 1.8;

    /// <summary>All kinds.</summary>
    public static IReadOnlyList<Slip> All { get; } =
    [
        new("the digit's neighbor on the keyboard", (typed, _, _) => EachDigit(typed, Neighbors)),
        new("two digits swapped", (typed, _, _) => Swapped(typed.Number).Select(typed.With)),
        new("a digit dropped", (typed, _, _) => EachDigit(typed, _ => [""])),
        new("a digit doubled", (typed, _, _) => EachDigit(typed, digit => [$"{digit}{digit}"])),
        new("ten times as much", (typed, _, _) => [typed.With(Typed.Number(typed.Reading.Value * 10))]),
        new("a tenth of it", (typed, _, _) => [typed.With(Typed.Number(typed.Reading.Value / 10))]),
        new("the wrong unit", (typed, _, units) => OtherUnits(typed, units)),
        new("the wrong field", (typed, read, _) => OtherFields(typed, read)),
    ];

    private static IEnumerable<string> Neighbors(char digit)
    {
        var at = Keys.IndexOf(digit, StringComparison.Ordinal);
        return new[] { at - 1, at + 1 }.Where(key => key >= 0 && key < Keys.Length).Select(key => Keys[key].ToString());
    }

    private static IEnumerable<string> EachDigit(TypedReading typed, Func<char, IEnumerable<string>> instead) =>
        from place in Digits(typed.Number)
        from other in instead(typed.Number[place])
        let number = typed.Number[..place] + other + typed.Number[(place + 1)..]
        where number.Any(char.IsAsciiDigit)
        select typed.With(number);

    /// <summary>Two digits that follow each other, with or without a point or a stroke between.</summary>
    private static IEnumerable<string> Swapped(string number)
    {
        var places = Digits(number).ToList();
        foreach (var (first, second) in places.Zip(places.Skip(1)))
        {
            var signs = number.ToCharArray();
            (signs[first], signs[second]) = (signs[second], signs[first]);
            yield return new(signs);
        }
    }

    /// <summary>Either another unit is typed behind the number, or the other unit's number is typed as if it were this one's.</summary>
    private static IEnumerable<string> OtherUnits(TypedReading typed, UnitSystem units)
    {
        if (typed.Reading.Unit == Unit.Brix)
        {
            yield return typed.With(Typed.Number(double.Round(typed.Reading.Value / BrixOfBaume, 1)));
            yield break;
        }

        foreach (var other in Used(typed.Reading.Unit.Kind()).Where(unit => unit != typed.Reading.Unit))
        {
            yield return typed.In(other);
            yield return typed.With(Typed.Number(double.Round(units.Convert(typed.Reading, other).Value, 1)));
        }
    }

    /// <summary>Units that instruments at a boil have.</summary>
    private static IReadOnlyList<Unit> Used(Dimension kind) => kind switch
    {
        Dimension.Volume => [Unit.Gallon, Unit.Quart, Unit.Liter],
        Dimension.Length => [Unit.Inch, Unit.Centimeter, Unit.Millimeter],
        Dimension.Temperature => [Unit.DegreeFahrenheit, Unit.DegreeCelsius],
        _ => [Unit.InchOfMercury, Unit.Hectopascal, Unit.Kilopascal],
    };

    /// <summary>Either this number is typed under another name, or another reading's number is typed as this one.</summary>
    private static IEnumerable<string> OtherFields(TypedReading typed, ImmutableDictionary<ReadingName, Measure> read) =>
        read.OrderBy(other => other.Key.Code, StringComparer.Ordinal)
            .Where(other => other.Value != typed.Reading)
            .SelectMany(other => new[] { typed.As(other.Key), typed.With(Typed.Bare(other.Value)) });

    private static IEnumerable<int> Digits(string number) =>
        Enumerable.Range(0, number.Length).Where(place => char.IsAsciiDigit(number[place]));
}
