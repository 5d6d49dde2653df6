namespace Panside.Guide.Asking;

/// <summary>A conversation away from the fire: one question at a time. It knows no session and no clock; the same words in give the same words out.</summary>
public interface IAsking
{
    /// <summary>What is told before the first question.</summary>
    IReadOnlyList<string> Opening { get; }

    /// <summary>What is asked now.</summary>
    Page Page { get; }

    /// <summary>The words that can be typed, a line each.</summary>
    IReadOnlyList<string> Help { get; }

    /// <summary>The words that Tab completes.</summary>
    IReadOnlyList<string> Words { get; }

    /// <summary>The question before it is left in the midst; null where nothing is lost by leaving.</summary>
    string? BeforeLeaving { get; }

    /// <summary>Whether there is nothing more to ask.</summary>
    bool IsOver { get; }

    /// <summary>Hears what was typed; an empty text is Enter alone.</summary>
    /// <returns>What is said to it.</returns>
    IReadOnlyList<string> Hear(string words);
}
