using System.Globalization;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <content>What is asked about in the course of an evening.</content>
public static partial class Figures
{
    private static Dictionary<string, Func<Situation, string>> OfTheEvening => new()
    {
        ["unmet-all"] = now => now.Unmet.Count == 0 ? "nothing" : string.Join("; ", now.Unmet),
        ["clock"] = now => now.State.Now is { } at ? Clock(at.Time) : Unknown,
        ["elapsed"] = now => (now.State.Last(DeedName.LitFire)?.At ?? now.State.Started) is { } lit ? Amount.Minutes(now.State.MinutesSince(lit)) : Unknown,
        ["clear-in"] = now => now.MinutesToClear is { } clear ? About(clear.P50) : Unknown,
        ["clear-in-latest"] = now => now.MinutesToClear is { } clear ? About(clear.P95) : Unknown,
        ["clear-about"] = now => now.MinutesToClear is { } clear ? In(now, clear.P50) : Unknown,
        ["clear-latest"] = now => now.MinutesToClear is { } clear ? In(now, clear.P95) : Unknown,
        ["minutes-to-draw-soonest"] = now => now.MinutesToDraw is { } minutes ? About(double.Min(minutes.P5, now.MinutesToDrawTold ?? minutes.P5)) : Unknown,
        ["depth-read"] = now => now.DepthRead is { } read ? Depth(now, read) : "not read",
        ["water-gone"] = now => Volume(now, now.State.Rig.Evaporated),
        ["minutes-to-dry"] = now => now.State.Rig.Tank is not null ? About(now.Ahead.MinutesToTank(default).At(0.5)) : Unknown,
        ["minutes-to-dry-soonest"] = now => now.State.Rig.Tank is not null ? About(now.Ahead.MinutesToTank(default).At(0.05)) : Unknown,
        ["wood-so-far"] = now => Amount.Shown(now.Setting.Units.From(Mass.FromKilograms(now.State.Totals.WoodKilograms))),
        ["charges-left"] = now => ChargesLeft(now) is { } charges ? Charges(charges) : Unknown,
        ["wood-left"] = now => ChargesLeft(now) is { } charges
            ? Amount.Shown(now.Setting.Units.From(now.Setting.Rig.Charge * charges))
            : Unknown,
        ["sap-so-far"] = now => Evening.SapUsedLiters(now) is { } liters ? Liters(now, liters) : Unknown,
        ["sap-brix"] = now => now.State.Last(ReadingName.SapBrix) is { } read ? Amount.Shown(read.Value) : Unknown,
        ["sweetness"] = now => now.IsLit ? Sweetness(now) : Unknown,
        ["syrup-so-far"] = now => Syrup(now, now.State.Totals.DrawnLiters),
        ["syrup-expected"] = now => Evening.SyrupLiters(now) is { } liters ? Syrup(now, liters) : Unknown,
        ["wood-due"] = now => WoodDue(now) is { } due ? due < 1 ? "Now" : $"In {Amount.Minutes(due)}" : Unknown,
        ["wood-due-small"] = now => WoodDue(now) is { } due ? due < 1 ? "now" : $"in {Amount.Minutes(due)}" : Unknown,
    };

    /// <summary>A clock time so many minutes from now, to the five minutes that a forecast is honest to.</summary>
    internal static string In(Situation now, double minutes)
    {
        if (minutes >= TimeSpan.FromDays(1).TotalMinutes)
        {
            return "a day or more from now";
        }

        var at = now.State.Now!.Value.Time.AddMinutes(minutes);
        var five = new DateTimeOffset(at.Date, at.Offset).AddMinutes(double.Round(at.TimeOfDay.TotalMinutes / 5) * 5);
        return five.Date > now.State.Now!.Value.Time.Date ? $"{Clock(five)} tomorrow" : Clock(five);
    }

    /// <summary>How sweet the channels are reckoned to be, from the feed to the draw-off.</summary>
    private static string Sweetness(Situation now)
    {
        var brix = now.State.Rigs.Expected.ChannelBrix.Select(channel => channel.P50.ToString("0", CultureInfo.InvariantCulture)).ToList();
        return brix.Count == 1 ? $"{brix[0]} Brix in the pan" : $"{string.Join(", ", brix.SkipLast(1))} and {brix[^1]} Brix from feed to draw-off";
    }

    private static string Clock(DateTimeOffset time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Syrup(Situation now, double liters) =>
        Amount.Shown(now.Setting.Units.From(Reckoning.Quantities.Volume.FromLiters(liters), liters < 3.5 ? now.Setting.Units.SmallVolume : null));

    private static double? WoodDue(Situation now) => now.WoodDue is { } due && now.State.Now is { } at ? double.Max((due - at.Time).TotalMinutes, 0) : null;

    private static double? ChargesLeft(Situation now) => now.MinutesToLastCharge is { } last
        ? double.Max(1, double.Round(last.P50 / now.Setting.Rig.Interval.TotalMinutes))
        : null;

    private static string Charges(double charges) => charges < 2 ? "one charge" : $"{charges.ToString("0", CultureInfo.InvariantCulture)} charges";
}
