using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>When it is syrup: the draw point, and how far a batch is on or off its target.</summary>
internal static class FinishTable
{
    /// <summary>What to say with every draw point.</summary>
    public const string HydrometerDecides = "The thermometer calls for the hydrometer test; the hydrometer decides.";

    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Is it syrup?",
    [
        new("draw-point", "the temperature at which boiling liquid is syrup today")
        {
            Example = "--boiling-water 210.4F",
            Inputs = [Inputs.Target, .. Inputs.Air],
            OneOf = Inputs.AirOneOf,
            Reckon = DrawPointToday,
            Basis = new(
                "boiling water today, plus the elevation of pure sugar at the target",
                ["S11", "S1", "S12"],
                "60 to 70 Brix, 75 to 108 kPa; the band holds what the sources' disagreement leaves",
                "invert sugar and minerals, which raise the point a little; a thermometer's own error"),
        },
        new("off-target", "how far a batch is on or off its target")
        {
            Example = "--reading 58 --temperature 205F",
            Inputs =
            [
                Inputs.Reading with { With = "temperature" },
                Inputs.Temperature("temperature", "the temperature of the sample", "205F", most: 105) with { IsOptional = true },
                Inputs.Sugar("brix", "the true density, where it is known", "66.2", 45, 75) with { IsOptional = true },
                Inputs.Target,
                Inputs.SyrupGlass,
            ],
            OneOf = ["reading", "brix"],
            Reckon = OffTarget,
            Basis = new(
                "the hydrometer's reading, corrected for temperature, less the target",
                ["S3", "S19", "S10"],
                "45 to 75 Brix, 0 to 105 °C; the hydrometer to 0.33 Brix, so within 0.3 counts as on target (common practice)",
                "what the law allows: see density-law"),
        },
    ]);

    private static Result DrawPointToday(Given given)
    {
        var air = Air.Of(given);
        var target = given.Sugar("target");
        var point = DrawPoint.For(target, air.Station);
        var band = (point.Lowest, point.Highest);
        (Temperature, Temperature)? water = null;
        if (air.Band is { } day)
        {
            band = (DrawPoint.For(target, day.Low).Lowest, DrawPoint.For(target, day.High).Highest);
            water = (BoilingWater.TemperatureAt(day.Low), BoilingWater.TemperatureAt(day.High));
        }

        var boiling = BoilingWater.TemperatureAt(air.Station);
        return new(
            [
                given.Temperature("draw-point", point.Temperature, band),
                given.Temperature("boiling-water", boiling, water),
                given.Rise("over-boiling-water", point.Elevation, (point.Lowest - point.Temperature + point.Elevation, point.Highest - point.Temperature + point.Elevation)),
            ],
            [
                $"Over boiling water the band is {BrixAt(point.Lowest)} to {BrixAt(point.Highest)} Brix: so far do the sources disagree.",
                HydrometerDecides,
                .. Air.Notes(given),
            ]);

        string BrixAt(Temperature temperature)
        {
            var brix = BoilingPointElevation.SugarContentAt(temperature - boiling, air.Station).Brix;
            return Show.Brix("", brix).Rounded(brix);
        }
    }

    private static Result OffTarget(Given given)
    {
        var target = given.Sugar("target");
        var check = given.Has("brix")
            ? TargetCheck.Of(given.Sugar("brix"), target)
            : TargetCheck.OfReading(given.Sugar("reading"), given.Temperature("temperature"), target, InstrumentTable.Glass(given));
        return new(
            [
                Show.Word("verdict", Word(check.Verdict)),
                Show.Brix("true-density", check.TrueSugarContent.Brix, given.Has("brix") ? null : InstrumentTable.HydrometerBrix),
                Show.Brix("over-target", check.BrixOverTarget),
            ],
            [Advice(check.Verdict)]);
    }

    /// <summary>A verdict in a word or two.</summary>
    public static string Word(TargetVerdict verdict) => verdict switch
    {
        TargetVerdict.Thin => "too thin",
        TargetVerdict.Heavy => "too heavy",
        _ => "on target",
    };

    private static string Advice(TargetVerdict verdict) => verdict switch
    {
        TargetVerdict.Thin => "Boil on, or put it back: thin syrup spoils. 'panside reckon boil-off' tells how much water.",
        TargetVerdict.Heavy => "Thin it, or it crystallizes: 'panside reckon thin' tells with how much.",
        _ => "As near as a hydrometer can tell.",
    };
}
