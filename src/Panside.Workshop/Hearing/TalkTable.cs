using Panside.Guide.Hearing.Talk;

namespace Panside.Workshop.Hearing;

/// <summary>What a session makes of talk: understood rightly, asked about, not understood, and taken for what was not meant.</summary>
internal static class TalkTable
{
    /// <summary>The rows of the table, by what is meant.</summary>
    public static IEnumerable<string> Of(SteadyBoilEar ear, IReadOnlyList<TalkSentence> sentences)
    {
        var heard = sentences.Select(sentence => (Said: sentence, Heard: ear.Hear(sentence.Text))).ToList();
        yield return "meant            lines   right  asked  lost  taken for another";
        foreach (var group in heard.GroupBy(one => Group(one.Said)).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            yield return Row(group.Key, [.. group]);
        }

        yield return Row("all", heard);
    }

    /// <summary>What was not heard as it was meant, a sentence a line.</summary>
    public static IEnumerable<string> Misheard(SteadyBoilEar ear, IReadOnlyList<TalkSentence> sentences) =>
        from said in sentences
        let heard = ear.Hear(said.Text)
        where !IsRight(said, heard)
        select $"{string.Join(" ; ", said.Meant.Select(one => $"{one.Kind} {one.Value} {one.Unit}"))} heard as {string.Join(" ; ", heard.Select(one => $"{one.Kind} {one.Value} {one.Unit}"))}: {said.Text}";

    private static string Group(TalkSentence said) => said.Meant.Count > 1 ? "several" : said.Meant[0].Kind.Split(':')[0];

    private static bool IsRight(TalkSentence said, IReadOnlyList<HeardMeaning> heard)
    {
        var meant = said.Meant.Where(one => one.Kind != Meaning.None).ToList();
        return meant.Count == heard.Count && meant.Zip(heard).All(pair => pair.First.Is(pair.Second));
    }

    private static string Row(string name, List<(TalkSentence Said, IReadOnlyList<HeardMeaning> Heard)> heard)
    {
        var right = heard.Count(one => IsRight(one.Said, one.Heard));
        var asked = heard.Count(one => one.Heard.Any(fact => fact.IsAsked));
        var lost = heard.Count(one => one.Heard.Count == 0 && one.Said.Meant.Any(meant => meant.Kind != Meaning.None));
        var wrong = heard.Count(one => one.Heard.Any(fact => fact is { IsFact: true, IsAsked: false } && !one.Said.Meant.Any(meant => meant.Is(fact))));
        return FormattableString.Invariant($"{name,-15} {heard.Count,6} {100.0 * right / heard.Count,6:F1}% {asked,6} {lost,5} {wrong,6}");
    }
}
