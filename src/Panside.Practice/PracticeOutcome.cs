using Panside.Guide.Lines;
using Panside.Reckoning.Quantities;

namespace Panside.Practice;

/// <summary>How a practice boil ended: what the assistant says, and what the simulated rig knows better.</summary>
public sealed record PracticeOutcome
{
    /// <summary>The outcome as the assistant says it; null where the session did not end within a day.</summary>
    public required Outcome? Said { get; init; }

    /// <summary>Seconds from the first line to the last.</summary>
    public required long Seconds { get; init; }

    /// <summary>The second at which no more wood went in; null where that never was.</summary>
    public required long? SecondsAtHold { get; init; }

    /// <summary>The second from which the rig could truly have been left; null where that never was.</summary>
    public required long? SecondsTrulySafe { get; init; }

    /// <summary>Seconds from the beginning until it was said to be clear to leave; null where it never was.</summary>
    public required long? SecondsSaidClear { get; init; }

    /// <summary>The shallowest that the pan has been over a fire.</summary>
    public required Length LeastDepth { get; init; }

    /// <summary>The same of the pan behind, over its flues; null where there is none.</summary>
    public Length? LeastBackDepth { get; init; }

    /// <summary>And after leaving, without feed.</summary>
    public Length? LeastBackDepthAfter { get; init; }

    /// <summary>The sweetest that any cell has been.</summary>
    public required SugarContent MostSugar { get; init; }

    /// <summary>Whether the pan burned, before leaving or after.</summary>
    public required bool IsScorched { get; init; }

    /// <summary>Whether foam went over the wall.</summary>
    public required bool HasFoamedOver { get; init; }

    /// <summary>The shallowest after leaving, without feed.</summary>
    public required Length LeastDepthAfter { get; init; }

    /// <summary>The sweetest after leaving.</summary>
    public required SugarContent MostSugarAfter { get; init; }

    /// <summary>Whether what clear to leave promises came true after leaving.</summary>
    public required bool IsPromiseKept { get; init; }

    /// <summary>Sap left in the tank.</summary>
    public required Volume TankLeft { get; init; }

    /// <summary>Water that left the pan after the last charge.</summary>
    public required Volume BoiledAwayAfterHold { get; init; }

    /// <summary>Lines in.</summary>
    public required int Lines { get; init; }

    /// <summary>Advice of danger, or of now that no step asks for.</summary>
    public required int Alarms { get; init; }

    /// <summary>The most of them in any ten minutes.</summary>
    public required int AlarmPeak { get; init; }

    /// <summary>Whether it was close: under the least depth over a fire, foam over the wall, or charring begun; and not scorched.</summary>
    public required bool IsNearMiss { get; init; }

    /// <summary>Whether it was said to be clear to leave when the promise would not have held.</summary>
    public required bool IsClearTooEarly { get; init; }

    /// <summary>How far the draws truly were from the target, in Brix, on average; null where there was none.</summary>
    public required double? SyrupErrorBrix { get; init; }

    /// <summary>Whether the water that would leave with no more wood lay in the band that was told at the last charge.</summary>
    public required bool? IsResidualCovered { get; init; }

    /// <summary>Whether the minutes to the still boil did.</summary>
    public required bool? IsStillCovered { get; init; }

    /// <summary>Lines that were refused.</summary>
    public required int Refused { get; init; }

    /// <summary>Lines that were doubted.</summary>
    public required int Questions { get; init; }

    /// <summary>Draws.</summary>
    public required int Draws { get; init; }

    /// <summary>Charges after the operator was told to hold wood.</summary>
    public required int WoodAfterHold { get; init; }

    /// <summary>How often the assistant asked for wood after it had said to hold it.</summary>
    public int WoodAskedAfterHold { get; init; }

    /// <summary>Whether the session ended safe and the rig took no harm.</summary>
    public bool IsGood => Said is { Safe: true } && !IsScorched && IsPromiseKept;

    /// <summary>Minutes for which leaving was truly safe and the assistant did not say so yet; null where it never was safe.</summary>
    public double? MinutesPastTruth => ((SecondsSaidClear ?? Seconds) - SecondsTrulySafe) / 60.0;
}
