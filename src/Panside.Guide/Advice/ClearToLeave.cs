using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Words;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <summary>
/// S1: when it is safe to leave. A promise, so it stands on what was seen and not on a forecast alone: the boil seen still and
/// the coals seen down after the last wood, the depth read, and then, with heat as strong as a still boil allows, no way for
/// the pan to fall below its least depth or for any of its sap to pass syrup.
/// </summary>
public static class ClearToLeave
{
    /// <summary>Common practice, no source: a quarter of an hour after the last wood the boil has become much weaker.</summary>
    internal static readonly TimeSpan Settling = TimeSpan.FromMinutes(15);

    /// <summary>
    /// The same after raking, which brings no heat that the coals did not have, and after cold sap, which cools the members as it cools the pan: no
    /// source; docs/worlds.md tells how often it was too soon in simulated worlds.
    /// </summary>
    internal static readonly TimeSpan SettlingStirred = TimeSpan.FromMinutes(10);

    /// <summary>Depth and boil belong together when they were looked at within this time: no source.</summary>
    private static readonly TimeSpan Together = TimeSpan.FromMinutes(20);

    /// <summary>A depth that was read so long before the last look at a still boil is read again, for what drips or leaks unseen: no source.</summary>
    private static readonly TimeSpan Old = TimeSpan.FromHours(1);

    /// <summary>What is still missing, the gravest first; empty when it is safe.</summary>
    public static IReadOnlyList<string> Unmet(Situation now)
    {
        var state = now.State;
        var unmet = new List<string>();
        if (!now.IsLit)
        {
            return [now.Setting.Rig.OfFire("the fire has not been lit", "the burner is not on yet")];
        }

        if (!now.IsPanEmptied && state.Last(ReadingName.PanDepth) is { } shown && UnitSystem.Length(shown.Value) < now.Setting.Rig.LeastDepth)
        {
            unmet.Add($"the pan stood at {shown.Value}, under its least depth");
        }

        if (now.IsBackBelowLeast)
        {
            unmet.Add($"the back pan stood at {state.Last(ReadingName.BackPanDepth)!.Value.Value}, under its least depth");
        }

        if (now.IsBurnerOn)
        {
            unmet.Add($"the {now.Setting.Rig.Heater} is on");
        }

        if (now.DrawOpenSince is not null)
        {
            unmet.Add("the draw-off is open");
        }

        Seen(now, ObservationName.Smell, "the smell", unmet, smell => smell == "scorched" ? "the pan smells scorched" : null, required: false);
        Seen(now, ObservationName.Foam, "the foam", unmet, foam => foam is "rising" or "over" ? "the foam is up" : null, required: false);
        if (now.IsPanEmptied)
        {
            // An empty pan off the fire can neither boil dry nor scorch; the fire alone keeps its operator there.
            FireDown(now, unmet);
            return unmet;
        }

        Seen(now, ObservationName.Boil, "the boil", unmet, boil => boil == "still" ? null : $"the boil was last seen {boil}", required: true);
        if (state.Last(ObservationName.Boil) is { Value: "still" } still && TooSoon(now, still.At) is { } soon)
        {
            unmet.Add(soon);
        }

        FireDown(now, unmet);

        if (now.IsBurnerOn)
        {
            // The depth that counts is read once it is off.
        }
        else if (state.Last(ReadingName.PanDepth) is not { } depth || AfterFire(now, depth.At))
        {
            unmet.Add($"the depth has not been read since {TheLastHeat(now)}");
        }
        else if (state.DepthChangedBy is { } by)
        {
            unmet.Add($"the depth has not been read since the last {(by == DeedName.FillPan ? "pour" : by == DeedName.FloodPan ? "flood" : by == DeedName.EmptyPan ? "batch was poured out" : "draw")}");
        }
        else if (StillFrom(state) is { } calm && (calm.Time - depth.At.Time > Together || (state.Last(ObservationName.Boil)!.Value.At.Time - depth.At.Time > Old && !IsToldClear(now))))
        {
            unmet.Add("the depth was read long before the boil went still");
        }
        else if (now.Setting.Rig.Back is not null && BackDepthUnknown(now) is { } unread)
        {
            unmet.Add(unread);
        }
        else if (IsTooShallow(now))
        {
            unmet.Add(now.Unfed!.IsBackShort(0)
                ? $"the back pan is too shallow: {Amount.Shown(now.Setting.Units.From(now.BackDepth!.Value))}"
                : $"the pan is too shallow: {Amount.Shown(now.Setting.Units.From(now.Depth))}");
        }

        if (unmet.Count == 0 && state.Doubted is { } open && TellsOfFire(open) && state.MinutesSince(open.At) <= Old.TotalMinutes)
        {
            unmet.Add($"no answer yet to '{Describe.Line(open)}?'");
        }

        if (unmet.Count == 0 && CanPassSyrup(now) is { } sugar)
        {
            unmet.Add(sugar);
        }

        return unmet;
    }

