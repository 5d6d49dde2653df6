using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Panside.Guide.Wording;

/// <summary>What a text of a step asks a person to do: told apart by verbs in the form of a command, where a clause may begin.</summary>
/// <param name="Actions">The clauses that ask for something to be done.</param>
/// <param name="Replies">The clauses that say how to answer.</param>
/// <param name="IsQuestion">Whether it asks what only an answer tells.</param>
/// <param name="Sentences">How many sentences it has.</param>
public sealed partial record Instruction(IReadOnlyList<string> Actions, IReadOnlyList<string> Replies, bool IsQuestion, int Sentences)
{
    private static readonly FrozenSet<string> ReplyVerbs = Set("answer say skip type");

    /// <summary>Verbs that are hardly anything else.</summary>
    private static readonly FrozenSet<string> Verbs = Set(
        "add ask boil bring call carry check cut dip do drain fill find get give go hold keep leave let lift make mend move never open " +
        "pour press pull push put read refill remove rinse scrape see shut skim spread start stay stir strain sweep take throw tilt touch " +
        "trust try turn use wait wash weigh wipe");

    /// <summary>Verbs that are names or qualities as well: within a sentence they are taken for verbs only before these.</summary>
    private static readonly FrozenSet<string> AlsoNames = Set(
        "clean clear close cool cover draw dry fire filter float flood free level light look measure note plan rake run set smell stop taste test warm watch");

    private static readonly FrozenSet<string> BehindVerbs = Set("a again an at down for in it its off out the them up your");

    private static readonly FrozenSet<string> Conditions = Set("after at before if in of once over under until when where while with");

    private static readonly FrozenSet<string> Leads = Set("else first now or please then");

    /// <summary>Takes a text apart.</summary>
    public static Instruction Of(string text)
    {
        var (actions, replies) = (new List<string>(), new List<string>());
        foreach (var sentence in Sentence().Split(text))
        {
            foreach (var clause in Clauses(sentence))
            {
                var verb = Bare(clause[0]);
                (ReplyVerbs.Contains(verb) ? replies : Verbs.Contains(verb) || AlsoNames.Contains(verb) ? actions : null)?.Add(string.Join(' ', clause));
            }
        }

        return new(actions, replies, text.Contains('?', StringComparison.Ordinal), FullStop().Count(text));
    }

    /// <summary>The clauses of a sentence: its beginning behind a condition, and whatever begins with a verb behind 'and', 'then' or a comma.</summary>
    private static IEnumerable<string[]> Clauses(string sentence)
    {
        var words = sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var begin = 0;
        while (begin < words.Length && Leads.Contains(Bare(words[begin])))
        {
            begin++;
        }

        if (begin < words.Length && Conditions.Contains(Bare(words[begin])))
        {
            begin = Array.FindIndex(words, begin, word => word.EndsWith(',')) + 1;
            begin = begin == 0 ? words.Length : begin;
        }

        for (var next = begin + 1; next <= words.Length; next++)
        {
            if (next == words.Length || IsBegun(words, next))
            {
                if (begin < words.Length)
                {
                    yield return words[begin..next];
                }

                begin = next;
            }
        }
    }

    private static bool IsBegun(string[] words, int at) =>
        (Bare(words[at - 1]) is "and" or "then" || words[at - 1].EndsWith(','))
        && Bare(words[at]) is var verb
        && (ReplyVerbs.Contains(verb) || Verbs.Contains(verb)
            || (AlsoNames.Contains(verb) && at + 1 < words.Length && BehindVerbs.Contains(Bare(words[at + 1]))));

    private static string Bare(string word) => word.Trim(',', '.', ';', ':', '?', '!', '\'', '"', '(', ')').ToLowerInvariant();

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);

    [GeneratedRegex(@"(?<=[.?!;])\s+")]
    private static partial Regex Sentence();

    [GeneratedRegex(@"[.?!](\s|$)")]
    private static partial Regex FullStop();
}
