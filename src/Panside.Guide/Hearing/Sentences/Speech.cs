namespace Panside.Guide.Hearing.Sentences;

/// <summary>The concepts of how something is said; every book of words has them.</summary>
internal static class Speech
{
    /// <summary>Begins another part of a sentence: and, but, so.</summary>
    public const string Break = "break";

    /// <summary>Begins another part of a sentence as its subject: I, it is, there is.</summary>
    public const string Subject = "subject";

    /// <summary>Its last word begins another part: <c>on it the</c>.</summary>
    public const string NewSubject = "new-subject";

    /// <summary>Before a subject: no other part begins here.</summary>
    public const string LeadsOn = "leads-on";

    /// <summary>Denies what follows.</summary>
    public const string Not = "not";

    /// <summary>Denies the word right before it: French pas.</summary>
    public const string NotAfter = "not-after";

    /// <summary>Words of denial that deny nothing: not good.</summary>
    public const string NotDenial = "not-denial";

    /// <summary>Begins a question.</summary>
    public const string Ask = "ask";

    /// <summary>Asks about what is there already: why is my.</summary>
    public const string Presume = "presume";

    /// <summary>Supposes all that follows.</summary>
    public const string If = "if";

    /// <summary>Supposes its part of the sentence.</summary>
    public const string Would = "would";

    /// <summary>Another time, all over the sentence.</summary>
    public const string Past = "past";

    /// <summary>This time, against <see cref="Past"/>.</summary>
    public const string Now = "now";

    /// <summary>Heard, read, or at somebody else's, all over the sentence.</summary>
    public const string Hearsay = "hearsay";

    /// <summary>Not meant.</summary>
    public const string Joke = "joke";

    /// <summary>Meant, against <see cref="Joke"/>.</summary>
    public const string Serious = "serious";

    /// <summary>What was has ended: it went down, it is fixed.</summary>
    public const string Ended = "ended";

    /// <summary>Said in need: now, quick, please.</summary>
    public const string Urgent = "urgent";

    /// <summary>Said in peace: nicely, as it should.</summary>
    public const string Calm = "calm";

    /// <summary>Ordinary talk with a danger's words in it.</summary>
    public const string Harmless = "harmless";

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<string> All =
    [
        Break, Subject, NewSubject, LeadsOn, Not, NotAfter, NotDenial, Ask, Presume, If, Would, Past, Now, Hearsay, Joke, Serious, Ended, Urgent, Calm, Harmless,
    ];
}
