using System.Globalization;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Screen.Support;

namespace Panside.Tests.Records;

/// <summary>O12: killed at any step of a whole boil, the same step comes back, and what was skipped stays listed.</summary>
public class EveryStepTests
{
    [Fact]
    public void O12_killed_at_every_step_the_same_step_comes_back_and_what_was_skipped_stays_listed()
    {
        using var scratch = new Scratch();
        var setting = SessionDoor.BuiltIn().With(64); // what is recorded and heard again hangs on none of their numbers
        IDisk? disk = null;
        using var session = RecordedSession.New(setting, _ => JournalFile.Open(scratch["boil.jsonl"], real => disk = real));
        var at = Evening.Clock().GetUtcNow();
        session.Hear(new Tick(Moment.Of(at)));
        var (seen, tried) = (new HashSet<string>(), 0);
        var skipped = 0;

        // A beginner's boil with a dry pan in it, two things skipped and one put off.
        foreach (var line in Evening.Scenes["over"].SelectMany(line => line == "clear" ? ["emergency", "dry", "depth 1 1/2", "yes", line] : line == "sap 2.1" ? ["skip"] : new[] { line }))
        {
            if (line[0] == '@')
            {
                for (var minutes = int.Parse(line[1..], CultureInfo.InvariantCulture); minutes > 0; minutes--)
                {
                    at = at.AddMinutes(1);
                    session.Hear(new Tick(Moment.Of(at)));
                }
            }
            else
            {
                at = at.AddSeconds(2);
                session.Hear(new Text(Moment.Of(at), line));
            }

            // To hear a boil again takes its time: every third step, unless all are asked for.
            if (session.State.IsOver || !seen.Add($"{session.State.Step} {session.State.Open?.Step}") || (!Thorough.IsAsked && seen.Count % 3 != 0))
            {
                continue;
            }

            tried++;

            // What is on disk now is what is left of a program that is killed here. Only who holds the record may read it.
            var killed = scratch[$"killed-{tried}.jsonl"];
            var left = new byte[disk!.Length];
            Assert.Equal(left.Length, disk.Read(0, left));
            File.WriteAllBytes(killed, left);

            using var again = RecordedSession.On(setting, JournalFile.Open(killed));
            var told = again.Hear(new Tick(Moment.Of(at.AddSeconds(1))));
            Assert.Equal(session.State.Step, again.State.Step);
            Assert.Equal(session.State.Done, again.State.Done);
            Assert.Equal(session.State.Skipped, again.State.Skipped);
            if (session.State.Open is { } open)
            {
                Assert.Equal(open.Step, told.OfType<PromptLine>().Last().Prompt.Step);
            }

            skipped = int.Max(skipped, again.State.Skipped.Count);
        }

        Assert.True(session.State.IsOver);
        Assert.InRange(seen.Select(pair => pair.Split(' ')[0]).Distinct().Count(), 30, 70);
        Assert.Equal(Thorough.IsAsked ? seen.Count : seen.Count / 3, tried);
        Assert.InRange(skipped, 2, 20);
    }
}
