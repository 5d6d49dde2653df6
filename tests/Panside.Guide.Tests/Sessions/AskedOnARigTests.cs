using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Guide.Tests.Sessions;

/// <summary>What is answered to typed questions, and to words that are not understood, on rigs that lack what others have: nothing of that is spoken of.</summary>
public class AskedOnARigTests
{
    private static readonly string[] Typed =
    [
        "help", "status", "why", "skipped", "what is a flumadiddle", "blorp the wurzel", "emergency", "no", "when can I leave", "what if I stop now", "how long until the draw",
        "when do I stop", "what is Brix", "how much have I boiled", "what next", "what should I do", "undo", "who takes over",
    ];

    public static IEnumerable<TheoryDataRow<string>> RigNames => [.. TextsOfARigTests.Rigs.Keys.Append("two pans").Select(name => new TheoryDataRow<string>(name))];

    [Theory]
    [MemberData(nameof(RigNames))]
    public void Nothing_that_is_not_there_is_spoken_of(string name)
    {
        var boil = new Conversation(rigText: TextsOfARigTests.Rigs.GetValueOrDefault(name) ?? RepositoryFiles.Read("flows", "rigs", "flue-and-syrup-pan.yaml"), members: Conversation.Few);
        var rig = boil.Session.Setting.Rig;
        string[][] parts =
        [
            [], ["no", "tank 15 gal", "depth 4 cm", "sap 2", "lit"], ["boil rolling", "depth 4 cm", "back pan 5 cm"], ["shutdown", "yes"], ["boil still", "depth 6 cm", "back pan 6 cm"],
        ];
        foreach (var part in parts)
        {
            foreach (var said in part.Concat(Typed))
            {
                boil.Say(said);
            }

            boil.After(12);
        }

        var texts = boil.All.Select(Text).OfType<string>().Distinct().ToList();
        Assert.True(texts.Count > 40);
        var faults = string.Join("\n", texts.SelectMany(text => TextsOfARigTests.Faults(rig, "said", text)));
        Assert.True(faults.Length == 0, faults);
    }

    private static string? Text(LineOut line) => line switch
    {
        ToldLine told => told.Text,
        RefusedLine refused => refused.Why,
        QuestionLine question => $"{question.Text} {question.WouldTake}",
        AdviceLine advice => $"{advice.Advice.Text} {advice.Advice.Because}",
        PromptLine prompt => $"{prompt.Prompt.Text} {prompt.Prompt.Because}",
        CautionLine caution => caution.Text,
        _ => null,
    };
}
