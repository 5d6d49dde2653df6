using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Reckoning.Batch;

/// <summary>What a check against the target found.</summary>
public enum TargetVerdict
{
    /// <summary>Not syrup yet; it would ferment or mold.</summary>
    Thin,

    /// <summary>On target as near as the test can tell.</summary>
    OnTarget,

    /// <summary>Over the target; it may crystallize.</summary>
    Heavy,
}

/// <summary>How far a batch is on or off its target.</summary>
/// <remarks>
/// Source: [S3] through the hydrometer. Accuracy: the hydrometer's 0.33 Brix; so 0.3 either way counts as on target
/// (common practice, no source). A law's least density is a limit, not a target: see <see cref="LegalDensity"/>.
/// </remarks>
public readonly record struct TargetCheck
{
    private const double OnTargetWithinBrix = 0.3;

    private TargetCheck(SugarContent trueContent, SugarContent target) => (TrueSugarContent, Target) = (trueContent, target);

    /// <summary>What the batch holds.</summary>
    public SugarContent TrueSugarContent { get; }

    /// <summary>What it is meant to hold.</summary>
    public SugarContent Target { get; }

    /// <summary>How far over the target, in Brix; negative where it is thin.</summary>
    public double BrixOverTarget => TrueSugarContent.Brix - Target.Brix;

    /// <summary>The finding in a word.</summary>
    public TargetVerdict Verdict => BrixOverTarget switch
    {
        < -OnTargetWithinBrix => TargetVerdict.Thin,
        > OnTargetWithinBrix => TargetVerdict.Heavy,
        _ => TargetVerdict.OnTarget,
    };

    /// <summary>The check of a batch of known sugar content.</summary>
    public static TargetCheck Of(SugarContent trueContent, SugarContent target) => new(trueContent, target);

    /// <summary>The check by a syrup hydrometer in a sample of known temperature.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside what <see cref="SyrupHydrometer"/> covers.</exception>
    public static TargetCheck OfReading(
        SugarContent shown,
        Temperature sample,
        SugarContent target,
        HydrometerCalibration calibration = HydrometerCalibration.At60Fahrenheit) =>
        new(SyrupHydrometer.TrueSugarContent(shown, sample, calibration), target);
}
