using Panside.Guide.Measures;

namespace Panside.Guide.Flows;

/// <summary>
/// A threshold of the procedure that a flow may set under <c>values</c>; docs/values.md. What it is unless said: common practice, no source.
/// </summary>
/// <param name="Name">Its key in the flow.</param>
/// <param name="Unit">What it counts in: minutes, per cent of a depth of the rig, or degrees Fahrenheit over something.</param>
/// <param name="Usual">What it is unless the flow says otherwise, in that unit.</param>
/// <param name="Least">The least that a flow may say.</param>
/// <param name="Most">The most. Where more, or less, would be less careful, what is usual is the bound.</param>
public sealed record FlowValue(string Name, Unit Unit, double Usual, double Least, double Most)
{
    /// <summary>How long <c>later</c>, and a no to a watch, puts off what is asked.</summary>
    public static FlowValue PutOff { get; } = Minutes("put-off", 5, 1, 10);

    /// <summary>How long a watch that nobody answers keeps the others waiting, and after how long what is to be done now is asked again.</summary>
    public static FlowValue Patience { get; } = Minutes("patience", 5, 2, 10);

    /// <summary>What is asked in an emergency is asked again after this time.</summary>
    public static FlowValue DangerAgain { get; } = Minutes("danger-again", 4, 1, 4);

    /// <summary>After an interruption of this length over a fire the pan is looked at first: a blower empties a pan whose float hangs in 25 minutes.</summary>
    public static FlowValue LongAbsence { get; } = Minutes("long-absence", 15, 5, 15);

    /// <summary>How long a reading of depth or tank counts as fresh.</summary>
    public static FlowValue Fresh { get; } = Minutes("fresh", 60, 15, 60);

    /// <summary>How long the depth is not read until no more wood is asked for.</summary>
    public static FlowValue DepthStale { get; } = Minutes("depth-stale", 30, 15, 30);

    /// <summary>How long a step stands until it counts as unanswered.</summary>
    public static FlowValue Unanswered { get; } = Minutes("unanswered", 15, 5, 15);

    /// <summary>How long a step of the lighting stands over a boil until it is left behind.</summary>
    public static FlowValue FiredLong { get; } = Minutes("fired-long", 30, 10, 30);

    /// <summary>How long before the last charge it is near.</summary>
    public static FlowValue LastChargeNear { get; } = Minutes("last-charge-near", 30, 10, 90);

    /// <summary>How long after a flood the pan counts as just flooded.</summary>
    public static FlowValue FloodedLately { get; } = Minutes("flooded-lately", 10, 5, 20);

    /// <summary>How long defoamer is given to work.</summary>
    public static FlowValue DefoamerWorks { get; } = Minutes("defoamer-works", 2, 1, 3);

    /// <summary>How long before a draw, by the middle of its forecast, it is near.</summary>
    public static FlowValue DrawNear { get; } = Minutes("draw-near", 10, 10, 30);

    /// <summary>How far under its point the draw-off stands where a draw is at hand.</summary>
    public static FlowValue DrawAtHand { get; } = Rise("draw-at-hand", 1.5, 1.5, 3);

    /// <summary>How far over its point the draw-off holds no syrup any more; docs/model.md.</summary>
    public static FlowValue DrawFarOver { get; } = Rise("draw-far-over", 4, 2, 4);

    /// <summary>How long the draw-off is open until it is asked about.</summary>
    public static FlowValue DrawOpenLong { get; } = Minutes("draw-open-long", 3, 1, 3);

    /// <summary>How long it is open until it counts as forgotten.</summary>
    public static FlowValue DrawForgotten { get; } = Minutes("draw-forgotten", 10, 5, 10);

    /// <summary>How long before a batch is ready no more wood goes under it; held for longer, the boil dies before it is.</summary>
    public static FlowValue BatchNear { get; } = Minutes("batch-near", 6, 3, 10);

    /// <summary>At how much of its least depth a pan is low.</summary>
    public static FlowValue PanLow { get; } = Share("pan-low", 120, 120, 160);

    /// <summary>Under how much of the depth that it is run at a pan is shallow, and has fallen.</summary>
    public static FlowValue PanShallow { get; } = Share("pan-shallow", 80, 80, 95);

    /// <summary>From how much of its flood depth on a pan counts as flooded.</summary>
    public static FlowValue PanFlooded { get; } = Share("pan-flooded", 95, 95, 100);

    /// <summary>How long the boil is seen still over thin coals until they count as down for the cautious: part of the gate, so a flow may only ask for more.</summary>
    public static FlowValue StillLong { get; } = Minutes("still-long", 20, 20, 60);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FlowValue> All { get; } =
    [
        PutOff, Patience, DangerAgain, LongAbsence, Fresh, DepthStale, Unanswered, FiredLong, LastChargeNear, FloodedLately, DefoamerWorks,
        DrawNear, DrawAtHand, DrawFarOver, DrawOpenLong, DrawForgotten, BatchNear, PanLow, PanShallow, PanFlooded, StillLong,
    ];

    private static FlowValue Minutes(string name, double usual, double least, double most) => new(name, Unit.Minute, usual, least, most);

    private static FlowValue Share(string name, double usual, double least, double most) => new(name, Unit.Percent, usual, least, most);

    private static FlowValue Rise(string name, double usual, double least, double most) => new(name, Unit.DegreeFahrenheit, usual, least, most);
}
