using Panside.Commands;
using Panside.Guide.Lines;
using Panside.Journal;
using Panside.Tests.Stream;

namespace Panside.Tests.Records;

/// <summary>R4 and R10: a disk that fails at any write or flush of a scripted boil.</summary>
public class FailingDiskTests
{
    /// <summary>The start-up, for every operation of it; the whole boil is tried at fewer.</summary>
    private static readonly string[] StartUp = [.. WholeBoil.Lines.Take(14)];

    [Theory]
    [InlineData(Failing.Refused)]
    [InlineData(Failing.Half)]
    [InlineData(Failing.HalfAndStuck)]
    [InlineData(Failing.ForGood)]
    public void R4_a_disk_that_fails_at_any_write_or_flush_alarms_at_once_and_the_guidance_goes_on(Failing failing)
    {
        var whole = new Run(StartUp, int.MaxValue, failing);
        Assert.Equal(0, whole.Disk.Failures);
        Assert.Equal(2 * StartUp.Length, whole.Disk.Operations);
        for (var at = 1; at <= whole.Disk.Operations; at++)
        {
            Check(whole, new Run(StartUp, at, failing), failing, at);
        }
    }

    [Theory]
    [InlineData(Failing.Half)]
    [InlineData(Failing.HalfAndStuck)]
    [InlineData(Failing.ForGood)]
    public void R4_the_same_through_a_whole_boil(Failing failing)
    {
        string[] lines = [.. WholeBoil.Lines];
        var whole = new Run(lines, int.MaxValue, failing);
        for (var at = 7; at <= whole.Disk.Operations; at += 37)
        {
            Check(whole, new Run(lines, at, failing), failing, at);
        }
    }

    [Fact]
    public void R10_no_answer_is_given_before_its_lines_are_through_to_the_disk()
    {
        using var scratch = new Scratch();
        FailingDisk? disk = null;
        using var session = RecordedSession.New(Setting(), _ => JournalFile.Open(scratch["boil.jsonl"], real => disk = new FailingDisk(real, int.MaxValue, Failing.Refused)));
        foreach (var line in StartUp)
        {
            var answers = session.Hear(LineReader.Read(line), line);
            Assert.Equal(new FileInfo(scratch["boil.jsonl"]).Length, disk!.Flushed);
            Assert.NotEmpty(answers);
        }

        Assert.Equal(2 * StartUp.Length, disk!.Operations);
    }

    private static Guide.Knowledge.Setting Setting()
    {
        using var scratch = new Scratch();
        return Opening.SettingOf(new GuidedArguments(null, null, "beginner", null, scratch.Folder), practice: false);
    }

    private static void Check(Run whole, Run run, Failing failing, int at)
    {
        var what = $"{failing} at operation {at}";
        Assert.True(run.Disk.Failures > 0, what);
        Assert.True(run.Said == whole.Said, what);

        // The line whose write fails is the line that tells.
        Assert.True(run.TroubleAt == (at - 1) / 2, $"{what}: told at line {run.TroubleAt}");
        Assert.True(run.EndsInTrouble == (failing == Failing.ForGood || at > whole.Disk.Operations - 2), what);
        if (run.EndsInTrouble)
        {
            // What is on the disk is the beginning of the record, in whole lines but for a torn last one, which the next opening seals.
            Assert.True(whole.Record.StartsWith(run.Sealed, StringComparison.Ordinal) && run.Sealed.Split('\n').Length > at / 2, what);
        }
        else
        {
            Assert.True(run.Record == whole.Record, what);
        }
    }

    /// <summary>Lines heard with a disk that fails.</summary>
    private sealed class Run
    {
        public Run(string[] lines, int at, Failing failing)
        {
            using var scratch = new Scratch();
            var path = scratch["boil.jsonl"];
            using (var session = RecordedSession.New(Setting(), _ => JournalFile.Open(path, real => Disk = new FailingDisk(real, at, failing))))
            {
                var said = new List<string>();
                for (var index = 0; index < lines.Length; index++)
                {
                    said.AddRange(session.Hear(LineReader.Read(lines[index]), lines[index]).Select(LineWriter.Write));
                    TroubleAt = TroubleAt < 0 && session.Trouble is not null ? index : TroubleAt;
                }

                (Said, EndsInTrouble) = (string.Join('\n', said), session.Trouble is not null);
            }

            Record = File.ReadAllText(path);
            Sealed = Record[..(Record.LastIndexOf('\n') + 1)];
        }

        public FailingDisk Disk { get; private set; } = null!;

        public string Said { get; }

        public string Record { get; }

        public string Sealed { get; }

        public int TroubleAt { get; } = -1;

        public bool EndsInTrouble { get; }
    }
}
