using System.Globalization;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Journal;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;

namespace Panside.Commands;

/// <summary>What the last boil left in the pan, told before the next one begins. It is only told: the flow asks for the pan's sugar itself.</summary>
internal static class LeftOver
{
    /// <summary>A pan left for longer than this was emptied, or should have been.</summary>
    private static readonly TimeSpan Longest = TimeSpan.FromDays(14);

    /// <summary>Half-boiled sap older than this is doubted first: common practice, no source.</summary>
    private static readonly TimeSpan Doubtful = TimeSpan.FromDays(2);

    /// <summary>A pan no sweeter than this holds little more than sap.</summary>
    private const double Sweet = 4;

    /// <summary>The newest records that are looked at: the last ones may be of another rig, or not ended.</summary>
    private const int Newest = 5;

    private const int LongestMinutes = 360;

    /// <summary>The sentences; null where nothing is known to be in this rig's pan.</summary>
    /// <param name="home">Where the records are.</param>
    /// <param name="setting">What the next boil runs on.</param>
    /// <param name="now">What time it is.</param>
    public static string? Of(Home home, Setting setting, DateTimeOffset now)
    {
        if (setting.Rig.Back is not null)
        {
            // A record tells what both pans held together, and not which of them held it.
            return null;
        }

        if (LastOf(home.Sessions, setting.Rig.Name) is not ({ } ends, { PanVolume: { } pan, PanBrix: { } brix, Minutes: { } minutes }))
        {
            return null;
        }

        var ended = ends.Begin.Time.AddMinutes(minutes.Value);
        var (since, volume) = (now - ended, setting.Units.Volume(pan));
        if (since < TimeSpan.Zero || since > Longest || volume.Liters < 1)
        {
            return null;
        }

        var when = ended.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        var told = $"The last boil left {Amount.Shown(setting.Units.From(volume))} at {Amount.Shown(brix)} in the pan, as reckoned, {Ago(since)} ago ({when}). ";
        told += since > Doubtful
            ? "So long it may well have spoiled: if it is cloudy, ropy or sour, drain it."
            : "Smell and look at it before you light: cloudy, ropy or sour is spoiled.";
        return brix.Value > Sweet && FirstDraw(setting, volume, SugarContent.FromBrix(brix.Value)) is { } first
            ? $"{told} If it is good, the first draw may come some {Amount.Minutes(first)} after lighting."
            : told;
    }

    private static (RecordEnds Ends, Outcome Outcome)? LastOf(string folder, string rig)
    {
        try
        {
            return new DirectoryInfo(folder).EnumerateFiles("*.jsonl").OrderByDescending(file => file.LastWriteTimeUtc).Take(Newest)
                .Select(file => RecordEnds.Read(file.FullName))
                .Where(ends => ends is { Outcome: not null, Header.Practice: false } && ends.Header.Rig == rig)
                .OrderByDescending(ends => ends!.Begin.Time)
                .Select(ends => ((RecordEnds, Outcome)?)(ends!, ends!.Outcome!)).FirstOrDefault();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A word before the start is not worth an error.
            return null;
        }
    }

    /// <summary>Minutes from lighting until half of the possible rigs have drawn, to a quarter of an hour; null where it is longer than six hours.</summary>
    private static double? FirstDraw(Setting setting, Volume pan, SugarContent sugar)
    {
        var cold = setting.Cold.DepthRead(pan / setting.Rig.PanArea, lit: false).PanSugarRead(sugar);
        var draw = setting.Rig.LargeDraw * 0.1;
        bool HasDrawn(int quarters) => cold.FiredFor(quarters * 15, draw).Draws.At(0.5) >= 1;
        var (low, high) = (0, LongestMinutes / 15);
        if (!HasDrawn(high))
        {
            return null;
        }

        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = HasDrawn(middle) ? (low, middle) : (middle, high);
        }

        return high * 15;
    }

    private static string Ago(TimeSpan since) => since.TotalHours < 48
        ? string.Create(CultureInfo.InvariantCulture, $"{since.TotalHours:0} h")
        : string.Create(CultureInfo.InvariantCulture, $"{since.TotalDays:0} days");
}
