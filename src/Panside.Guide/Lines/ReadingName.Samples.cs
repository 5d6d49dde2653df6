using Panside.Guide.Measures;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Lines;

/// <content>What is read of samples: their sugar, and how hot they are.</content>
public sealed partial class ReadingName
{
    /// <summary>Sugar of the raw sap.</summary>
    public static readonly ReadingName SapBrix = new("sap-brix", Dimension.Sugar, "sap", TimeSpan.FromHours(6))
    {
        Instruments = ["refractometer"],
        Words = ["sap", "sap sugar", "raw sap"],
        Usual = _ => Between(1, 4, Unit.Brix),
        Possible = _ => Between(0, 40, Unit.Brix),
        Expected = SapExpected,
        WouldTake = (_, _, isHigh) => isHigh ? "It would take concentrate, or a refractometer far off." : "It would take water in the sap.",
        Doubted = (_, read) => Outside(read, 0.8, 8, "Raw sap has 1 to 4 Brix", "It would take concentrate, or a refractometer far off."),
    };

    /// <summary>Mean sugar of what stands in the pan before the fire is lit.</summary>
    public static readonly ReadingName PanBrix = new("pan-brix", Dimension.Sugar, "pan sugar", TimeSpan.FromHours(6))
    {
        Instruments = ["refractometer"],
        Words = ["pan sugar"],
        Usual = _ => Between(2, 30, Unit.Brix),
        Possible = _ => Between(0, 75, Unit.Brix),
        Expected = boil => !IsLit(boil) && boil.Last(PanBrix!) is null ? Ratio(8, 0.5) : Relative(boil.Expected.PanSugar, 0.15),
        WouldTake = (_, _, _) => BadSample,
        Doubted = (_, read) => Outside(read, 1, 60, "A pan left half done has 2 to 30 Brix on the whole", "It would take a pan of nearly finished syrup."),
    };

    /// <summary>Sugar of a cooled sample from the draw-off side.</summary>
    public static readonly ReadingName DrawBrix = new("draw-brix", Dimension.Sugar, "draw-off sugar", TimeSpan.FromMinutes(30))
    {
        Instruments = ["refractometer"],
        Words = ["draw sugar", "draw-off sugar", "draw-off brix"],
        Usual = _ => Between(5, 66, Unit.Brix),
        Possible = _ => Between(0, 75, Unit.Brix),
        Expected = DrawSugarExpected,
        WouldTake = (_, _, _) => BadSample,
    };

    /// <summary>What the syrup hydrometer shows.</summary>
    public static readonly ReadingName HydrometerBrix = new("hydrometer-brix", Dimension.Sugar, "hydrometer", TimeSpan.FromMinutes(30))
    {
        Instruments = ["hydrometer"],
        Words = ["hydrometer", "hydro", "glass", "syrup"],
        Usual = _ => Between(50, 70, Unit.Brix),
        Possible = _ => Between(0, 85, Unit.Brix),
        Expected = GlassExpected,
        WouldTake = (_, _, _) => "It would take the sap hydrometer, degrees Baumé read as Brix, or a draw far from the draw point.",
        Doubted = (_, read) => Outside(
            read, 45, 72, "A syrup hydrometer shows 50 to 70 Brix", "It would take the sap hydrometer, or degrees Baumé read as Brix."),
    };

    /// <summary>Temperature of the hydrometer's sample.</summary>
    public static readonly ReadingName SampleTemperature = new("sample-temperature", Dimension.Temperature, "sample", TimeSpan.FromMinutes(30))
    {
        Instruments = ["thermometer", "hydrometer"],
        Words = ["sample", "sample temp", "cup"],
        Usual = boil => (boil.Units.From(Temperature.FromCelsius(15)), boil.Units.From(boil.Boiling)),
        Possible = _ => Between(-5, 125, Unit.DegreeCelsius),
        Expected = boil => new(boil.Boiling.Celsius - 20, 14),
        WouldTake = (_, _, _) => "It would take a sample that stood long, or another thermometer.",
        Doubted = (boil, read) => read.Measure is { Unit: Unit.DegreeFahrenheit, Value: >= 55 and <= 72 } && boil.Last(DeedName.CloseDraw) is { } shut && read.At.Time - shut.At.Time < HotFor
            ? new($"{read.Measure} for a cup just drawn? {read.Measure.Value:0.#} Brix would fit: say 'hydrometer {read.Measure.Value:0.#}'.", "It would take a cup set in snow or cold water.")
            : null,
    };

    /// <summary>A cup of syrup is no cooler than a room so soon after the draw: no source.</summary>
    private static readonly TimeSpan HotFor = TimeSpan.FromMinutes(15);

    /// <summary>The rows, in the order in which they are listed.</summary>
    internal static IEnumerable<ReadingName> OfSamples => [SapBrix, PanBrix, DrawBrix, HydrometerBrix, SampleTemperature];

    private const string BadSample = "It would take a sample that was not stirred or not cooled, or a pan left otherwise than was said.";

    private static Expectation? SapExpected(IBoil boil)
    {
        var isRead = boil.Last(SapBrix) is { } before && !(boil.Last(DeedName.RefillTank)?.At.Time > before.At.Time);
        var (mean, deviation) = boil.Expected.Sap;
        return isRead ? new(mean, With(deviation, 0.15)) : Ratio(2.2, 0.28);
    }

    /// <summary>Before the fire a pan of which nobody has read any sugar can hold what the last boil left: from raw sap to syrup.</summary>
    private static Expectation? DrawSugarExpected(IBoil boil) =>
        !IsLit(boil) && boil.Last(PanBrix) is null && boil.Last(DrawBrix) is null && boil.Last(DrawTemperature) is null
            ? Ratio(12, 0.5)
            : Relative(boil.Expected.DrawSugar, 0.2);

    /// <summary>Who floats the glass has drawn at the draw point: it shows about what it shows on target.</summary>
    private static Expectation? GlassExpected(IBoil boil)
    {
        var sample = boil.Last(SampleTemperature) is { } read ? UnitSystem.Temperature(read.Value) : boil.DrawPointToday;
        var warm = Temperature.FromCelsius(double.Clamp(sample.Celsius, 0, 105));
        var target = SugarContent.FromBrix(double.Clamp(boil.Rig.Target.Brix, 45, 75));
        return new(SyrupHydrometer.ReadingOnTarget(target, warm).Brix, 2.5);
    }

    private static Expectation Ratio(double mean, double deviation) => new(mean, deviation) { IsRatio = true };

    private static Expectation Relative((double Mean, double Deviation) expected, double own) =>
        Ratio(expected.Mean, With(expected.Deviation / expected.Mean, own));

    private static Doubt? Outside(Reading reading, double low, double high, string usual, string wouldTake) =>
        reading.Measure.Value < low || reading.Measure.Value > high
            ? new($"{Amount.Plain(reading.Measure)}? {usual}.", wouldTake)
            : null;
}
