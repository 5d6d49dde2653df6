using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Screen.Painting;

/// <summary>What is drawn on one axis of time: what was read and done before now, and what is forecast. Times are minutes from now, less than 0 before it.</summary>
/// <param name="Now">The time now.</param>
/// <param name="Rows">The rows, from the top.</param>
internal sealed record TimeSight(DateTimeOffset Now, IReadOnlyList<TimeRow> Rows)
{
    /// <summary>How far it looks to either side, in minutes.</summary>
    public const double Reach = 120;

    /// <summary>The sight of a situation; null before the first line and after the end. Nothing is reckoned that the session has not reckoned.</summary>
    public static TimeSight? Of(Situation now)
    {
        if (now.State.Now is not { } at || now.State.IsOver)
        {
            return null;
        }

        double From(DateTimeOffset time) => (time - at.Time).TotalMinutes;
        var rig = now.Setting.Rig;
        var draw = now.DrawPointToday;
        IReadOnlyList<(double, double)> Read(ReadingName name, Func<Measure, double> share) => now.State.Readings.TryGetValue(name, out var all)
            ? [.. all.Select(one => (From(one.At.Time), share(one.Value))).Where(one => one.Item1 >= -Reach)]
            : [];

        // In an emergency nothing that calls for wood or syrup draws the eye away.
        var isCalm = !TopRow.IsEmergency(now.State, now.Setting);
        TimeBand? Band(string forecast) => isCalm && Forecasts.Said(now, forecast) is { P5: { } soonest, P50: { } likely, P95: { } latest } ? new(soonest, likely, latest) : null;
        var wood = isCalm && now.WoodDue is { } due ? double.Max(From(due), 0) : (double?)null;
        var most = double.Max(now.Setting.Units.From(rig.Tank).Value, 1);
        return new(at.Time,
        [
            new("Tank") { Place = 2, Points = Read(ReadingName.TankVolume, read => now.Setting.Units.Convert(read, now.Setting.Units.Preferred(Dimension.Volume)).Value / most) },
            new("Depth") { Place = 4, Points = Read(ReadingName.PanDepth, read => UnitSystem.Length(read) / rig.FloodDepth) },
            new(rig.HasDrawOff ? "Draw-off" : "Degrees")
            {
                Place = 3,
                Points = Read(ReadingName.DrawTemperature, read => (UnitSystem.Temperature(read) - now.State.Rig.Boiling).Celsius / (draw - now.State.Rig.Boiling).Celsius),
            },
            new(!rig.IsBurner ? "Wood" : rig.Fuel == Fuel.Electric ? "Heat" : "Burner")
            {
                Ticks = [.. now.State.Charges.Select(charge => From(charge.Time)), .. wood is { } next ? [next] : Array.Empty<double>()],
                Band = now.IsEnding || now.IsHeld ? null : Band(Forecasts.ToLastCharge),
                Ahead = rig.OfFire("last", "off"),
            },
            new(rig.IsBatch ? "Batch" : "Draw") { Marks = [.. now.State.Draws.Select(one => From(one.Time))], Band = now.IsEnding ? null : Band(Forecasts.ToDraw), Ahead = rig.IsBatch ? "batch" : "draw" },
            new("Boil") { Band = now.IsHeld ? Band(Forecasts.ToStill) : null, Ahead = "stops" },
        ]);
    }
}

/// <summary>One row of the axis.</summary>
/// <param name="Name">What it shows.</param>
internal sealed record TimeRow(string Name)
{
    /// <summary>Readings: when, and how high as a share of the row.</summary>
    public IReadOnlyList<(double Minute, double Share)> Points { get; init; } = [];

    /// <summary>What was done often, and when it is due.</summary>
    public IReadOnlyList<double> Ticks { get; init; } = [];

    /// <summary>What was done seldom.</summary>
    public IReadOnlyList<double> Marks { get; init; } = [];

    /// <summary>When it is forecast; null where it is not.</summary>
    public TimeBand? Band { get; init; }

    /// <summary>What is forecast, in a word.</summary>
    public string Ahead { get; init; } = "";

    /// <summary>Its place among the rows that forecast nothing and have no ticks, from 2 for what explains most to 5 for what goes first.</summary>
    public int Place { get; init; } = 5;

    /// <summary>What goes first where there is less room, from 0 for what stays: what is still to come stays, then what explains it.</summary>
    public int Rank => Band is not null ? 0 : Ticks.Count > 0 ? 1 : Place;

    /// <summary>Whether there is anything to show.</summary>
    public bool IsEmpty => Points.Count == 0 && Ticks.Count == 0 && Marks.Count == 0 && Band is null;
}

/// <summary>When something is forecast, in minutes from now: 9 times in 10 between the soonest and the latest.</summary>
internal readonly record struct TimeBand(double Soonest, double Likely, double Latest);
