using Panside.Commands;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>Today's air at the pan, from whatever is known of it.</summary>
/// <param name="Station">Its pressure.</param>
/// <param name="Band">Between which pressures it lies, where only the altitude is known.</param>
internal readonly record struct Air(Pressure Station, (Pressure Low, Pressure High)? Band)
{
    private const double WeatherKilopascals = 4;
    private const double LeastKilopascals = 75;
    private const double MostKilopascals = 108;

    /// <summary>What to say where only the altitude is known.</summary>
    public const string AltitudeAlone =
        "From the altitude alone the weather is not known: boil plain water today and give --boiling-water.";

    /// <summary>What to say where the pressure is a weather report's.</summary>
    public const string Reduced =
        "A report reduced with the day's own temperature can be off by 0.1 °C (0.2 °F) of boiling water on a cold day; measured water is surer.";

    /// <summary>The air of the inputs that <see cref="Inputs.Air"/> lists.</summary>
    /// <exception cref="UnusableException">Two that say the same thing, or a pressure that is likely a weather report's.</exception>
    public static Air Of(Given given)
    {
        string[] twice = [.. new[] { "boiling-water", "pressure", "barometer" }.Where(given.Has)];
        if (twice.Length > 1)
        {
            throw new UnusableException($"--{twice[0]} and --{twice[1]} both tell today's air. Give one of them.");
        }

        return twice.FirstOrDefault() switch
        {
            "boiling-water" => new(BoilingWater.PressureAt(given.Temperature("boiling-water")), null),
            "pressure" => new(Believed(given), null),
            "barometer" => new(StandardAtmosphere.StationPressure(given.Pressure("barometer"), given.Length("altitude")), null),
            _ => OfAltitude(StandardAtmosphere.PressureAt(given.Length("altitude"))),
        };
    }

    /// <summary>What the air's source calls for saying.</summary>
    public static IEnumerable<string> Notes(Given given) =>
        given.Has("barometer") ? [Reduced] : given.Has("pressure") || given.Has("boiling-water") ? [] : [AltitudeAlone];

    private static Air OfAltitude(Pressure standard) => new(standard, (
        Pressure.FromKilopascals(Math.Max(LeastKilopascals, standard.Kilopascals - WeatherKilopascals)),
        Pressure.FromKilopascals(Math.Min(MostKilopascals, standard.Kilopascals + WeatherKilopascals))));

    private static Pressure Believed(Given given)
    {
        var station = given.Pressure("pressure");
        if (!given.Has("altitude") || !StandardAtmosphere.LooksReducedToSeaLevel(station, given.Length("altitude")))
        {
            return station;
        }

        var here = given.Pressure("pressure", StandardAtmosphere.PressureAt(given.Length("altitude")));
        throw new UnusableException(
            $"--pressure: {given.Text("pressure")} is high for {given.Text("altitude")}, where the standard day has {here.Text}. "
            + "It looks like a pressure reduced to sea level, as weather reports give it: then write --barometer instead of --pressure.");
    }
}
