using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>
/// Cold sap or clean water that takes a dying boil off the boil for good: what heat is left does not bring so much liquid back to it. Each amount
/// is tried on the members, the least first. It only shortens the wait; that it worked is seen, like any still boil.
/// </summary>
/// <param name="Liquid">The least amount that does it.</param>
/// <param name="Clear">Minutes until it is clear to leave then: the pour, the time until a look counts, and the look.</param>
/// <param name="Waiting">Minutes by which it is clear without it in as many members as the pour stills.</param>
public sealed record StillingPour(Volume Liquid, Band Clear, double Waiting)
{
    /// <summary>Tried so deep over the whole pan, in inches. More takes hours to boil off the next day; no source.</summary>
    private static readonly double[] Deeper = [0.25, 0.5, 0.75, 1];

    /// <summary>So many of the members must not boil again. The others boil on, as they would have without it.</summary>
    private const double Stilled = 0.8;

    /// <summary>A pour is worth carrying where it brings leaving nearer by so many minutes; no source.</summary>
    private const double Worth = 10;

    /// <summary>Flames of the last charge have burned down by then; no source.</summary>
    private static readonly TimeSpan FlamesDown = TimeSpan.FromMinutes(10);

    /// <summary>A pan is not filled nearer to its wall than this: what is poured in splashes; no source.</summary>
    private static readonly Length UnderWall = Length.FromInches(1);

    /// <summary>Who has poured so is not sent for pails again within this time; no source.</summary>
    private static readonly TimeSpan Once = TimeSpan.FromHours(1);

    /// <summary>Minutes from the advice to the word, with a pail to be fetched; no source.</summary>
    private static readonly Band Done = new(2, 5, 20);

    /// <summary>The pour that helps now; null where none does, or none is needed.</summary>
    public static StillingPour? Of(Situation now)
    {
        if (!IsToBeTried(now))
        {
            return null;
        }

        // Thin coals are waited for after it as over any still pan.
        var settles = ClearToLeave.SettlingStirred.TotalMinutes
            + (now.IsCautious && !now.Setting.Rig.IsBurner && now.State.Last(ObservationName.Coals)?.Value == "thin" ? ClearToLeave.StillLong(now).TotalMinutes : 0);
        var clear = new Band(settles + Done.P5, settles + Done.P50, settles + Done.P95);
        return Clearing.MinutesAt(now, Stilled) is { } waiting && waiting - clear.P50 >= Worth
            && Amounts(now).FirstOrDefault(liquid => now.Ahead.WithoutFeedOncePoured(liquid).StillMinutes(Stilled) < 1) is { Liters: > 0 } least
                ? new(least, clear, waiting)
                : null;
    }

    /// <summary>
    /// Only once the fire is down as far as looks tell it, so that nothing but the boil is waited for; and not where something else comes first. Of two
    /// pans the one that boils is not known.
    /// </summary>
    private static bool IsToBeTried(Situation now)
    {
        var (state, rig) = (now.State, now.Setting.Rig);
        return now.IsHeld && !now.IsPanEmptied && rig.Back is null && !now.IsBurnerOn && now.DrawOpenSince is null
            && now.LastWood is { } wood && state.MinutesSince(wood) >= FlamesDown.TotalMinutes
            && IsSince(state.Last(ObservationName.Boil), wood, "simmering", "steady")
            && (rig.IsBurner || IsSince(state.Last(ObservationName.Coals), wood, "thin", "spent"))
            && state.Last(ObservationName.Smell)?.Value != "scorched" && state.Last(ObservationName.Foam)?.Value is not ("rising" or "over")
            && !now.Setting.Flow.Watches.Any(watch => now.Setting.Flow.IsPourToStill(watch.Id) && state.Watched.TryGetValue(watch.Id, out var poured) && state.MinutesSince(poured) < Once.TotalMinutes)
            && !(state.ChilledAt is { } chilled && state.MinutesSince(chilled) < ClearToLeave.SettlingStirred.TotalMinutes)
            && now.DepthRead is not null;
    }

    private static bool IsSince(Noted<string>? seen, Moment wood, params ReadOnlySpan<string> states) => seen is { } look && look.At.Time > wood.Time && states.Contains(look.Value);

    /// <summary>Whole gallons, or two liters, as far as the wall has room.</summary>
    private static IEnumerable<Volume> Amounts(Situation now)
    {
        var (rig, step) = (now.Setting.Rig, 2 * Forecasts.VolumeStep(now.Setting.Units));
        return Deeper.Select(inches => now.Setting.Units.From(rig.PanArea * Length.FromInches(inches)))
            .Select(measure => now.Setting.Units.Volume(measure.With(double.Max(double.Ceiling(measure.Value / step), 1) * step)))
            .Distinct().Where(liquid => now.Depth + (liquid / rig.PanArea) <= rig.WallDepth - UnderWall);
    }
}
