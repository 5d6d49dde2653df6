using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Practice;

namespace Panside.Judging;

/// <summary>A session without a record, and what two readings of the tank say of the rate.</summary>
internal sealed class SessionDoor(Setting setting) : IDoor
{
    private readonly Session _session = new(setting);

    /// <inheritdoc/>
    public SessionState State => _session.State;

    /// <inheritdoc/>
    public IReadOnlyList<LineOut> Hear(LineIn line) => _session.Hear(line);

    /// <inheritdoc/>
    public bool IsDue(Moment at) => _session.IsDue(at);

    /// <summary>Liters an hour between the last two tank readings with no refill or flooding between; null where there are none.</summary>
    public double? LastRate
    {
        get
        {
            if (!State.Readings.TryGetValue(ReadingName.TankVolume, out var tank) || tank.Count < 2)
            {
                return null;
            }

            var (before, last) = (tank[^2], tank[^1]);
            var hours = (last.At.Time - before.At.Time).TotalHours;
            var disturbed = new[] { DeedName.RefillTank, DeedName.FloodPan }
                .Any(deed => State.Last(deed) is { } done && done.At.Time >= before.At.Time);
            return hours < 0.05 || disturbed
                ? null
                : double.Max((setting.Units.Volume(before.Value) - setting.Units.Volume(last.Value)).Liters, 0) / hours;
        }
    }
}
