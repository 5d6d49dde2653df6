using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>The forecasts of the stream, from the reckoning, in the rig's units and with honest digits.</summary>
public static class Forecasts
{
    /// <summary>All water that will leave the open pan in the next four hours with no more wood.</summary>
    public const string Residual = "residual-evaporation";

    /// <summary>Sap wanted in the tank to stay above the least depth with no more wood.</summary>
    public const string Reserve = "reserve-needed";

    /// <summary>Until the draw-off reaches the draw point, at the present firing.</summary>
    public const string ToDraw = "minutes-to-draw";

    /// <summary>Until the last charge of wood must be in.</summary>
    public const string ToLastCharge = "minutes-to-last-charge";

    /// <summary>Until the boil goes still, with no more wood.</summary>
    public const string ToStill = "minutes-to-still";

    /// <summary>Until it is clear to leave, if nothing is done but to look.</summary>
    public const string ToClear = "minutes-to-clear";

    /// <summary>Water leaving the pan now.</summary>
    public const string Rate = "evaporation-rate";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> Names { get; } = [Residual, Reserve, ToDraw, ToLastCharge, ToStill, ToClear, Rate];

    /// <summary>All of them, now, as the stream tells them.</summary>
    public static IEnumerable<Forecast> All(Situation now) => Names.Select(name => Told(now, name));

    /// <summary>
    /// One of them, now, as the stream tells it: to a tenth of a gallon or a minute, rounded outward, so that the band holds all that was
    /// reckoned. Rounded to the nearest, a narrow band would lose much of what it should hold. Its values are null where there is none.
    /// </summary>
    public static Forecast Told(Situation now, string name)
    {
        var (band, unit) = Of(now, name, isNextTen: true);
        var step = unit == Unit.Minute ? 1 : now.Setting.Units == UnitSystem.Metric ? 0.5 : 0.1;
        return band is { } b
            ? new(name, unit, Even(double.Floor((b.P5 / step) + Hair), step), Even(double.Round(b.P50 / step), step), Even(double.Ceiling((b.P95 / step) - Hair), step))
            : new(name, unit, null, null, null);
    }

    /// <summary>
    /// One of them, now, as it is said to a person: to half a gallon and five minutes, since finer digits would claim more than is known.
    /// The rate is that of a whole charge; between two it swings by half. Its values are null where there is none.
    /// </summary>
    public static Forecast Said(Situation now, string name)
    {
        var (band, unit) = Of(now, name, isNextTen: false);
        var step = unit == Unit.Minute ? 5 : VolumeStep(now.Setting.Units);
        return band is { } b
            ? new(name, unit, Rounded(b.P5, step), Rounded(b.P50, step), Rounded(b.P95, step))
            : new(name, unit, null, null, null);
    }

    /// <summary>
    /// Whether a forecast is another one than was told last: there or not there, or one of its numbers moved by a tenth of the band or by a
    /// third of itself, and by a step at the least.
    /// </summary>
    public static bool IsAnother(Forecast told, Forecast now)
    {
        if (told.P50 is null || now.P50 is null)
        {
            return told != now;
        }

        var matters = (told.P95 - told.P5) / 10;
        bool Moved(double? before, double? after) => before != after && double.Abs(before!.Value - after!.Value) >= double.Min(matters!.Value, before.Value / 3);
        return Moved(told.P5, now.P5) || Moved(told.P50, now.P50) || Moved(told.P95, now.P95);
    }

    private static (Band? Band, Unit Unit) Of(Situation now, string name, bool isNextTen)
    {
        var units = now.Setting.Units;
        Band? Liters(Band? liters) => liters?.Map(value => units.From(Volume.FromLiters(value)).Value);
        return name switch
        {
            Residual => (Liters(now.ResidualLiters), units.Preferred(Dimension.Volume)),
            Reserve => (Liters(now.ReserveLiters), units.Preferred(Dimension.Volume)),
            ToDraw => (now.MinutesToDraw, Unit.Minute),
            ToLastCharge => (now.MinutesToLastCharge, Unit.Minute),
            ToStill => (now.StillMinutes, Unit.Minute),
            ToClear => (now.MinutesToClear, Unit.Minute),
            _ => ((isNextTen ? now.NextTenMinutesLitersPerHour : now.RateLitersPerHour)?.Map(value => units.From(VolumeRate.FromLitersPerHour(value)).Value),
                units.Preferred(Dimension.VolumeRate)),
        };
    }

    /// <summary>The volume that is said to a person, in the unit that is shown.</summary>
    internal static double VolumeStep(UnitSystem units) => units == UnitSystem.Metric ? 2 : 0.5;

    /// <summary>To the step that is said to a person.</summary>
    internal static double Rounded(double value, double step) => double.Round(value / step) * step;

    /// <summary>What is a whole number of steps but for the last digits of the reckoning is taken as that.</summary>
    private const double Hair = 1e-6;

    /// <summary>So many steps, without the last digits that a tenth leaves.</summary>
    private static double Even(double steps, double step) => double.Round(steps * step, 1);
}
