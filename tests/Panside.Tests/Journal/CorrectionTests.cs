using System.Globalization;
using System.Text.Json;
using Panside.Faces;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Screen.Support;
using Panside.Tests.Stream;

namespace Panside.Tests.Records;

/// <summary>T12: whatever was entered is taken back by one word; the record keeps both.</summary>
public class CorrectionTests
{
    /// <summary>Every kind of deed, by what is typed; at a boil with the draw-off open where that is needed.</summary>
    private static readonly Dictionary<string, string> Deeds = new()
    {
        ["add-wood"] = "wood",
        ["open-draw"] = "open",
        ["close-draw"] = "drew 1 qt",
        ["spread-coals"] = "spread",
        ["flood-pan"] = "flooded",
        ["add-defoamer"] = "defoamer",
        ["cover-pan"] = "covered",
        ["refill-tank"] = "refill 5 gal",
        ["fill-pan"] = "poured 2 gal of water",
    };

    /// <summary>Each reading, all of them, each observation in each of its states, and each word of the flow.</summary>
    private static readonly IReadOnlyList<string> Typed =
    [
        .. StreamInputTests.Readings.DistinctBy(row => row.Data.Item1)
            .Select(row => string.Create(CultureInfo.InvariantCulture, $"{row.Data.Item1.Replace('-', ' ')} {row.Data.Item2} {row.Data.Item3}")),
        // In a boil nobody floods a pan on purpose: that is asked back.
        .. Deeds.Values.Except(["flooded"]),
        .. ObservationName.All.SelectMany(name => name.States.Select(state => $"{name.Code} {state}")),
        .. SessionDoor.BuiltIn().Flow.Words.Values.Distinct().Where(SessionDoor.BuiltIn().IsOfThisRig)
            // That the blower runs again leads somewhere only where it was told to stand.
            .Except(["blower-runs"]),
    ];

    [Fact]
    public void T12_every_entry_is_taken_back_by_one_word_and_the_record_keeps_both()
    {
        // The fire is lit once, before the boil; leaving ends it, and is asked about first where it is not clear; a wood fire is not shut off; a pan
        // with a draw-off is not poured out.
        Assert.Equal(DeedName.All.Select(name => name.Code).Except(["lit-fire", "leave", "shut-off", "empty-pan"]).Order(), Deeds.Keys.Order());
        Assert.InRange(Typed.Count, 40, 100);
        using var scratch = new Scratch();
        using var session = RecordedSession.New(SessionDoor.BuiltIn(), _ => JournalFile.Open(scratch["boil.jsonl"]));
        var played = Played.Scene("steady-boil", new RecordedConversation(session));
        foreach (var typed in Typed)
        {
            TakeBack(played, typed);
        }

        AssertKept(session, scratch["boil.jsonl"], Typed);
    }

    [Fact]
    public void T12_every_answer_is_taken_back_by_one_word_and_the_record_keeps_both()
    {
        using var scratch = new Scratch();
        using var session = RecordedSession.New(SessionDoor.BuiltIn(), _ => JournalFile.Open(scratch["boil.jsonl"]));
        var played = new Played(new RecordedConversation(session));
        played.Talk.Say("yes");
        played.Talk.Say("yes");
        Assert.Equal(Prompt.Confirm, session.State.Open!.Ask);
        string[] answers = ["yes", "no", "skip", "later", "lit"];
        foreach (var typed in answers)
        {
            TakeBack(played, typed);
        }

        AssertKept(session, scratch["boil.jsonl"], answers);
    }

    private static void TakeBack(Played played, string typed)
    {
        var before = played.Door.State;
        played.Clock.Advance(TimeSpan.FromSeconds(5));
        played.Talk.Say(typed);
        if (played.Door.State.Doubted is not null)
        {
            played.Talk.Say("yes");
        }

        Assert.NotEqual((typed, Known(before)), (typed, Known(played.Door.State)));
        played.Talk.Say("undo");
        Assert.Equal((typed, Known(before)), (typed, Known(played.Door.State)));
        Assert.Contains(played.Talk.Told, told => told.Text.StartsWith("Taken back: ", StringComparison.Ordinal));
    }

    private static void AssertKept(RecordedSession session, string path, IReadOnlyList<string> typed)
    {
        session.Dispose();
        var record = File.ReadAllLines(path);
        Assert.All(typed, one => Assert.Contains(record, line => line.Contains($"\"text\":{JsonSerializer.Serialize(one)}", StringComparison.Ordinal)));
        Assert.True(record.Count(line => line.Contains("\"text\":\"undo\"", StringComparison.Ordinal)) >= typed.Count);
    }

    /// <summary>What the person has told, and where the procedure stands by it.</summary>
    private static string Known(SessionState state) => string.Join(
        '\n',
        [
            state.Step, string.Join(',', state.Back), string.Join(',', state.Done), string.Join(',', state.Skipped), string.Join(',', state.Marks.Order()),
            string.Join(',', state.PutOff.Keys.Order()),
            .. state.Readings.OrderBy(pair => pair.Key.Code).Select(pair => $"{pair.Key.Code} {string.Join(',', pair.Value)}"),
            .. state.Observations.OrderBy(pair => pair.Key.Code).Select(pair => $"{pair.Key.Code} {pair.Value}"),
            .. state.Deeds.OrderBy(pair => pair.Key.Code).Select(pair => $"{pair.Key.Code} {pair.Value}"),
        ]);
}
