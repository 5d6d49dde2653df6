using System.Text.Json;
using System.Text.Json.Serialization;

namespace Panside.Reckoning.Ensemble;

/// <summary>
/// All that was fitted and has no source of its own, in one file with what it was fitted on: <c>calibration.json</c>, which is part of the program.
/// <c>panside-workshop calibrate --write</c> makes another from simulated worlds.
/// </summary>
internal sealed record CalibrationFile
{
    /// <summary>Counts up with each fit that landed.</summary>
    public required int Version { get; init; }

    /// <summary>On what it was fitted, in a sentence.</summary>
    public required string FittedOn { get; init; }

    /// <summary>By which command.</summary>
    public required string FittedBy { get; init; }

    /// <summary>What each forecast of the stream is set right by.</summary>
    public required IReadOnlyDictionary<string, CalibratedForecast> Corrections { get; init; }

    /// <summary>How much wider the time to a draw is told on a rig that was learned.</summary>
    public required double LearnedDraw { get; init; }

    /// <summary>What the members leave out.</summary>
    public required CalibratedNoise LeftOut { get; init; }

    /// <summary>As the program has it.</summary>
    public static CalibrationFile Own { get; } = Built();

    /// <summary>What a forecast is set right by in a stage; as the members say it where nothing was fitted.</summary>
    /// <param name="forecast">The forecast's name in the stream.</param>
    /// <param name="stage">How far fire and pan have come.</param>
    /// <param name="forcedDraft">Whether a blower fans the fire.</param>
    public Correction Of(string forecast, FireStage stage, bool forcedDraft) => Corrections.GetValueOrDefault(forecast) is { } calibrated
        && calibrated.Stages.FirstOrDefault(one => one.Stage == stage && one.Draft == (forcedDraft ? CalibratedDraft.Forced : CalibratedDraft.Natural)) is { } row
            ? new(row.Shift, row.Below, row.Above, calibrated.Offset)
            : Correction.None;

    /// <summary>Reads a file.</summary>
    /// <exception cref="JsonException">It is none, lacks something, or has a key that is not known.</exception>
    public static CalibrationFile Read(ReadOnlySpan<byte> utf8) => JsonSerializer.Deserialize(utf8, CalibrationJson.Default.CalibrationFile)
        ?? throw new JsonException("the calibration is null");

    /// <summary>The file's text.</summary>
    public string Written() => JsonSerializer.Serialize(this, CalibrationJson.Default.CalibrationFile) + "\n";

    private static CalibrationFile Built()
    {
        using var stream = typeof(CalibrationFile).Assembly.GetManifestResourceStream("calibration.json")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return Read(bytes);
    }
}

/// <summary>One forecast's corrections.</summary>
/// <param name="Offset">In the forecast's unit: far under it a value is moved by parts of the offset, not of itself.</param>
/// <param name="Stages">Stage by stage; the others are told as the members say them.</param>
internal sealed record CalibratedForecast(double Offset, IReadOnlyList<CalibratedStage> Stages);

/// <summary>The correction of one stage: <see cref="Correction"/>.</summary>
internal sealed record CalibratedStage(FireStage Stage, CalibratedDraft Draft, double Shift, double Below, double Above);

/// <summary>What draws the air.</summary>
internal enum CalibratedDraft
{
    /// <summary>The stack.</summary>
    Natural,

    /// <summary>A blower.</summary>
    Forced,
}

/// <summary>What the members leave out, on top of how they differ: standard deviations of logarithms, but for minutes and the part of a rate.</summary>
internal sealed record CalibratedNoise
{
    /// <summary>Part of the rate that the members say for the usual firing, with a blower.</summary>
    public required double RateForced { get; init; }

    /// <summary>Of the time to a draw.</summary>
    public required double Draw { get; init; }

    /// <summary>The same in minutes.</summary>
    public required double DrawMinutes { get; init; }

    /// <summary>Of the water that leaves without wood.</summary>
    public required double Residual { get; init; }

    /// <summary>More of it once the fire has died down, by natural draft.</summary>
    public required double ResidualDying { get; init; }

    /// <summary>The same with a blower.</summary>
    public required double ResidualDyingForced { get; init; }

    /// <summary>Of the time until the boil goes still, once the fire has died down, by natural draft.</summary>
    public required double StillDying { get; init; }

    /// <summary>The same with a blower.</summary>
    public required double StillDyingForced { get; init; }

    /// <summary>Of the time to the last charge.</summary>
    public required double LastCharge { get; init; }

    /// <summary>The same in minutes.</summary>
    public required double LastChargeMinutes { get; init; }
}

[JsonSourceGenerationOptions(
    PropertyNamingPolicy = JsonKnownNamingPolicy.KebabCaseLower, UseStringEnumConverter = true, WriteIndented = true,
    UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, RespectRequiredConstructorParameters = true, RespectNullableAnnotations = true)]
[JsonSerializable(typeof(CalibrationFile))]
internal sealed partial class CalibrationJson : JsonSerializerContext;
