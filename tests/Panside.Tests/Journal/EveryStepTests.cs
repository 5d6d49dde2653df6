using System.Diagnostics;
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
        var setting = SessionDoor.BuiltIn();
        using var session = RecordedSession.New(setting, _ => JournalFile.Open(scratch["boil.jsonl"]));
        var at = Evening.Clock().GetUtcNow();
        session.Hear(new Tick(Moment.Of(at)));
        var tried = new HashSet<string>();
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

            if (session.State.IsOver || !tried.Add($"{session.State.Step} {session.State.Open?.Step}"))
            {
                continue;
            }

            // What is on disk now is what is left of a program that is killed here.
            using (var copy = Process.Start("cp", [scratch["boil.jsonl"], scratch["killed.jsonl"]]))
            {
                copy.WaitForExit();
            }

            using var again = RecordedSession.On(setting, JournalFile.Open(scratch["killed.jsonl"]));
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
        Assert.InRange(tried.Select(pair => pair.Split(' ')[0]).Distinct().Count(), 30, 70);
        Assert.InRange(skipped, 2, 20);
    }
}
