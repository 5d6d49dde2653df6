using Panside.Guide.Lines;
using Panside.Guide.Yaml;

namespace Panside.Guide.Flows;

/// <content>Steps and watches: what is asked.</content>
public sealed partial class FlowFile
{
    private Step Step(YamlMap map, Phase phase, string? following)
    {
        var rests = map.Flag("rest") ?? false;
        var ask = rests ? null : Ask(map);
        var go = map.Text("go") ?? (rests ? null : following);
        if (go is null && !rests)
        {
            map.Add("step", "the last step of a phase leads nowhere", "'go: …', the step that follows", FaultKind.Reach);
        }

        var noGo = map.Text("no");
        var place = map.Place("step");
        var passages = map.Maps("if").Select(Passage).ToList();
        if (noGo is not null)
        {
            passages.Add(new("answer no", [], noGo, map.Place("no")));
        }

        if (go is not null)
        {
            var done = map.Texts("done-by").Select(when => Trigger(map, "done-by", when)).ToList();
            done.Add(Prompt.AnsweredBy(ask));
            var critical = map.Flag("critical") ?? false;
            if (!critical)
            {
                done.Add("answer skip");
            }

            passages.AddRange(done.Select(when => new Passage(when, [], go, map.Has("go") ? map.Place("go") : place)));
        }

        var step = new Step
        {
            Id = map.Text("step", required: true) ?? "",
            Name = map.Text("name"),
            Phase = phase,
            Ask = ask,
            Text = Worded(map, "text", required: !rests) ?? "",
            Because = Worded(map, "because"),
            Cautions = map.Texts("caution"),
            BeginnerOnly = map.Word("for", Levels) == "beginner",
            Given = Facts(map, "given"),
            Instead = Instead(map),
            MeansYes = OtherWords(map, "means-yes", "yes", ask == Prompt.Confirm ? null : "'ask: confirm', or no 'means-yes'"),
            MeansNo = OtherWords(map, "means-no", "no", passages.Exists(passage => passage.When == "answer no") || map.Has("if-no") ? null : "'no: …', where it leads, 'if-no: …', or no 'means-no'"),
            IsCritical = map.Flag("critical") ?? false,
            Advise = map.Word("advise", Actions.All),
            Urgency = map.Word("urgency", Urgencies.All) ?? "info",
            Prepare = map.Flag("prepare") ?? false,
            Forecast = map.Word("forecast", [.. _vocabulary.Forecasts]),
            Marks = map.Texts("mark"),
            Unmarks = map.Texts("unmark"),
            Deed = DeedOf(map.Texts("done-by")),
            Clock = Clock(map),
            IfNo = Worded(map, "if-no"),
            After = Time(map, "after", least: TimeSpan.Zero) ?? TimeSpan.Zero,
            Watches = map.Texts("watch"),
            Passages = passages,
            Place = place,
        };
        if (step is { Prepare: true, Advise: null })
        {
            map.Add("prepare", "'prepare' stands without 'advise'", "the action that it makes ready for, under 'advise'", FaultKind.Together);
        }

        map.Finish();
        return step;
    }

    /// <summary>Other ways to answer a step, where such an answer is asked for; if not, what was expected is told.</summary>
    private static IReadOnlyList<string> OtherWords(YamlMap map, string key, string answer, string? expected)
    {
        var said = map.Texts(key);
        if (said.Count > 0 && expected is not null)
        {
            map.Add(key, $"no {answer} is asked for here", expected, FaultKind.Together);
        }

        foreach (var one in said.Where(one => AnswerWords.All.Contains(one, StringComparer.OrdinalIgnoreCase)))
        {
            map.Add(key, $"'{one}' is an answer of its own", $"other words for a {answer}", FaultKind.Wording);
        }

        return said;
    }

    private Watch Watch(YamlMap map)
    {
        var id = map.Text("watch", required: true) ?? "";
        var ask = Ask(map) ?? Prompt.Confirm;
        var every = map.Says("every", "wood-interval") ? null : Time(map, "every", required: true);
        var practised = Time(map, "every-practised");
        if (ask is "pan-depth" or "back-pan-depth")
        {
            Seldom(map, "every", every);
            Seldom(map, "every-practised", practised);
        }

        var watch = new Watch(
            id,
            ask,
            every,
            practised,
            [.. map.Texts("done-by").Select(when => Trigger(map, "done-by", when))],
            Facts(map, "given"),
            Worded(map, "text", required: true) ?? "",
            Worded(map, "because"),
            map.Texts("caution"),
            map.Word("advise", Actions.All))
        { Place = map.Place("watch"), Instead = Instead(map) };
        map.Finish();
        return watch;
    }
}
