using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Properties;

/// <summary>The limits that all calls on sugar solutions share.</summary>
internal static class SolutionLimits
{
    public const double MostBrix = 85;

    public static void Check(SugarContent content)
    {
        if (content.Brix > MostBrix)
        {
            throw OutOfRange.For("The sugar content in Brix", content.Brix, "0 to 85 Brix");
        }
    }

    public static void Check(Temperature temperature)
    {
        if (temperature.Celsius is not (>= 0 and <= 110))
        {
            throw OutOfRange.For(
                "The temperature of the liquid in °C",
                temperature.Celsius,
                "0 to 110 °C (32 to 230 °F); degrees Fahrenheit were perhaps given as Celsius, or the other way round");
        }
    }
}
