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

    /// <summary>All of them, now.</summary>
    public static IEnumerable<Forecast> All(Situation now) => Names.Select(name => One(now, name));

    /// <summary>One of them, now; its values are null where there is none.</summary>
    public static Forecast One(Situation now, string name)
    {
        var units = now.Setting.Units;
        Band? Liters(Band? liters) => liters?.Map(value => units.From(Volume.FromLiters(value)).Value);
        var (band, unit, step) = name switch
        {
            Residual => (Liters(now.ResidualLiters), units.Preferred(Dimension.Volume), VolumeStep(units)),
            Reserve => (Liters(now.ReserveLiters), units.Preferred(Dimension.Volume), VolumeStep(units)),
            ToDraw => (now.MinutesToDraw, Unit.Minute, 5.0),
            ToLastCharge => (now.MinutesToLastCharge, Unit.Minute, 5.0),
            ToStill => (now.StillMinutes, Unit.Minute, 5.0),
            ToClear => (now.MinutesToClear, Unit.Minute, 5.0),
            _ => (now.RateLitersPerHour?.Map(value => units.From(VolumeRate.FromLitersPerHour(value)).Value),
                units.Preferred(Dimension.VolumeRate), units == UnitSystem.Metric ? 2 : 0.5),
        };
        return band is { } b
            ? new(name, unit, Rounded(b.P5, step), Rounded(b.P50, step), Rounded(b.P95, step))
            : new(name, unit, null, null, null);
    }

    /// <summary>The volume that forecasts are honest to, in the unit that is shown.</summary>
    internal static double VolumeStep(UnitSystem units) => units == UnitSystem.Metric ? 2 : 0.5;

    /// <summary>To the step that the forecast is honest to.</summary>
    internal static double Rounded(double value, double step) => double.Round(value / step) * step;
}
