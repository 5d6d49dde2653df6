using Panside.Reckoning.Batch;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>What an instrument shows, and what is true.</summary>
internal static class InstrumentTable
{
    /// <summary>How near the corrected hydrometer comes to the state's chart, in Brix.</summary>
    public const double HydrometerBrix = 0.33;

    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Instruments",
    [
        new("hydrometer", "the true density of a reading; the reading that is on target")
        {
            Example = "--reading 59 --temperature 211F",
            Inputs =
            [
                Inputs.Temperature("temperature", "the temperature of the sample", "211F", most: 105),
                Inputs.Reading,
                Inputs.Target with { Limits = new(45, 75, Guide.Measures.Unit.Brix) },
                Inputs.SyrupGlass,
            ],
            Reckon = Hydrometer,
            Basis = new(
                "sugar density at the sample's temperature, and the glass's own growth",
                ["S3", "S19", "S10"],
                "45 to 75 Brix, 0 to 105 °C; within 0.33 Brix of every row of the state's chart",
                "a dirty or cracked glass, foam, and a sample that cools while it is read"),
        },
        new("sap-hydrometer", "the true sugar of sap of which a hydrometer shows this much")
        {
            Example = "--reading 2.2 --temperature 38F --calibration 68F",
            Inputs =
            [
                Inputs.Sugar("reading", "what the hydrometer shows", "2.2", 0, 20),
                Inputs.Temperature("temperature", "the temperature of the sap", "38F", most: 40),
                new("calibration", "the temperature printed on the hydrometer", "68F") { Words = ["38F", "60F", "68F"] },
            ],
            Reckon = given => new(
                [Show.Brix("true-sugar", SapHydrometer.TrueSugarContent(given.Sugar("reading"), given.Temperature("temperature"), Glass(given)).Brix)]),
            Basis = new(
                "sugar density at the sap's temperature, and the glass's own growth",
                ["S3", "S19", "S24"],
                "0 to 20 Brix, 0 to 40 °C; 0.05 Brix with the chart's statement for 38 °F",
                "minerals in sap, and a reading between the marks"),
        },
        new("refractometer", "the true density of a reading away from 20 °C (68 °F)")
        {
            Example = "--reading 66.2 --temperature 59F",
            Inputs =
            [
                Inputs.Sugar("reading", "what the refractometer shows", "66.2", 0, 75),
                Inputs.Temperature("temperature", "the temperature of the sample", "59F", 10, 30),
            ],
            Reckon = given => new(
                [Show.Brix("true-density", Refractometer.Corrected(given.Sugar("reading"), given.Temperature("temperature")).Brix)],
                ["Only where the instrument does not correct for temperature by itself."]),
            Basis = new(
                "the reading, plus a correction fitted to the table's rows",
                ["S25", "S26"],
                "0 to 75 Brix, 10 to 30 °C; 0.006 Brix with every row read (10 to 17 °C, from 10 Brix), 0.02 above 20 °C",
                "hot, unfiltered syrup from the pan, whose sugar sand and heat mislead it"),
        },
        new("thermometer", "what a thermometer shows too much, and the draw point on it")
        {
            Example = "--shown 211.5F --pressure '29.1 inHg'",
            Inputs =
            [
                new("shown", "what it shows in boiling water", "211.5F")
                {
                    Dimension = Guide.Measures.Dimension.Temperature,
                    Limits = new(86, 108, Guide.Measures.Unit.DegreeCelsius),
                },
                Inputs.Station, Inputs.Barometer, Inputs.Altitude, Inputs.Target,
            ],
            OneOf = ["pressure", "altitude"],
            Reckon = Offset,
            Basis = new(
                "what it shows in boiling water, less what water boils at under today's air",
                ["S1", "S2", "S11"],
                "an offset of up to 5 °C, 75 to 108 kPa; one offset up to syrup is common practice",
                "a thermometer whose error changes over the scale, or whose tip is not deep enough"),
        },
    ]);

    /// <summary>The calibration that was given.</summary>
    public static HydrometerCalibration Glass(Given given) => given.Word("calibration") switch
    {
        "38F" => HydrometerCalibration.At38Fahrenheit,
        "68F" => HydrometerCalibration.At68Fahrenheit,
        _ => HydrometerCalibration.At60Fahrenheit,
    };

    private static Result Hydrometer(Given given)
    {
        var (temperature, target) = (given.Temperature("temperature"), given.Sugar("target"));
        var onTarget = Show.Brix("reads-on-target", SyrupHydrometer.ReadingOnTarget(target, temperature, Glass(given)).Brix, HydrometerBrix);
        if (!given.Has("reading"))
        {
            return new([onTarget]);
        }

        var check = TargetCheck.OfReading(given.Sugar("reading"), temperature, target, Glass(given));
        return new(
            [Show.Brix("true-density", check.TrueSugarContent.Brix, HydrometerBrix), onTarget, Show.Word("verdict", FinishTable.Word(check.Verdict))]);
    }

    private static Result Offset(Given given)
    {
        var air = Air.Of(given);
        var shown = given.Temperature("shown");
        var offset = Thermometer.Offset(shown, air.Station);
        var point = DrawPoint.For(given.Sugar("target"), air.Station);
        var atDraw = point.ShownWith(offset);
        (TemperatureRise, TemperatureRise)? doubt = null;
        (Temperature, Temperature)? water = null;
        if (air.Band is { } day)
        {
            var (low, high) = (BoilingWater.TemperatureAt(day.Low), BoilingWater.TemperatureAt(day.High));
            (doubt, water) = ((shown - high, shown - low), (low, high));
        }

        return new(
            [
                given.Rise("shows-too-much", offset, doubt),
                given.Temperature("boiling-water", BoilingWater.TemperatureAt(air.Station), water),
                given.Temperature("draw-point-on-it", atDraw.Temperature, (atDraw.Lowest, atDraw.Highest)),
            ],
            [
                "The draw point on this thermometer is what it shows in water today, plus the elevation.",
                FinishTable.HydrometerDecides,
                .. Air.Notes(given).Select(note => note == Air.AltitudeAlone
                    ? "From the altitude alone the offset is not sure; the draw point on this thermometer is."
                    : note),
            ]);
    }
}
