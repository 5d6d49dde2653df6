namespace Panside.Guide.Rigs.Making;

/// <summary>One question about a rig.</summary>
/// <param name="Name">The word that names it, to come back to it.</param>
/// <param name="Ask">The question.</param>
/// <param name="Why">Why it is asked.</param>
/// <param name="Picture">What to measure, and where.</param>
internal sealed record RigQuestion(string Name, string Ask, string Why, string Picture)
{
    /// <summary>What may be typed, beside what Enter takes.</summary>
    public required Func<RigAnswers, string> Expected { get; init; }

    /// <summary>Understands what was typed.</summary>
    public required Func<string, RigAnswers, RigReply> Read { get; init; }

    /// <summary>Whether it is asked of the rig that the answers so far describe.</summary>
    public Func<RigAnswers, bool> Applies { get; init; } = _ => true;

    /// <summary>What Enter takes, in words; null where a person must say it.</summary>
    public Func<RigAnswers, string>? Usual { get; init; }
}
