using Panside.Guide.Measures;

namespace Panside.Guide.Lines;

/// <summary>What the operator, or the passing of time, says. Nothing else changes a session.</summary>
/// <param name="At">When.</param>
public abstract record LineIn(Moment At);

/// <summary>A value read off an instrument.</summary>
public sealed record Reading(Moment At, ReadingName Name, Measure Measure) : LineIn(At);

/// <summary>Something seen or smelled.</summary>
public sealed record Observed(Moment At, ObservationName Name, string Is) : LineIn(At);

/// <summary>Something done, with its amount where it has one.</summary>
public sealed record Did(Moment At, DeedName Name, Measure? Measure) : LineIn(At)
{
    /// <summary>What it was done with: of what is poured into the pan, sap unless said; null of any other deed.</summary>
    public string? Is { get; init; } = Name.Liquids.Count > 0 ? Name.Liquids[0] : null;

    /// <summary>Into which of two pans it was poured, one of <see cref="Pans"/>; null where nobody said, and of any other deed.</summary>
    public string? Pan { get; init; }

    /// <summary>Whether liquid went into the pan, and nobody said how much: no line of the stream says it, only typed words do.</summary>
    public bool IsUnmeasured => Name.WantsAmount && Measure is null;
}

/// <summary>
/// Liquid was added, and nobody said whether into the pan or into the tank. It is asked, and only what that makes of it is taken;
/// no line of the stream says it.
/// </summary>
/// <param name="At">When.</param>
/// <param name="Measure">How much.</param>
/// <param name="Liquid">One of <see cref="Liquids"/>.</param>
public sealed record Added(Moment At, Measure Measure, string Liquid) : LineIn(At)
{
    /// <summary>The words that answer where it went.</summary>
    public static readonly IReadOnlyList<string> Places = ["pan", "tank"];

    /// <summary>The deed that it was, once it is known that it went into the pan.</summary>
    public Did IntoPan(Moment at) => new(at, DeedName.FillPan, Measure) { Is = Liquid };

    /// <summary>The deed that it was, once it is known that it went into the tank.</summary>
    public Did IntoTank(Moment at) => new(at, DeedName.RefillTank, Measure);
}

/// <summary>An answer to the open prompt: one of <see cref="AnswerWords"/>.</summary>
public sealed record Answer(Moment At, string Word) : LineIn(At);

/// <summary>What a person typed.</summary>
public sealed record Text(Moment At, string Words) : LineIn(At);

/// <summary>Time passes.</summary>
public sealed record Tick(Moment At) : LineIn(At);

/// <summary>A line that is none of the above: it is refused for the reason it carries, and changes nothing.</summary>
/// <param name="Stated">When; null where the line has no good time.</param>
/// <param name="Why">What is wrong, what was expected.</param>
/// <param name="Field">The field to blame; null where it is the whole line.</param>
public sealed record Unreadable(Moment? Stated, string Why, string? Field) : LineIn(Stated ?? default);

/// <summary>The session goes on after an interruption: the present phase and the open prompt are told again.</summary>
public sealed record Resumed(Moment At) : LineIn(At);
