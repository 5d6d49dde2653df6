using Panside.Guide.Lines;
using Panside.Guide.Measures;
using Panside.Reckoning.Instruments;
using Panside.Reckoning.Quantities;

namespace Panside.Guide.Knowledge;

/// <summary>The hydrometer's sample: what the glass shows, put right for its temperature.</summary>
internal static class SyrupSample
{
    /// <summary>So far apart glass and cup's temperature are of one sample; a cup that stood is read again, both. Common practice, no source.</summary>
    public static readonly TimeSpan OneSample = TimeSpan.FromMinutes(10);

    /// <summary>The true sugar content of the last sample; null where reading or temperature is missing, out of range or of another time.</summary>
    public static SugarContent? TrueSugar(SessionState state)
    {
        if (state.Last(ReadingName.HydrometerBrix) is not { } shown || state.Last(ReadingName.SampleTemperature) is not { } sample
            || (shown.At.Time - sample.At.Time).Duration() > OneSample)
        {
            return null;
        }

        try
        {
            return SyrupHydrometer.TrueSugarContent(UnitSystem.Sugar(shown.Value), UnitSystem.Temperature(sample.Value));
        }
        catch (ArgumentOutOfRangeException)
        {
            return null;
        }
    }

    /// <summary>How far the sample is above the target, in Brix; null where it is not known.</summary>
    public static double? OffTarget(Setting setting, SessionState state) =>
        TrueSugar(state) is { } sugar ? sugar.Brix - setting.Rig.Target.Brix : null;
}
