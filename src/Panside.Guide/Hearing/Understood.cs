using Panside.Guide.Lines;

namespace Panside.Guide.Hearing;

/// <summary>What a typed line turned out to be.</summary>
public abstract record Understood;

/// <summary>A reading, an observation, a deed or an answer.</summary>
public sealed record MeansLine(LineIn Line) : Understood;

/// <summary>Liquid went into the pan, and nobody said how much.</summary>
/// <param name="Pour">The deed without its amount.</param>
public sealed record MeansPoured(Did Pour) : Understood;

/// <summary>A word of the assistant's own, or of the flow, with what stands behind it.</summary>
public sealed record MeansWord(string Word, string Rest) : Understood;

/// <summary>A cry: something is wrong.</summary>
/// <param name="Dangers">The dangers that it may mean, the likeliest first; empty where nothing tells.</param>
/// <param name="IsSure">Whether it can only be the first of them.</param>
public sealed record MeansCry(IReadOnlyList<string> Dangers, bool IsSure) : Understood;

/// <summary>A question, or something about the talk itself: what one lacks, being away, say that again.</summary>
internal sealed record MeansTalk(Talk.Meaning Meaning) : Understood;

/// <summary>A line that may have been meant: it is asked.</summary>
internal sealed record MeansUnsure(LineIn Line) : Understood;

/// <summary>Several things in one breath.</summary>
/// <param name="Facts">Each of them, in the order said.</param>
internal sealed record MeansSeveral(IReadOnlyList<Understood> Facts) : Understood;

/// <summary>Nothing that is known here.</summary>
/// <param name="Why">What was understood of it, and what was expected.</param>
public sealed record MeansNothing(string Why) : Understood
{
    /// <summary>Whether every word of it was understood, so that nothing else can be meant.</summary>
    public bool IsCertain { get; init; } = true;

    /// <summary>Whether it is a short word of what is asked, and no cry whatever it sounds like.</summary>
    public bool IsNoCry { get; init; }

    /// <summary>Whether nothing else can be meant, so that it is not weighed.</summary>
    public bool IsPlain { get; init; }

    /// <summary>Whether it is a low that may be the pan's or the foam's, and no cry whatever it sounds like.</summary>
    public bool IsLow { get; init; }
}