    /// <summary>Whether what waits to be settled tells of a fire that burns: wood, a boil that is up, coals that are deep.</summary>
    private static bool TellsOfFire(LineIn line) => line is Did { Name.Code: "add-wood" or "lit-fire" } or Observed { Name.Code: "boil", Is: "rolling" or "steady" } or Observed { Name.Code: "coals", Is: "deep" };

    private static void FireDown(Situation now, List<string> unmet) =>
        Seen(now, ObservationName.Coals, "the coals", unmet, coals => coals switch
        {
            "deep" => "the coals were last seen deep",
            "thin" when !AreThinCoalsDown(now) => "the coals were last seen thin, not spent",
            _ => null,
        }, required: ObservationName.Coals.IsThere(now.Setting.Rig));

    /// <summary>
    /// A thin bed counts as down for a confident hand; for the cautious, once the boil has been seen still at looks so far apart, with no
    /// wood, flood, pour or raking between: a bed that could boil the pan again would have done so.
    /// </summary>
    public static bool AreThinCoalsDown(Situation now) => !now.IsCautious
        || (now.State.StillSince is { } since && now.State.Last(ObservationName.Boil) is { } look && look.At.Time - since.Time >= StillLong(now));

    /// <summary>Common practice waits for coals that are spent, or so long over a still pan: no source.</summary>
    internal static TimeSpan StillLong(Situation now) => now.Setting.Flow.Values[FlowValue.StillLong];

    /// <summary>Why nobody knows how deep the pan behind is; null where it was read since the last heat, flood, pour and draw, and with the boil.</summary>
    private static string? BackDepthUnknown(Situation now) =>
        !now.IsBackReadSince(now.LastWood) ? $"the back pan's depth has not been read since {TheLastHeat(now)}, or since sap went in"
        : StillFrom(now.State) is { } calm && now.State.Last(ReadingName.BackPanDepth) is { } read
            && (calm.Time - read.At.Time > Together || now.State.Last(ObservationName.Boil)!.Value.At.Time - read.At.Time > Old)
            ? "the back pan's depth was read long before the boil went still"
        : null;

    /// <summary>The look from which on the boil was seen still: later ones only bear it out. Null where it was not last seen still.</summary>
    private static Moment? StillFrom(SessionState state) => state.Last(ObservationName.Boil) is { Value: "still" } look ? state.StillSince ?? look.At : null;

    /// <summary>Whether the heat that is left could take the pan below its least depth; of two, whichever.</summary>
    public static bool IsTooShallow(Situation now) => now.IsLit && !now.IsPanEmptied && now.Unfed!.IsShort(0);

    /// <summary>Whether nothing but the sugar at the draw-off side speaks against leaving.</summary>
    public static bool HangsOnDrawSide(Situation now) => now.Unmet is [var only] && only == CanPassSyrup(now);

    /// <summary>Whether the sugar at the draw-off side will speak against leaving, so that a sample may as well be taken while the rest is waited for.</summary>
    public static bool IsDrawSideWanted(Situation now) => now.IsHeld && now.State.StillSince is not null && now.Setting.Rig.Channels > 1
        && now.State.DepthChangedBy is null && !now.IsPanEmptied && CanPassSyrup(now) is NearSyrup or NeverRead;

    /// <summary>Whether one more reading at the draw-off like the last would settle it: one alone, so much thinner than the one before, can be a slip.</summary>
    public static bool IsDrawSideReadOnce(Situation now) => IsDrawSideWanted(now)
        && now.State.DrawOff is { } read && !Thins.Any(deed => now.State.Last(deed)?.At.Time > read.At.Time)
        && read.Before.Brix > read.Sugar.Brix && Thickened(now, read.Sugar.Brix) <= SugarLimit(now);

    /// <summary>
    /// Why a boil seen still tells nothing: flames of a charge just in, or cold sap just poured in, keep a pan still for a while
    /// over a fire that will boil it again. Null where it tells.
    /// </summary>
    private static string? TooSoon(Situation now, Moment still) =>
        Unsettled(now.State, still) is { } after ? $"the boil must be seen still {Amount.Minutes(after.Wait.TotalMinutes)} after {after.What}"
            : now.State.StillSince is null ? "the boil was seen up minutes before: look once more"
            : null;

    /// <summary>
    /// Whether a look that tells of a still boil may be the beginning of one: not where it was seen up so shortly before. Then one of two words was
    /// a slip, and another look tells which.
    /// </summary>
    internal static bool IsBelieved(SessionState state, Moment seen) => IsSettled(state, seen)
        && !(state.Last(ObservationName.Boil) is { Value: "rolling" or "steady" } up && seen.Time - up.At.Time < SettlingStirred);

