using Panside.Guide.Hearing.Cries;

namespace Panside.Workshop.Hearing;

/// <summary>What an ear makes of sentences, by habit of speech: cries that open the emergency, those heard as what they mean, everyday talk that opens it.</summary>
internal static class EarTable
{
    /// <summary>The rows of the table.</summary>
    public static IEnumerable<string> Of(Func<string, Cry?> hear, IReadOnlyList<SaidSentence> sentences)
    {
        var heard = sentences.Select(sentence => (Said: sentence, Cry: hear(sentence.Text))).ToList();
        yield return "habit            cries  opened   right  everyday  falsely";
        foreach (var habit in heard.GroupBy(one => one.Said.Habit).OrderBy(group => group.Key, StringComparer.Ordinal))
        {
            yield return Row(habit.Key, [.. habit]);
        }

        yield return Row("all", heard);
    }

    /// <summary>What was not heard as it was meant, a sentence a line.</summary>
    public static IEnumerable<string> Misheard(Func<string, Cry?> hear, IReadOnlyList<SaidSentence> sentences) =>
        from said in sentences
        let cry = hear(said.Text)
        where said.Hazard is null ? cry is not null : cry is not { Hazards: [var first, ..] } || first != said.Hazard
        select $"{said.Hazard ?? "everyday"} heard as {(cry is null ? "nothing" : string.Join(", ", cry.Hazards.DefaultIfEmpty("unsure")))}: {said.Text}";

    private static string Row(string name, List<(SaidSentence Said, Cry? Cry)> heard)
    {
        var cries = heard.Where(one => one.Said.Hazard is not null).ToList();
        var opened = cries.Count(one => one.Cry is not null);
        var right = cries.Count(one => one.Cry is { Hazards: [var first, ..] } && first == one.Said.Hazard);
        var falsely = heard.Count(one => one.Said.Hazard is null && one.Cry is not null);
        var many = double.Max(1, cries.Count);
        return FormattableString.Invariant($"{name,-15} {cries.Count,6} {100 * opened / many,6:F1}% {100 * right / many,6:F1}% {heard.Count - cries.Count,9} {falsely,8}");
    }
}
