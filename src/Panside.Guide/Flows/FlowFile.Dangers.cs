using Panside.Guide.Hearing.Cries;
using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <content>What can go wrong, and the clocks of what is done about it.</content>
public sealed partial class FlowFile
{
    private static readonly TimeSpan ComesBack = TimeSpan.FromMinutes(10);

    private List<Danger> Dangers(YamlMap root, Dictionary<string, string> words)
    {
        var dangers = new List<Danger>();
        foreach (var map in root.Maps("dangers", required: true))
        {
            var danger = Danger(map, words, dangers);
            if (dangers.Any(other => other.Code == danger.Code))
            {
                map.Add("danger", $"the danger '{danger.Code}' stands twice", "a name of its own for each danger", FaultKind.Twice);
            }

            dangers.Add(danger);
        }

        return dangers;
    }

    /// <summary>The language that is spoken; where the file does not say it, the words of dangers need not be looked at yet.</summary>
    private static string Language(YamlMap root)
    {
        const string English = "en";
        return root.Has("language") ? root.Word("language", KnownCries.Words.Languages) ?? English : English;
    }

    private static Lazy<CryEar> Ear(string language, IReadOnlyList<Danger> dangers) => new(() => new(
        KnownCries.Words, language, dangers.SelectMany(danger => danger.Cries.Select(cry => (danger.Code, cry))), KnownCries.Fitted(language)));

    private Danger Danger(YamlMap map, Dictionary<string, string> words, IReadOnlyList<Danger> graver)
    {
        var code = map.Text("danger", required: true) ?? "";
        Word(map, map.Has("words") ? "words" : "danger", code, map.Texts("words"), words);
        var go = map.Text("go", required: true) ?? "";
        var place = map.Place("go");
        var ways = new List<Passage> { new("word " + code, [], go, place) };
        foreach (var when in map.Maps("when"))
        {
            var way = new Passage(Trigger(when, "when", when.Text("when", required: true) ?? ""), Facts(when, "given"), go, place);
            Overtaken(when, code, way, graver);
            ways.Add(way);
            when.Finish();
        }

        var holds = map.Text("while");
        map.Only("while", FactWords);
        if (holds is not null && !IsFact(holds))
        {
            map.Add("while", $"'{holds}' is no fact", "one that docs/facts.md lists", FaultKind.Fact, Fault.Nearest(holds, _vocabulary.Facts));
        }

        if (holds is not null)
        {
            ways.Add(new("danger " + code, [], go, place));
        }

        var cries = map.PlacedTexts("cries");
        _cries.AddRange(cries.Select(cry => (code, cry.Text, cry.Place)));
        var given = Facts(map, "given");
        var again = Time(map, "again");
        Seldom(map, "again", again);
        var danger = new Danger(
            code, go, [.. cries.Select(cry => cry.Text)], ways, holds, given, again ?? ComesBack, map.Flag("listed") ?? true,
            map.Flag("list") ?? false)
        { Place = map.Place("danger"), ListedWhere = OfARig(map, "listed-where") };
        map.Finish();
        return danger;
    }

    private StepClock? Clock(YamlMap map)
    {
        if (map.Map("clock") is not { } clock)
        {
            return null;
        }

        var read = new StepClock(
            Worded(clock, "text", required: true) ?? "", Time(clock, "lasts", required: true) ?? TimeSpan.Zero, Worded(clock, "over", required: true) ?? "");
        clock.Finish();
        return read;
    }
}
