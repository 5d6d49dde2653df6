using Panside.Guide.Measures;

namespace Panside.Guide.Lines;

/// <summary>What the assistant says. Each shape is one key of the stream.</summary>
/// <param name="At">The time of the line that it answers; null before there was a good one.</param>
/// <param name="Sequence">1, 2, 3 … through the whole session.</param>
public abstract record LineOut(Moment? At, int Sequence);

/// <summary>The session's own description; the first line out.</summary>
public sealed record SessionLine(Moment? At, int Sequence, SessionHeader Header) : LineOut(At, Sequence);

/// <summary>A phase begins, or is told again.</summary>
public sealed record PhaseLine(Moment? At, int Sequence, string Phase) : LineOut(At, Sequence);

/// <summary>Something is asked.</summary>
public sealed record PromptLine(Moment? At, int Sequence, Prompt Prompt) : LineOut(At, Sequence);

/// <summary>Something is to be done.</summary>
public sealed record AdviceLine(Moment? At, int Sequence, Advice Advice) : LineOut(At, Sequence);

/// <summary>A hazard, before the step that it belongs to.</summary>
public sealed record CautionLine(Moment? At, int Sequence, string Text) : LineOut(At, Sequence);

/// <summary>What is expected.</summary>
public sealed record ForecastLine(Moment? At, int Sequence, Forecast Forecast) : LineOut(At, Sequence);

/// <summary>How a text line was understood.</summary>
public sealed record HeardLine(Moment? At, int Sequence, LineIn As) : LineOut(At, Sequence);

/// <summary>The input was understood but is not believed.</summary>
public sealed record QuestionLine(Moment? At, int Sequence, string Text, string WouldTake) : LineOut(At, Sequence)
{
    /// <summary>The words that answer it, where a yes does not say which; null where yes and no do.</summary>
    public IReadOnlyList<string>? Choices { get; init; }
}

/// <summary>Nothing was changed.</summary>
public sealed record RefusedLine(Moment? At, int Sequence, string Why, string? Field) : LineOut(At, Sequence);

/// <summary>Plain information: an answer to <c>why</c>, <c>status</c>, <c>undo</c>, <c>note</c>.</summary>
public sealed record ToldLine(Moment? At, int Sequence, string Text) : LineOut(At, Sequence);

/// <summary>The outcome.</summary>
public sealed record OverLine(Moment? At, int Sequence, Outcome Outcome) : LineOut(At, Sequence);

/// <summary>What a session runs on.</summary>
/// <param name="Program">Name and version.</param>
/// <param name="Flow">The flow's name.</param>
/// <param name="FlowHash">SHA-256 of the flow's text, in hexadecimal, its first 16 digits.</param>
/// <param name="Rig">The rig's name.</param>
/// <param name="RigText">The rig file's text, so that the record stands alone.</param>
/// <param name="Guidance">beginner or practised.</param>
/// <param name="Practice">Whether the rig is simulated.</param>
public sealed record SessionHeader(
    string Program,
    string Flow,
    string FlowHash,
    string Rig,
    string RigText,
    string Guidance,
    bool Practice)
{
    /// <summary>The flow's version as its file tells it; null in a record that was made before it was told.</summary>
    public int? FlowVersion { get; init; }

    /// <summary>What past boils had taught of the rig when the session began, as its file has it; null where nothing was learned.</summary>
    public string? LearnedText { get; init; }

    /// <summary>Whether it was brought in from a table: nobody was asked whether it was clear to leave.</summary>
    public bool Imported { get; init; }
}

