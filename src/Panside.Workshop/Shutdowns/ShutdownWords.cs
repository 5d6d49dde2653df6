using System.Globalization;
using Panside.Guide.Measures;
using Panside.Picturing;

namespace Panside.Workshop.Shutdowns;

/// <summary>A practised shutdown in words, for those who do not see its picture.</summary>
internal static class ShutdownWords
{
    /// <summary>The words.</summary>
    public static string Of(Shutdown shutdown)
    {
        var charge = shutdown.Looks.First(look => look.Minute >= shutdown.Marks[0].Minute);
        var gallons = shutdown.Units.Preferred(Dimension.Volume).Shown();
        return $"From {Axis.Time(shutdown.Looks[0].Minute)} to {Axis.Time(shutdown.Looks[^1].Minute)}. "
            + $"{string.Join(", ", shutdown.Marks.Select(mark => $"{mark.Name} {Axis.Time(mark.Minute)}"))}. "
            + $"At the last charge: water still to leave {Forecast(charge.Water, "0.0", gallons)}; "
            + $"time to still {Forecast(charge.Still, "0", "min")}; in the tank {Number(charge.Tank, "0.0")} {gallons}. "
            + $"The truth was in the 90 % band of the water at {Share(shutdown, look => look.Water)} looks, "
            + $"of the time to still at {Share(shutdown, look => look.Still)}.";
    }

    private static string Forecast(Fan fan, string form, string unit) =>
        $"{Number(fan.P5, form)} to {Number(fan.P95, form)} {unit} forecast, middle {Number(fan.P50, form)}, truth {Number(fan.Truth, form)}";

    private static string Share(Shutdown shutdown, Func<ShutdownLook, Fan> fan)
    {
        var within = shutdown.Looks.Count(look => fan(look) is var one && one.Truth >= one.P5 && one.Truth <= one.P95);
        return string.Create(CultureInfo.InvariantCulture, $"{within} of {shutdown.Looks.Count}");
    }

    private static string Number(double value, string form) => value.ToString(form, CultureInfo.InvariantCulture);
}
