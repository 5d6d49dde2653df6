using Panside.Commands;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>Today's air and today's boiling water.</summary>
internal static class WeatherTable
{
    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Weather and boiling water",
    [
        new("boiling-water", "the temperature at which plain water boils today")
        {
            Example = "--barometer '30.05 inHg' --altitude '900 ft'",
            Inputs = [Inputs.Station, Inputs.Barometer, Inputs.Altitude],
            OneOf = ["pressure", "altitude"],
            Reckon = Boiling,
            Basis = new("the saturation line of water, under the air's own pressure", ["S1", "S2"],
                "75 to 108 kPa; the line to 0.001 °C, a hundredth of an inch of mercury is 0.02 °F",
                "a thermometer's own error; water that is not at a rolling boil"),
        },
        new("pressure", "the air's own pressure at the pan")
        {
            Example = "--barometer '30.05 inHg' --altitude '900 ft'",
            Inputs = [Inputs.BoilingWater, Inputs.Barometer, Inputs.AltitudeTo(3000)],
            OneOf = ["boiling-water", "altitude"],
            Reckon = StationPressure,
            Basis = new("the standard atmosphere; from boiling water, the saturation line", ["S2", "S1"],
                "-400 to 3000 m, 940 to 1060 hPa at sea level; real days differ from the standard one by up to 4 kPa (1.2 inHg)",
                "a report that is reduced with the day's own temperature"),
        },
        new("elevation", "how far over water it boils, and the density from that")
        {
            Example = "--brix 66.9 --boiling-water 210.4F",
            Inputs =
            [
                Inputs.Sugar("brix", "its density", "66.9") with { IsOptional = true },
                Inputs.Temperature("temperature", "the temperature at which it boils", "217.6F", 91.7, 130) with { IsOptional = true },
                .. Inputs.Air,
            ],
            OneOf = ["brix", "temperature"],
            AlsoOneOf = Inputs.AirOneOf,
            Reckon = Elevation,
            Basis = new("the activity of the water in a solution of pure sugar, under the saturation line", ["S11", "S1", "S12"],
                "0 to 85 Brix, 75 to 108 kPa; near syrup the sources leave 0.1 °C (0.2 °F), half a Brix; from 80 Brix none was at hand",
                "invert sugar and minerals, which raise it a little"),
        },
    ]);

    private static Result Boiling(Given given)
    {
        var air = Air.Of(given);
        (Temperature, Temperature)? band = air.Band is { } day
            ? (BoilingWater.TemperatureAt(day.Low), BoilingWater.TemperatureAt(day.High))
            : null;
        return new(
            [
                given.Temperature("boiling-water", BoilingWater.TemperatureAt(air.Station), band, given.Has("pressure") ? 2 : 1),
                given.Pressure("pressure", air.Station, air.Band),
            ],
            [.. Air.Notes(given)]);
    }

    private static Result StationPressure(Given given)
    {
        var air = Air.Of(given);
        return new([given.Pressure("pressure", air.Station, air.Band)], [.. Air.Notes(given)]);
    }

    private static Result Elevation(Given given)
    {
        var air = Air.Of(given).Station;
        var water = BoilingWater.TemperatureAt(air);
        if (!given.Has("brix"))
        {
            if (given.Temperature("temperature") < water)
            {
                throw new UnusableException(
                    $"--temperature: {given.Text("temperature")} is under boiling water, {given.Temperature("", water).Text} today. "
                    + "Were both measured today, with the same thermometer?");
            }

            var rise = given.Temperature("temperature") - water;
            return new(
                [
                    Show.Brix("density", BoilingPointElevation.SugarContentAt(rise, air).Brix),
                    given.Rise("over-boiling-water", rise),
                    given.Temperature("boiling-water", water),
                ],
                [FinishTable.HydrometerDecides, .. Air.Notes(given)]);
        }

        var elevation = BoilingPointElevation.Of(given.Sugar("brix"), air);
        return new(
            [
                given.Rise("over-boiling-water", elevation, digits: 2),
                given.Temperature("boils-at", water + elevation),
                given.Temperature("boiling-water", water),
            ],
            [.. Air.Notes(given)]);
    }
}