/// <summary>What is asked.</summary>
/// <param name="Step">The step's id in the flow.</param>
/// <param name="Ask">A reading's or an observation's code, or <c>confirm</c>.</param>
/// <param name="Unit">The unit that is assumed; null for an observation or a confirmation.</param>
/// <param name="Text">The instruction.</param>
/// <param name="Because">The reason; null where it is kept silent.</param>
/// <param name="Low">The lowest usual value in <paramref name="Unit"/>; null where there is none.</param>
/// <param name="High">The highest usual value.</param>
/// <param name="Last">The last value in <paramref name="Unit"/>; null where there is none.</param>
/// <param name="LastMinutes">Its age in whole minutes.</param>
/// <param name="Choices">The states to choose from, for an observation.</param>
/// <param name="CanSkip">Whether <c>skip</c> goes on. Told to persons; a program is told when it tries.</param>
/// <param name="CanWait">Whether <c>later</c> asks again.</param>
public sealed record Prompt(
    string Step,
    string Ask,
    Unit? Unit,
    string Text,
    string? Because = null,
    double? Low = null,
    double? High = null,
    double? Last = null,
    int? LastMinutes = null,
    IReadOnlyList<string>? Choices = null,
    bool CanSkip = true,
    bool CanWait = true)
{
    /// <summary>What a yes says was poured into the pan; null where no amount is asked for. Kept for the answer, and told in the text.</summary>
    public AskedPour? Pour { get; init; }

    /// <summary>The word for a step that wants yes.</summary>
    public const string Confirm = "confirm";

    /// <summary>The trigger by which what is asked is answered; a yes where nothing is.</summary>
    public static string AnsweredBy(string? ask) =>
        ask is null or Confirm ? "answer yes" : ObservationName.FromCode(ask) is not null ? "observed " + ask : "reading " + ask;
}

/// <summary>What is asked to be poured into the pan.</summary>
/// <param name="Amount">How much.</param>
/// <param name="Liquid">One of <see cref="Liquids"/>: what it is taken for where nobody says otherwise.</param>
public readonly record struct AskedPour(Measure Amount, string Liquid);

/// <summary>What is to be done.</summary>
/// <param name="Action">One of <see cref="Actions"/>.</param>
/// <param name="Urgency">danger, now, soon or info.</param>
/// <param name="Text">The action, verb first.</param>
/// <param name="Because">The reason, in one sentence of plain words and numbers.</param>
/// <param name="Forecast">The forecast that it stands on; null where none was used.</param>
public sealed record Advice(string Action, string Urgency, string Text, string Because, Forecast? Forecast)
{
    /// <summary>Whether it only makes ready for its action: whoever obeys by the action alone does nothing yet.</summary>
    public bool Prepare { get; init; }
}

/// <summary>A quantity with its 5, 50 and 95 % values, all null where there is no forecast.</summary>
public sealed record Forecast(string Name, Unit Unit, double? P5, double? P50, double? P95);

/// <summary>How a boil ended. Null where it is not known.</summary>
public sealed record Outcome(
    Measure? SapUsed,
    Measure? SyrupMade,
    Measure? SyrupBrix,
    Measure? Wood,
    Measure? Minutes,
    Measure? PanVolume,
    Measure? TankVolume,
    bool Safe,
    IReadOnlyList<string> Skipped,
    string Text)
{
    /// <summary>Sugar of the sap, as last read.</summary>
    public Measure? SapBrix { get; init; }

    /// <summary>Mean sugar of what stays in the pan, as reckoned: the next boil begins with it.</summary>
    public Measure? PanBrix { get; init; }

    /// <summary>Water that left the pan, as reckoned.</summary>
    public Measure? WaterBoiled { get; init; }

    /// <summary>From lighting the fire to the last wood.</summary>
    public Measure? FiredMinutes { get; init; }

    /// <summary>Whether anything could be said of how safe it was left: of a boil brought in from a table it cannot.</summary>
    public bool Judged { get; init; } = true;
}

/// <summary>The actions that advice can name.</summary>
public static class Actions
{
    /// <summary>All of them, as in the stream.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        "light-fire", "add-wood", "hold-wood", "open-draw", "close-draw", "raise-level", "flood-pan", "spread-coals",
        "add-defoamer", "check-level", "cool-pan", "cover-pan", "stay", "clear-to-leave",
    ];
}

/// <summary>The urgencies, the gravest first.</summary>
public static class Urgencies
{
    /// <summary>All of them, as in the stream.</summary>
    public static readonly IReadOnlyList<string> All = ["danger", "now", "soon", "info"];
}