    /// <summary>Whether a look at the boil is so long after wood, raking and cold sap that a still pan tells something.</summary>
    public static bool IsSettled(SessionState state, Moment seen) => Unsettled(state, seen) is null;

    /// <summary>Minutes until a boil seen still tells something again; 0 where it does.</summary>
    public static double MinutesToSettle(SessionState state) => Unsettling(state).Where(one => one.At is not null)
        .Select(one => double.Max(one.Wait.TotalMinutes - state.MinutesSince(one.At!.Value), 0)).Append(0).Max();

    private static Unsettlement? Unsettled(SessionState state, Moment seen) =>
        Unsettling(state).FirstOrDefault(one => one.At is { } since && seen.Time - since.Time < one.Wait);

    /// <summary>What must be so long before a look. What came after it voids it as well: two pours could else hide what boils between them.</summary>
    private static IEnumerable<Unsettlement> Unsettling(SessionState state)
    {
        yield return new(state.Last(DeedName.AddWood)?.At, "wood", Settling);
        yield return new(state.Last(DeedName.ShutOff)?.At ?? state.Last(DeedName.LitFire)?.At, state.Last(DeedName.ShutOff) is null ? "lighting" : "shutting off", Settling);
        yield return new(state.Last(DeedName.SpreadCoals)?.At, "raking", SettlingStirred);
        yield return new(
            state.ChilledAt,
            state.Last(DeedName.FloodPan)?.At == state.ChilledAt ? "flooding" : state.Last(DeedName.FillPan)?.At == state.ChilledAt ? "a pour" : "filling up",
            SettlingStirred);
    }

    /// <summary>
    /// The most water that can still leave, in liters: of all members, run on without feed, the one that boils away most. A boil
    /// seen still has already cut their heat to what the surface gives off.
    /// </summary>
    private static double WorstLiters(Situation now) => now.Unfed?.ResidualLiters(1) ?? 0;

    /// <summary>Sap is past syrup when it comes so many Brix over the target: from there on it soon chars.</summary>
    private const double PastSyrup = 5;

    /// <summary>So far under that the promise stays: what a careful eye at a thermometer and a dial can be off by. No source.</summary>
    private const double KeptUnder = 3;

    /// <summary>Kilograms in a liter of a pan of some ten Brix ([S5]); a lighter cell takes up more Brix from the same sugar, which is the safe side.</summary>
    private const double ThinDensity = 1.03;

    /// <summary>Two readings of the draw-off that lie no further apart agree, in Brix: no source.</summary>
    private const double Agree = 3;

    /// <summary>
    /// Of the sugar that came in since the draw-off was read, the part that is put on top of what the members say of it: their channels
    /// are cells, and in a real pan it stands steeper. No source.
    /// </summary>
    private const double Steeper = 0.5;

    /// <summary>What makes the draw-off side thinner than it was read.</summary>
    private static readonly DeedName[] Thins = [DeedName.FloodPan, DeedName.FillPan, DeedName.CloseDraw];

    /// <summary>Why sugar speaks against leaving; null where it does not.</summary>
    internal static string? CanPassSyrup(Situation now)
    {
        var state = now.State;
        var limit = SugarLimit(now);
        var mean = 100 * state.Rig.DrawPanSugar.Kilograms / double.Max(state.Rig.DrawPan.Liters * ThinDensity, 1);
        if (now.Unfed!.MixedBrix(1) > limit)
        {
            return WholePanSweet;
        }

        // In one channel, or once the channels have mixed, no side is sweeter than the pan; unless the draw-off was read sweeter since.
        var gradient = state.Last(ObservationName.Gradient);
        if (now.Setting.Rig.Channels == 1 || (gradient is { Value: "gone" } seen && !AfterFire(now, seen.At) && !IsReadApart(state, seen.At, mean)))
        {
            return null;
        }

        if (state.DrawOff is not { } drawOff)
        {
            return gradient is null
                ? NeverLooked
                : NeverRead;
        }

        // Of two readings the sweeter one counts.
        if (Thickened(now, double.Max(drawOff.Sugar.Brix, drawOff.Before.Brix)) <= limit)
        {
            return null;
        }

        // What flood, draw and pour have thinned since it was read is known by balance, cell by cell; where two readings agree it counts, in
        // the worst member. What was read after them counts as it was read: a balance does not overrule a thermometer.
        var isThinned = Thins.Any(deed => state.Last(deed)?.At.Time > drawOff.At.Time);
        var isAgreed = isThinned && drawOff.IsReadTwice && double.Abs(drawOff.Sugar.Brix - drawOff.Before.Brix) <= Agree;
        return isAgreed && now.Unfed!.ThickestBrix(1) + (Steeper * TakenUp(now, drawOff)) <= limit ? null : NearSyrup;
    }

