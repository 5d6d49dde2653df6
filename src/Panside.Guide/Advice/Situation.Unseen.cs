using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Measures;

namespace Panside.Guide.Advice;

/// <content>How long nobody has told of a pan that boils, or may: first its depth is overdue, then it is a danger.</content>
public sealed partial class Situation
{
    /// <summary>A pan that is fired boils by then, whether somebody says so or not: common practice, no source.</summary>
    private const int UsuallyBoils = 20;

    /// <summary>Minutes for which a shallow pan over a dying fire is left unread at the most: twice as long as it is asked for there. No source.</summary>
    private const int DiesUnread = 20;

    /// <summary>Whether nobody has read the depth for so long that the floor could show in ten minutes, or at all though the fire has burned for a while.</summary>
    public bool IsDepthOverdue => IsOverdue(State.Last(ReadingName.PanDepth), MinutesToBare) || IsDyingUnseen(DiesUnread);

    /// <summary>Whether the floor could show by now, or nobody has ever read the pan and it may boil: ten minutes after it was overdue at the least.</summary>
    public bool IsDepthUnseen => IsUnseen(State.Last(ReadingName.PanDepth), MinutesToBare) || IsDyingUnseen(2 * DiesUnread);

    /// <summary>As <see cref="IsDepthOverdue"/>, of the pan behind.</summary>
    public bool IsBackOverdue => Back is not null && IsOverdue(BackRead, MinutesToBareBack);

    /// <summary>As <see cref="IsDepthUnseen"/>, of the pan behind.</summary>
    public bool IsBackUnseen => Back is not null && IsUnseen(BackRead, MinutesToBareBack);

    /// <summary>Minutes over a fire since the depth was read; null before it was.</summary>
    public int? MinutesDepthUnseen => MinutesUnseen(State.Last(ReadingName.PanDepth));

    /// <summary>Whether nobody has read the depth for so long that no wood is to go in before.</summary>
    public bool IsDepthStale => IsLit && !IsPanEmptied && (State.Last(ReadingName.PanDepth) is not { } read || MinutesUnseen(read) >= Setting.Flow.Values[FlowValue.DepthStale].TotalMinutes);

    private bool IsOverdue(Noted<Measure>? read, double? bare) => read is null
        ? IsLit && !IsPanEmptied && MayBoil && MinutesSinceLit >= LeastBetweenLooks + 2
        : bare is { } minutes && MinutesUnseen(read) + 1 >= double.Max(minutes - WarnMinutes, LeastBetweenLooks + 2);

    private bool IsUnseen(Noted<Measure>? read, double? bare) => read is null
        ? IsLit && !IsPanEmptied && MayBoil && MinutesSinceLit >= LeastBetweenLooks + 2 + WarnMinutes
        : bare is { } minutes && MinutesUnseen(read) >= double.Max(minutes, LeastBetweenLooks + 2 + WarnMinutes);

    /// <summary>
    /// Whether a pan over a dying fire, not seen still yet, was read for the last time so many minutes ago, and the heat that is left could take it below
    /// its least depth: the members let the boil die while nobody looks.
    /// </summary>
    private bool IsDyingUnseen(int minutes) => IsLit && IsHeld && !IsPanEmptied && State.Last(ObservationName.Boil) is not { Value: "still" }
        && MinutesUnseen(State.Last(ReadingName.PanDepth)) >= minutes && ClearToLeave.IsTooShallow(this);

    /// <summary>When the fire was first told of: lit, or a charge; a burner's last lighting.</summary>
    private Moment? FirstHeat => State.Last(DeedName.LitFire)?.At is { } lit
        ? State.Charges is [var charge, ..] && charge.Time < lit.Time ? charge : lit
        : State.Charges is [var first, ..] ? first : null;

    /// <summary>Minutes since then; null before.</summary>
    private int? MinutesSinceLit => FirstHeat is { } lit ? State.MinutesSince(lit) : null;

    /// <summary>Minutes over a fire since a depth was read: nothing boils away before it is lit. A burner that was lit again may have burned before.</summary>
    private int? MinutesUnseen(Noted<Measure>? read) => read is not { } told ? null
        : Setting.Rig.IsBurner ? State.MinutesSince(told.At)
        : int.Min(State.MinutesSince(told.At), MinutesSinceLit ?? int.MaxValue);

    /// <summary>Whether a look at the boil tells that nobody fires: a pan that was seen still or simmering soon after it was lit only warmed.</summary>
    private bool IsSeenDown => State.Last(ObservationName.Boil) is { Value: "still" or "simmering" } look
        && !(FirstHeat is { } lit && (look.At.Time - lit.Time).TotalMinutes < UsuallyBoils);
}
