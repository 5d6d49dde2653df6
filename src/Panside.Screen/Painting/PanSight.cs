using Panside.Guide.Advice;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Screen.Painting;

/// <summary>What is drawn of a pan, as its rig file describes it and as it stands now. Lengths and volumes in the units that are shown.</summary>
/// <param name="Sweetness">The sugar of each channel from the feed to the draw-off, in Brix, as reckoned; null before the fire.</param>
/// <param name="Depth">How deep it stands; null where nobody has read it.</param>
/// <param name="Least">The least depth.</param>
/// <param name="Run">The depth that it is run at.</param>
/// <param name="Flood">The depth for a shutdown.</param>
/// <param name="Deep">The unit of the depths.</param>
/// <param name="HasFloat">Whether a float feeds it; else a hand does.</param>
/// <param name="IsDrawn">Whether the draw-off is open.</param>
/// <param name="IsCovered">Whether a cover lies on it.</param>
/// <param name="Tank">The head tank.</param>
/// <param name="Fire">The fire under it.</param>
internal sealed record PanSight(
    IReadOnlyList<double?> Sweetness, double? Depth, double Least, double Run, double Flood, Unit Deep, bool HasFloat, bool IsDrawn, bool IsCovered,
    TankSight Tank, FireSight Fire)
{
    /// <summary>The pan behind, that feeds it; null where there is one pan.</summary>
    public BackSight? Back { get; init; }

    /// <summary>Whether its depth is what was read last, and nobody knows what it is now: an emergency is not reckoned on.</summary>
    public bool IsLastRead { get; init; }

    /// <summary>Whether a valve that is set by hand feeds it.</summary>
    public bool IsByValve { get; init; }

    /// <summary>How syrup comes out of it.</summary>
    public DrawnBy DrawnBy { get; init; }

    /// <summary>The sight of a situation. Nothing is reckoned here that the session has not reckoned.</summary>
    public static PanSight Of(Situation now)
    {
        var (rig, units, state) = (now.Setting.Rig, now.Setting.Units, now.State);
        double Of(Length depth) => units.From(depth).Value;
        double Liters(double liters) => units.From(Volume.FromLiters(liters)).Value;
        var isEmergency = TopRow.IsEmergency(state, now.Setting);
        var tank = state.Rig.Tank is { } sap ? units.From(sap).Value : (double?)null;
        return new(
            now.IsLit ? [.. state.Rigs.Expected.ChannelBrix.Select(channel => (double?)channel.P50)] : [.. Enumerable.Repeat((double?)null, rig.Channels)],
            now.DepthRead is { } read ? Of(isEmergency ? read : now.DepthTold) : null,
            Of(rig.LeastDepth), Of(rig.RunDepth), Of(rig.FloodDepth), units.Preferred(Dimension.Length),
            rig.HasFloat, now.DrawOpenSince is not null, Facts.Holds(now, "covered"),
            new(
                tank, double.Max(units.From(rig.Tank).Value, tank ?? 0), rig.TankIsStated,
                now.IsLit && !now.IsHeld && now.StopLiters is { } stop ? Liters(stop) : null, units.Preferred(Dimension.Volume)),
            FireSight.Of(now))
        {
            IsLastRead = isEmergency,
            IsByValve = rig.Feed == Feed.ByValve,
            DrawnBy = rig.DrawnBy,
            Back = rig.Back is { } back
                ? new(now.BackDepthRead is not null && now.BackDepthTold is { } told ? Of(told) : null, Of(back.LeastDepth), Of(back.FloodDepth))
                : null,
        };
    }
}

/// <summary>What is drawn of a pan behind, in the unit of the depths; all of them over its flues.</summary>
/// <param name="Depth">How deep it stands; null where nobody has read it.</param>
/// <param name="Least">The least depth.</param>
/// <param name="Flood">The depth for a shutdown.</param>
internal sealed record BackSight(double? Depth, double Least, double Flood);

/// <summary>What is drawn of the head tank.</summary>
/// <param name="Now">What it holds by now, as reckoned; null where nobody has read it.</param>
/// <param name="Holds">What it can hold, or as much as is drawn of it.</param>
/// <param name="IsFullKnown">Whether the rig file says what it can hold.</param>
/// <param name="Stop">Where the firing stops; null where that is not known, or wood is held already.</param>
/// <param name="Unit">The unit of all of them.</param>
internal sealed record TankSight(double? Now, double Holds, bool IsFullKnown, double? Stop, Unit Unit);

/// <summary>What is drawn of the fire.</summary>
/// <param name="Flames">How high it burns: 0 for none, 1 for coals that are nearly out, to 3 for a fire that is fed.</param>
/// <param name="Ways">The same in words, with what was seen of boil and coals and how long ago, the longest way first.</param>
internal sealed record FireSight(int Flames, IReadOnlyList<string> Ways)
{
    /// <summary>The fire of a situation.</summary>
    public static FireSight Of(Situation now)
    {
        if (!now.IsLit)
        {
            return new(0, [now.Setting.Rig.OfFire("no fire yet", "the burner is off")]);
        }

        var coals = now.State.Last(ObservationName.Coals);
        var seen = new[] { ("boil", now.State.Last(ObservationName.Boil)), ("coals", coals) }.Where(one => one.Item2 is not null)
            .Select(one => (What: $"{one.Item1} {one.Item2!.Value.Value}", Minutes: now.State.MinutesSince(one.Item2.Value.At))).ToList();
        var flames = now.Setting.Rig.IsBurner ? now.IsBurnerOn ? 3 : 0 : now.IsFiring && !now.IsHeld ? 3 : coals?.Value switch { "spent" => 0, "thin" => 1, _ => 2 };

        // What was seen before a burner was shut off is told beside that it is off: "rolling" alone would be read as now.
        var off = now.Setting.Rig.IsBurner && !now.IsBurnerOn ? $"the {now.Setting.Rig.Heater} is off; " : "";
        return seen.Count == 0
            ? new(flames, [now.Setting.Rig.OfFire("the fire is lit", now.IsBurnerOn ? "the burner is on" : "the burner is off")])
            : new(flames,
            [
                off + (seen is [var only] ? $"{only.What}, seen {Times.Age(only.Minutes)}" : string.Join(", ", seen.Select(one => $"{one.What} {Times.Age(one.Minutes)}"))),
                $"{off}{string.Join(", ", seen.Select(one => one.What))}; {Times.Age(seen.Max(one => one.Minutes))}",
            ]);
    }
}