    internal const string WholePanSweet = "the whole pan is sweet enough to pass syrup";

    internal const string NeverLooked = "nobody has looked whether the channels have mixed";

    internal const string NearSyrup = "the draw-off side is near syrup and can pass it";

    internal const string NeverRead = "the channels are apart, and the draw-off was never read";

    /// <summary>No sap may come to so many Brix.</summary>
    private static double SugarLimit(Situation now) => now.Setting.Rig.Target.Brix + PastSyrup - KeptUnder + (IsToldClear(now) ? KeptWord : 0);

    /// <summary>A word that was given is not taken back for so many Brix that no reading, but time alone, brought: it stays well under what was promised. No source.</summary>
    private const double KeptWord = 1;

    private static Moment? ToldClear(Situation now) => now.Setting.Flow.Advices
        .Where(rule => rule.Action == "clear-to-leave" && now.State.Advised.ContainsKey(rule.Id)).Select(rule => (Moment?)now.State.Advised[rule.Id]).LastOrDefault();

    /// <summary>Whether it was told to be clear since anything was read, the channels were looked at or wood went in, and the boil is still.</summary>
    private static bool IsToldClear(Situation now) => ToldClear(now) is { } told
        && !(now.LastWood?.Time > told.Time) && !(now.State.Last(ObservationName.Gradient)?.At.Time > told.Time)
        && now.State.Readings.Values.All(read => !(read[^1].At.Time > told.Time)) && now.State.Last(ObservationName.Boil) is { Value: "still" };

    /// <summary>To how many Brix the last cell can have come, and still come, that was read so sweet.</summary>
    private static double Thickened(Situation now, double brix)
    {
        var lost = now.Setting.Description.BoiledInFront * WorstLiters(now) / double.Max(now.State.Rig.DrawPan.Liters, 0.1);
        return lost < 0.95 ? (brix + TakenUp(now, now.State.DrawOff!)) / (1 - lost) : 100;
    }

    /// <summary>Brix that the last cell can have taken up since it was read: no more than what the feed for the water boiled away brought.</summary>
    private static double TakenUp(Situation now, DrawOffAnchor drawOff)
    {
        var cell = now.State.Rig.DrawPan.Liters * ThinDensity / PanCells.OfDrawPan(now.Setting.Description);
        return 100 * Brought(now, now.State.Rig.Evaporated.Liters - drawOff.EvaporatedLiters) / double.Max(cell, 0.1);
    }

    /// <summary>
    /// The sugar that the feed of the pan with the draw-off has brought for so much water boiled away, in kg: sap's, or that of the pan
    /// behind as it stands now, and then also what it goes on to bring until nothing boils any more.
    /// </summary>
    private static double Brought(Situation now, double boiledLiters)
    {
        var rig = now.State.Rig;
        if (rig.BackPan is not { } behind)
        {
            return boiledLiters * rig.Sap.MassFraction;
        }

        var perLiter = double.Max((rig.PanSugar - rig.DrawPanSugar).Kilograms / double.Max(behind.Liters, 0.1), rig.Sap.MassFraction);
        return (boiledLiters + WorstLiters(now)) * now.Setting.Description.BoiledInFront * perLiter;
    }

    /// <summary>Whether the draw-off was read so much sweeter than the pan, after channels were seen mixed, that they cannot be.</summary>
    private static bool IsReadApart(SessionState state, Moment mixed, double mean) =>
        state.DrawOff is { } drawOff && drawOff.At.Time > mixed.Time && drawOff.Sugar.Brix > mean + Apart;

    /// <summary>In Brix: no source.</summary>
    private const double Apart = 10;

    private static void Seen(
        Situation now, ObservationName name, string spoken, List<string> unmet, Func<string, string?> fault, bool required)
    {
        if (now.State.Last(name) is not { } seen)
        {
            if (required)
            {
                unmet.Add($"nobody has looked at {spoken}");
            }
        }
        else if (fault(seen.Value) is { } why)
        {
            unmet.Add(why);
        }
        else if (required && AfterFire(now, seen.At))
        {
            unmet.Add($"nobody has looked at {spoken} since {TheLastHeat(now)}");
        }
    }

    private static string TheLastHeat(Situation now) => now.Setting.Rig.OfFire("the last wood", "the burner was shut off");

    /// <summary>Whether wood went in after a moment.</summary>
    private static bool AfterFire(Situation now, Moment seen) => now.LastWood is { } wood && wood.Time >= seen.Time;
}
