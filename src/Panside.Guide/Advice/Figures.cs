using System.Collections.Frozen;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;
using Panside.Reckoning.Rig;

namespace Panside.Guide.Advice;

/// <summary>What can stand in braces in a flow's texts, in the rig's units. Each is described in docs/figures.md.</summary>
public static partial class Figures
{
    private const string Unknown = "not known";

    /// <summary>A draw point shifted by less, in Brix, is told as today's.</summary>
    private const double LeastShift = 0.15;

    /// <summary>A draw that is made ready for, and by the middle forecast is further off than these minutes, is told without it. No source.</summary>
    private const double NearDraw = 30;

    private static readonly FrozenDictionary<string, Func<Situation, string>> All = new Dictionary<string, Func<Situation, string>>
    {
        // Who said that it is empty is not told that two tenths are left, which the reckoning still spreads over what the gauge may be off by.
        ["tank"] = now => Facts.Holds(now, "tank-told-empty") ? Volume(now, default) : now.State.Rig.Tank is { } tank ? Volume(now, tank) : Unknown,
        ["depth"] = now => now.State.Readings.ContainsKey(ReadingName.PanDepth) ? Depth(now, now.DepthTold) : "not read",
        ["run-depth"] = now => Depth(now, now.Setting.Rig.RunDepth),
        ["least-depth"] = now => Depth(now, now.Setting.Rig.LeastDepth),
        ["flood-depth"] = now => Depth(now, now.Setting.Rig.FloodDepth),
        ["back-depth"] = now => now.BackDepthTold is { } told && now.BackDepthRead is not null ? Depth(now, told) : "not read",
        ["back-run-depth"] = now => now.Setting.Rig.Back is { } back ? Depth(now, back.RunDepth) : Unknown,
        ["back-least-depth"] = now => now.Setting.Rig.Back is { } back ? Depth(now, back.LeastDepth) : Unknown,
        ["back-flood-depth"] = now => now.Setting.Rig.Back is { } back ? Depth(now, back.FloodDepth) : Unknown,
        ["charge"] = now => Amount.Shown(now.Setting.Units.From(now.Setting.Rig.Charge)),
        ["interval"] = now => Amount.Minutes(now.Setting.Rig.Interval.TotalMinutes),
        ["target"] = now => Amount.Shown(new(now.Setting.Rig.Target.Brix, Unit.Brix)),
        ["boiling-water"] = now => Temperature(now, now.State.Rig.Boiling),
        ["draw-point"] = now => Temperature(now, now.DrawPointToday),
        ["syrup-point"] = now => Temperature(now, now.SyrupPointToday),
        ["draw-point-low"] = now => Temperature(now, now.ShutUnder),
        ["draw-shift"] = now => double.Abs(now.DrawShift) < LeastShift || now.IsDrawForeseen ? ""
            : $" (batch: {(now.DrawShift < 0 ? "-" : "+")}{Amount.Shown(new(double.Abs(now.DrawShift), Unit.Brix))})",
        ["draw-course"] = now => now.IsDrawForeseen ? ", rising fast" : "",
        ["batch-remedy"] = now => KitchenMeasures.Remedy(now) is { } remedy ? Sentence(remedy) : "Leave it as it is",
        ["draw-remedy"] = now => Sentence(KitchenMeasures.RemedyOfDraw(now) ?? "stir in a little hot sap until it tests on target"),
        ["draw-temperature"] = now => now.State.Last(ReadingName.DrawTemperature) is { } read ? Amount.Shown(read.Value) : Unknown,
        ["draw-elevation"] = now => Amount.Shown(now.Setting.Units.From(DrawPoint.Today(now.Setting, now.State) - now.State.Rig.Boiling, now.Degree)),
        ["large-draw"] = now => Amount.Shown(now.Setting.Units.From(
            now.Setting.Rig.LargeDraw, now.Setting.Units.SmallVolume)),
        ["syrup-brix"] = now => SyrupSample.TrueSugar(now.State) is { } sugar ? Amount.Shown(new(sugar.Brix, Unit.Brix)) : Unknown,
        ["glass-on-target"] = GlassOnTarget,
        ["boils-away"] = now => now.ResidualLiters is { } residual ? FromTo(now, residual) : Unknown,
        ["boils-away-worst"] = now => now.ResidualLiters is { } residual ? Liters(now, residual.P95) : Unknown,
        ["reserve-likely"] = now => now.ReserveLiters is { } reserve ? Liters(now, reserve.P50) : Unknown,
        ["reserve-worst"] = now => now.ReserveLiters is { } reserve ? Liters(now, reserve.P95) : Unknown,
        ["stop-at"] = now => now.StopLiters is { } stop ? Liters(now, stop) : Unknown,
        ["stop-says"] = now => now.FloorSpeaks ? "common practice" : "the reckoning",
        ["floor"] = now => Liters(now, now.FloorLiters),
        ["rate"] = now => now.RateLitersPerHour is { } rate
            ? Amount.Shown(now.Setting.Units.From(VolumeRate.FromLitersPerHour(rate.P50)))
            : Unknown,
        ["minutes-to-draw"] = now => now.MinutesToDrawTold is { } minutes ? About(minutes) : Unknown,
        ["draw-comes"] = now => now.MinutesToDrawTold is { } minutes and <= NearDraw ? $"comes in about {About(minutes)}" : "can come within minutes",
        ["minutes-to-last-charge"] = now => now.MinutesToLastCharge is { } minutes ? About(minutes.P50) : Unknown,
        ["minutes-to-last-charge-soonest"] = now => now.MinutesToLastCharge is { } minutes ? About(minutes.P5) : Unknown,
        ["minutes-to-still"] = now => now.StillMinutes is { } still ? About(still.P50) : Unknown,
        ["minutes-to-still-latest"] = now => now.StillMinutes is { } still ? About(still.P95) : Unknown,
        ["minutes-draw-open"] = now => now.DrawOpenSince is { } open ? Amount.Minutes(now.State.MinutesSince(open)) : Unknown,
        ["minutes-since-wood"] = now => now.LastWood is { } wood ? Amount.Minutes(now.State.MinutesSince(wood)) : Unknown,
        ["minutes-since-depth"] = now => now.MinutesSinceDepth is { } since ? Amount.Minutes(since) : Unknown,
        ["minutes-to-bare"] = now => now.MinutesToBare is { } bare ? About(double.Max(bare - (now.MinutesDepthUnseen ?? 0), 1)) : Unknown,
        ["dangers"] = now => string.Join(", ", Listed(now)),
        ["pour"] = now => now.DepthRead is { } read && read < now.Setting.Rig.RunDepth
            ? Volume(now, now.Setting.Rig.PanArea * (now.Setting.Rig.RunDepth - read))
            : Volume(now, now.Setting.Rig.PanArea * now.Setting.Rig.LeastDepth),
        ["portion"] = HandFeed.Portion,
        ["stilling-pour"] = now => now.StillingPour is { } pour ? Volume(now, pour.Liquid) : Unknown,
        ["clear-poured"] = now => now.StillingPour is { } pour ? About(pour.Clear.P50) : Unknown,
        ["clear-unpoured"] = now => now.StillingPour is { } pour ? About(pour.Waiting) : Unknown,
        ["leaves-at-most"] = now => now.Unfed is { } unfed ? Liters(now, unfed.ResidualLiters(1)) : Unknown,
        ["next-pour"] = now => HandFeed.MinutesToNext(now) is { } minutes ? About(minutes) : Unknown,
        ["least-by"] = now => HandFeed.MinutesToLeast(now) is { } minutes && now.State.Now is not null ? In(now, minutes) : Unknown,
        ["minutes-to-least"] = now => HandFeed.MinutesToLeast(now) is { } minutes ? About(minutes) : Unknown,
        ["poured-so-far"] = now => Pour.Told(now.State.Pours, now.Setting.Units) ?? "nothing",
        ["pours-so-far"] = now => now.State.Pours.Count is 1 ? "one pour" : $"{now.State.Pours.Count} pours",
        ["unmet"] = now => now.Unmet.Count == 0 ? "nothing" : now.Unmet[0] + (now.Unmet.Count > 1 ? "; and more" : ""),
        ["clearing-deed"] = ClearingDeed.Of,
        ["channels-mix"] = _ => Amount.Minutes(CommonPractice.ChannelsMix.TotalMinutes),
    }.Concat(OfTheEvening).Concat(OfTheRig).ToFrozenDictionary();

