using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>What kind of thing stands in the conversation.</summary>
internal enum EntryKind
{
    /// <summary>Anything that stays where it was said.</summary>
    Said,

    /// <summary>What the operator typed.</summary>
    Typed,

    /// <summary>A prompt: while it is open it stands above the input line instead.</summary>
    Prompt,

    /// <summary>A question: while it is open it stands above the input line instead.</summary>
    Question,
}

/// <summary>One thing said in the conversation.</summary>
/// <param name="Time">Hour and minute, where it opens an answer; else empty.</param>
/// <param name="Texts">Its lines, with their marks.</param>
/// <param name="Tone">The tone of its mark.</param>
/// <param name="Kind">What it is.</param>
internal sealed record Entry(string Time, IReadOnlyList<string> Texts, Tone Tone = Tone.Plain, EntryKind Kind = EntryKind.Said)
{
    /// <summary>Whether it opens an exchange: something typed, or something said after a time of silence.</summary>
    public bool Opens => Kind == EntryKind.Typed || Time.Length > 0;

    /// <summary>How much of the first text is its mark: up to the colon of an urgency, or the first sign.</summary>
    public int MarkLength => Tone switch
    {
        Tone.Danger or Tone.Now => Texts[0].IndexOf(':', StringComparison.Ordinal) + 1,
        Tone.Doubt => 1,
        Tone.Strong => Texts[0].Length,
        _ => 0,
    };

    /// <summary>The tone of an urgency.</summary>
    public static Tone ToneOf(string urgency) => urgency switch
    {
        "danger" => Tone.Danger,
        "now" => Tone.Now,
        _ => Tone.Plain,
    };
}
