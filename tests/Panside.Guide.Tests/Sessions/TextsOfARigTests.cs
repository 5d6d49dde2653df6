using System.Text.RegularExpressions;
using Panside.Guide.Answering;
using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;

namespace Panside.Guide.Tests.Sessions;

/// <summary>
/// Every text that can be said on a rig, whether a boil comes to it or not: steps and emergencies, watches, advice, answers, terms. What the
/// rig lacks stands in none of them.
/// </summary>
public partial class TextsOfARigTests
{
    /// <summary>What is not spoken of where a rig lacks something, by the fact that says so.</summary>
    internal static readonly IReadOnlyList<(string Lacks, Regex Words)> Unspoken =
    [
        ("not has-float", FloatWords()),
        ("fed-by-hand", FeedsByItself()),
        ("not has-channels", ChannelWords()),
        ("has-burner", WoodWords()),
        ("not has-lid", LidWords()),
        ("not has-channels", SideWords()),
        ("heats-electric", BurnerWords()),
        ("drawn-by-pouring", DrawOffWords()),
        ("not has-tank", TankWords()),
    ];

    internal static readonly IReadOnlyDictionary<string, string> Rigs = new Dictionary<string, string>
    {
        ["hand"] = "rig: r\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { draft: natural }\nfeed: { by: hand }\n",
        ["valve"] = "rig: r\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { draft: natural }\nfeed: { by: valve }\n",
        ["gas"] = "rig: r\nunits: us\npan: { length: 48 in, width: 24 in }\nfire: { kind: gas }\n",
        ["electric, by hand, no lid"] = "rig: r\nunits: metric\npan: { length: 100 cm, width: 60 cm, channels: 1 }\nfire: { kind: electric, boils: 20 L/h }\nfeed: { by: hand }\nlid: false\ninstruments: none\n",
        ["poured out, wood"] = "rig: r\nunits: us\npan: { length: 30 in, width: 20 in, channels: 1 }\nfire: { draft: natural }\nfeed: { by: hand, pail: 1 gal, tank: 20 gal }\ndraw: { by: pour }\nfinishing pot: true\n",
        ["poured out, gas"] = "rig: r\nunits: us\npan: { length: 30 in, width: 20 in, channels: 1 }\nfire: { kind: gas, boils: 4 gal/h }\nfeed: { by: hand, pail: 1 gal }\ndraw: { by: pour }\n",
        ["one channel"] = "rig: r\nunits: us\npan: { length: 48 in, width: 24 in, channels: 1 }\nfire: { draft: forced }\n",
    };

    public static IEnumerable<TheoryDataRow<string>> RigNames => Rigs.Keys.Select(name => new TheoryDataRow<string>(name));

    [Theory]
    [MemberData(nameof(RigNames))]
    public void No_text_speaks_of_what_the_rig_lacks(string name)
    {
        var rig = RigFile.Read("rig.yaml", Rigs[name]);
        var texts = TextsOn(rig).ToList();
        Assert.InRange(texts.Count, 300, 2000);
        var faults = string.Join("\n", texts.SelectMany(text => Faults(rig, text.Where, text.Said)));
        Assert.True(faults.Length == 0, faults);
    }

    /// <summary>What speaks of a thing that a rig lacks. A term tells what a word means on any rig; a building that burns burns on any.</summary>
    internal static IEnumerable<string> Faults(Rig rig, string where, string said) => Unspoken
        .Where(row => RigFacts.Holds(rig, row.Lacks) && !(OfUse.Contains(row.Lacks) && (where.StartsWith("term ", StringComparison.Ordinal) || Burning.Contains(where)))
            && row.Words.IsMatch(Figure().Replace(said, "")))
        .Select(row => $"{row.Lacks}: {where}: {said}");

