using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Belief;

/// <summary>Doubts any reading that lies far from what is expected of it, whatever it reads, and names the slip that would explain it.</summary>
internal sealed class Unexpected(UnitSystem units)
{
    /// <summary>The doubt; null where the reading is about what is expected, or warns of danger.</summary>
    public Doubt? Doubt(IBoil boil, Reading reading)
    {
        if (FarOff(boil, reading) is not { } expected || WarnsOfDanger(boil, reading, expected))
        {
            return null;
        }

        var measure = reading.Measure;
        return new(
            $"{Amount.Plain(measure)} {reading.Name.Where}? About {Shown(reading, expected)} is expected.{Slip(measure, expected)}",
            reading.Name.WouldTake(boil, measure, IsHigh(measure, expected)));
    }

    /// <summary>How to take back what warns of danger and is far off all the same: it is acted on first. Null for anything else.</summary>
    public string? WayBack(IBoil before, Reading reading) =>
        FarOff(before, reading) is { } expected && WarnsOfDanger(before, reading, expected)
            ? $"About {Shown(reading, expected)} was expected, {Amount.Plain(reading.Measure)} is said. If it is mistyped, 'undo' takes it back."
            : null;

    /// <summary>By how many deviations a reading lies above what is expected of it; null where nothing is.</summary>
    public double? Off(IBoil boil, Reading reading) => reading.Name.Expected(boil)?.Off(Said(reading.Measure));

    private Expectation? FarOff(IBoil boil, Reading reading) =>
        reading.Name.Expected(boil) is { } expected && expected.IsFar(Said(reading.Measure)) ? expected : null;

    private bool WarnsOfDanger(IBoil boil, Reading reading, Expectation expected) => boil.Last(DeedName.LitFire) is not null
        && reading.Name.WarnsOfDanger(boil, reading.Measure, IsHigh(reading.Measure, expected));

    private bool IsHigh(Measure measure, Expectation expected) => expected.Off(Said(measure)) > 0;

    /// <summary>What is said, in the unit of its expectation: liters, meters, °C, Brix or kPa.</summary>
    private double Said(Measure measure) => measure.Unit.Kind() switch
    {
        Dimension.Volume => units.Volume(measure).Liters,
        Dimension.Length => UnitSystem.Length(measure).Meters,
        Dimension.Temperature => UnitSystem.Temperature(measure).Celsius,
        Dimension.Pressure => UnitSystem.Pressure(measure).Kilopascals,
        _ => measure.Value,
    };

    private string Shown(Reading reading, Expectation expected) => Amount.Shown(reading.Name.Kind switch
    {
        Dimension.Volume => units.From(Volume.FromLiters(expected.Mean), reading.Name.UnitIn(units)),
        Dimension.Length => Tenths(units.From(Length.FromMeters(expected.Mean))),
        Dimension.Temperature => units.From(Temperature.FromCelsius(expected.Mean), reading.Measure.Unit),
        Dimension.Pressure => units.Convert(new(expected.Mean, Unit.Kilopascal), units.Preferred(Dimension.Pressure)),
        _ => new(expected.Mean, Unit.Brix),
    });

    /// <summary>A depth is reckoned to no more digits than a ruler shows in a boiling pan.</summary>
    private static Measure Tenths(Measure depth) => depth.With(double.Round(depth.Value, 1));

    /// <summary>Another unit, or the point in another place, that would fit.</summary>
    private string Slip(Measure measure, Expectation expected)
    {
        bool Fits(Measure other) => double.Abs(expected.Off(Said(other))) <= 3;
        foreach (var unit in Enum.GetValues<Unit>().Where(unit => unit != measure.Unit && unit.Kind() == measure.Unit.Kind()))
        {
            if (Measure.Of(measure.Value, unit) is { } other && Fits(other))
            {
                return $" {Amount.Plain(other)} would fit: type it with its unit.";
            }
        }

        var moved = new[] { Measure.Of(measure.Value / 10, measure.Unit), Measure.Of(measure.Value * 10, measure.Unit) };
        return moved.FirstOrDefault(one => one is { } other && Fits(other)) is { Value: > 0 } fits ? $" Did you mean {Amount.Plain(fits)}?" : "";
    }
}
