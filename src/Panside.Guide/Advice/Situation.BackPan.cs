using Panside.Guide.Flows;
using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Guide.Rigs;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Advice;

/// <content>The pan behind the one with the draw-off. All of it is nothing where there is one pan.</content>
public sealed partial class Situation
{
    private PanBehind? Back => Setting.Rig.Back;

    /// <summary>Its depth now over its flues, as reckoned from the last reading on.</summary>
    public Length? BackDepth => Back is { } back && State.Rig.BackPan is { } liquid ? back.Description.DepthOf(liquid) : null;

    /// <summary>Its depth as it is told: what was read within this very minute, as it was read; else as reckoned.</summary>
    public Length? BackDepthTold => BackRead is { } read && State.Now is { } now && now.Time - read.At.Time < TimeSpan.FromMinutes(1)
        ? UnitSystem.Length(read.Value)
        : BackDepth;

    /// <summary>Its depth as last read; null before any.</summary>
    public Length? BackDepthRead => BackRead is { } read ? UnitSystem.Length(read.Value) : null;

    /// <summary>Whether it was last read under its least depth, over a fire.</summary>
    public bool IsBackBelowLeast => IsLit && Back is { } back && BackDepthRead < back.LeastDepth;

    /// <summary>Whether it was last read well under its run depth over a fire: its feed fails, or the fire is too hot for it.</summary>
    public bool IsBackPanFallen => IsLit && Back is { } back && BackDepthRead < back.RunDepth * Setting.Flow.Values.Share(FlowValue.PanShallow);

    /// <summary>Whether it is reckoned to stand near its least depth.</summary>
    public bool IsBackLow => IsLit && Back is { } back && BackDepth < back.LeastDepth * Setting.Flow.Values.Share(FlowValue.PanLow);

    /// <summary>Whether it holds less than it is run at.</summary>
    public bool IsBackShallow => Back is { } back && BackDepth < back.RunDepth * Setting.Flow.Values.Share(FlowValue.PanShallow);

    /// <summary>
    /// Minutes in which its flues, from its last depth on, would show if no sap came any more: it gives all water that boils away, in front
    /// as well. Null where nobody read it or nothing boils.
    /// </summary>
    public double? MinutesToBareBack => IsLit && MayBoil && Back is { } back && BackDepthRead is { } read && FastLitersPerHour is { } rate
        ? double.Max((read - (back.LeastDepth * BareShare)).Meters, 0) * back.Area.SquareMeters * 1000 / rate * 60
        : null;

    /// <summary>Whether its depth is wanted now: as <see cref="IsDepthWanted"/>.</summary>
    public bool IsBackDepthWanted => MinutesToBareBack is { } bare && BackRead is { } read
        && State.MinutesSince(read.At) >= double.Max(bare - WarnMinutes - AnswerMinutes, LeastBetweenLooks);

    /// <summary>
    /// Whether its depth was read since a moment, and since sap or water last went into the pans: what was read in the same second as one of
    /// them counts as read before.
    /// </summary>
    /// <param name="since">The moment; null where there was none.</param>
    public bool IsBackReadSince(Moment? since) => BackRead is { } read && !(since?.Time >= read.At.Time)
        && !new[] { DeedName.FloodPan, DeedName.FillPan, DeedName.OpenDraw, DeedName.CloseDraw }.Any(deed => State.Last(deed)?.At.Time >= read.At.Time);

    private Noted<Measure>? BackRead => Back is null ? null : State.Last(ReadingName.BackPanDepth);
}
