using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Workshop.Judging;

/// <summary>What two readings of the tank say of the rate: what a forecast has to be better than.</summary>
internal static class LastRate
{
    /// <summary>Readings closer than this tell no rate, in hours.</summary>
    private const double LeastHours = 0.05;

    /// <summary>Liters an hour between the last two tank readings with no refill, flooding or pour between; null where there are none.</summary>
    public static double? Of(SessionState state, Setting setting)
    {
        if (!state.Readings.TryGetValue(ReadingName.TankVolume, out var tank) || tank.Count < 2)
        {
            return null;
        }

        var (before, last) = (tank[^2], tank[^1]);
        var hours = (last.At.Time - before.At.Time).TotalHours;
        var disturbed = new[] { DeedName.RefillTank, DeedName.FloodPan, DeedName.FillPan }
            .Any(deed => state.Last(deed) is { } done && done.At.Time >= before.At.Time);
        return hours < LeastHours || disturbed
            ? null
            : double.Max((setting.Units.Volume(before.Value) - setting.Units.Volume(last.Value)).Liters, 0) / hours;
    }
}