    /// <summary>Their names.</summary>
    public static IReadOnlyList<string> Names { get; } = [.. All.Keys.Order(StringComparer.Ordinal)];

    /// <summary>A figure, now.</summary>
    public static string Of(Situation now, string name) => All[name](now);

    /// <summary>The words of the list of emergencies: what a cry may have meant first, then the gravest first, nine at the most: O10.</summary>
    private static IEnumerable<string> Listed(Situation now) => now.State.Suspected
        .Concat(now.Setting.Flow.Dangers.Where(danger => danger is { IsListed: true, IsList: false } && danger.ListedWhere.All(fact => RigFacts.Holds(now.Setting.Rig, fact))).Select(danger => danger.Code))
        .Distinct()
        .Take(9);

    private static string Sentence(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string GlassOnTarget(Situation now)
    {
        // A sample whose temperature nobody read is taken as hot as it was drawn.
        var temperature = now.State.Last(ReadingName.SampleTemperature) is { } sample
            ? UnitSystem.Temperature(sample.Value)
            : DrawPoint.Today(now.Setting, now.State);
        return temperature.Celsius is >= 0 and <= 105
            ? Amount.Shown(new(SyrupHydrometer.ReadingOnTarget(now.Setting.Rig.Target, temperature).Brix, Unit.Brix))
            : Unknown;
    }

    private static string Volume(Situation now, Volume volume) => Amount.Shown(now.Setting.Units.From(volume));

    private static string Liters(Situation now, double liters) => Volume(now, Reckoning.Quantities.Volume.FromLiters(liters));

    private static string Depth(Situation now, Length depth) => Amount.Shown(now.Setting.Units.From(depth));

    private static string Temperature(Situation now, Temperature temperature) => Amount.Shown(now.Setting.Units.From(temperature, now.Degree));

    private static string FromTo(Situation now, Band liters)
    {
        var (low, high) = (Liters(now, liters.P5), Liters(now, liters.P95));
        return low == high ? low : $"{low} to {high}";
    }

    /// <summary>Minutes to the five that a forecast is honest to.</summary>
    internal static string About(double minutes) =>
        minutes < 2.5 ? "a minute or two" : minutes > 12 * 60 ? "more than 12 hours" : Amount.Minutes(double.Round(minutes / 5) * 5);
}