    private static IEnumerable<(string Where, string Said)> TextsOn(Rig rig)
    {
        var flow = new Setting(Conversation.Flow, rig, Guidance.Beginner, "test").Flow;
        bool Can(IReadOnlyList<string> given) => given.Where(RigFacts.IsOne).All(fact => RigFacts.Holds(rig, fact)) && !(rig.IsBatch && given.Any(OfADrawOff.Contains));
        yield return ("opening", flow.Opening);
        foreach (var step in flow.Steps.Values.Where(step => Can(step.Given) && Can([step.Id]) && new Setting(Conversation.Flow, rig, Guidance.Beginner, "test").IsThere(step.Ask)))
        {
            foreach (var text in new[] { step.Text, step.Because, step.IfNo, step.Clock?.Text, step.Clock?.Over }.Concat(step.Cautions).OfType<string>())
            {
                yield return (step.Id, text);
            }
        }

        foreach (var watch in flow.Watches.Where(watch => Can(watch.Given) && new Setting(Conversation.Flow, rig, Guidance.Beginner, "test").IsThere(watch.Ask)))
        {
            foreach (var text in new[] { watch.Text, watch.Because }.Concat(watch.Cautions).OfType<string>())
            {
                yield return (watch.Id, text);
            }
        }

        foreach (var rule in flow.Advices.Where(rule => Can(rule.When)))
        {
            yield return (rule.Id, rule.Text);
            yield return (rule.Id, rule.Because);
        }

        var answers = AnswerBook.Read("answers", RepositoryFiles.Read("flows", "words", "answers.yaml"), Vocabularies.Flow)["en"];
        foreach (var ask in answers.Asks.Values)
        {
            // The first that always holds on this rig ends the list.
            var can = ask.Answers.Where(answer => Can(answer.When)).ToList();
            foreach (var answer in can.Take(can.FindIndex(answer => answer.When.All(RigFacts.IsOne)) + 1))
            {
                yield return (ask.Code, answer.Say);
            }
        }

        // Who asks what a thing is, is told; what is told of another thing speaks of none that is not there.
        foreach (var term in Terms.Read("terms", RepositoryFiles.Read("flows", "words", "terms.yaml"))["en"].All.Where(term => term.IsOf(rig) && !Own.Contains(term.Name)).Select(term => term.On(rig)))
        {
            yield return ("term " + term.Name, term.Is);
            yield return ("term " + term.Name, term.Measure ?? "");
        }
    }

    private static readonly string[] OfUse = ["not has-channels", "heats-electric", "drawn-by-pouring", "not has-tank"];

    private static readonly string[] Burning = ["opening", "stack-clear", "emergency-fire", "fire-outside", "fire-after", "emergency-smoke", "emergency-chimney", "chimney-after"];

    /// <summary>Where nothing leads on a pan that is poured out whole: nothing is opened there.</summary>
    private static readonly string[] OfADrawOff = ["draw-open", "draw-fallen", "draw-forgotten", "draw-open-long", "draw-outrun", "draw-close", "draw-last", "shut-draw"];

    /// <summary>Terms that are of the thing itself.</summary>
    private static readonly string[] Own = ["float", "gradient", "channel", "draw-off", "feed-side", "draw-off-side", "cover", "stack", "scale"];

    [GeneratedRegex(@"\{[^}]*\}")]
    private static partial Regex Figure();

    [GeneratedRegex(@"\bfloat\b(?! (the hydrometer|free))|\bhung\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FloatWords();

    [GeneratedRegex(@"sap (still )?feeds|feeds the pan(?! but you)|tank valve|feed valve|sap still feeding|harder than the feed", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex FeedsByItself();

    [GeneratedRegex(@"\b(wood|firewood|coals?|embers?|charges?|fireboxe?s?|grates?|rake|raked|blower|draft|firebrick|brick)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex WoodWords();

    [GeneratedRegex(@"\b(lid|cover(ed)? the pan)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex LidWords();

    [GeneratedRegex(@"(syrup|feed|draw-off) side|shallow end", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex SideWords();

    [GeneratedRegex(@"\b(burners?|arch|flames?|chimney|firing|fire on|no fire|over a fire|near a fire|the fire|this fire|feeds the fire)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex BurnerWords();

    [GeneratedRegex(@"\bdraw-off\b|\b(a|the|no|next|first) draws?\b|\bdrawn off\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex DrawOffWords();

    [GeneratedRegex(@"\bhead tank\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TankWords();

    [GeneratedRegex(@"whether the channels|while the channels|channels (still )?differ|once the channels", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex ChannelWords();
}
