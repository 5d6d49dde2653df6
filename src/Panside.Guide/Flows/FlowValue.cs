namespace Panside.Guide.Flows;

/// <summary>A time of the procedure that a flow may set under <c>values</c>; docs/values.md. What it is unless said: common practice, no source.</summary>
/// <param name="Name">Its key in the flow.</param>
/// <param name="Usual">What it is unless the flow says otherwise.</param>
/// <param name="Least">The least that a flow may say.</param>
/// <param name="Most">The most: where more would be less careful, no more than is usual.</param>
public sealed record FlowValue(string Name, TimeSpan Usual, TimeSpan Least, TimeSpan Most)
{
    /// <summary>How long <c>later</c>, and a no to a watch, puts off what is asked.</summary>
    public static FlowValue PutOff { get; } = Minutes("put-off", 5, 1, 10);

    /// <summary>How long a watch that nobody answers keeps the others waiting.</summary>
    public static FlowValue Patience { get; } = Minutes("patience", 5, 2, 10);

    /// <summary>What is asked in an emergency is asked again after this time.</summary>
    public static FlowValue DangerAgain { get; } = Minutes("danger-again", 4, 1, 4);

    /// <summary>After an interruption of this length over a fire the pan is looked at first: a blower empties a pan whose float hangs in 25 minutes.</summary>
    public static FlowValue LongAbsence { get; } = Minutes("long-absence", 15, 5, 15);

    /// <summary>How long a reading of depth or tank counts as fresh.</summary>
    public static FlowValue Fresh { get; } = Minutes("fresh", 60, 15, 60);

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

    /// <summary>All of them.</summary>
    public static IReadOnlyList<FlowValue> All { get; } =
        [PutOff, Patience, DangerAgain, LongAbsence, Fresh, Unanswered, FiredLong, LastChargeNear, FloodedLately, DefoamerWorks];

    private static FlowValue Minutes(string name, double usual, double least, double most) =>
        new(name, TimeSpan.FromMinutes(usual), TimeSpan.FromMinutes(least), TimeSpan.FromMinutes(most));
}
