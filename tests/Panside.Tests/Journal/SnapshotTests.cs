using System.Diagnostics;
using Panside.Commands;
using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Sessions;
using Panside.Guide.Snapshots;
using Panside.Journal;
using Panside.Tests.Reporting;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>R1: a long session is gone on with at once from a snapshot beside the record, which is only a cache.</summary>
public class SnapshotTests
{
    private static readonly IReadOnlyList<string> Lines = [.. WholeBoil.Lines.Where(line => line.StartsWith('{'))];

    [Theory]
    [InlineData("first-shutdown")]
    [InlineData("long-boil")]
    [InlineData("float-stuck")]
    public void A_state_from_bytes_and_the_rest_are_the_state_of_all_lines_at_every_line(string demo)
    {
        var record = Record.Of(JournalFile.Read(Story.Demo(demo)));
        var setting = Opening.SettingOf(demo, record, null).With(64); // their bytes are of one kind, however many they are
        var (session, course) = (new Session(setting), new Course(setting));
        (Session Session, Course Course)? again = null;
        foreach (var exchange in record.Exchanges)
        {
            var answers = session.Hear(exchange.Line!);
            course.Hear(session.State, answers);
            var bytes = Bytes(session.State, course);
            if (again is { } from)
            {
                var same = from.Session.Hear(exchange.Line!);
                from.Course.Hear(from.Session.State, same);
                Assert.Equal(answers.Select(LineWriter.Write), same.Select(LineWriter.Write));
                Assert.True(bytes.AsSpan().SequenceEqual(Bytes(from.Session.State, from.Course)), $"line {exchange.LineNumber}");
                Assert.Equal(Debrief.Of(course, session.State, setting), Debrief.Of(from.Course, from.Session.State, setting));
            }

            using var stream = new MemoryStream(bytes);
            var (state, kept) = StateBytes.Read(stream, setting);
            Assert.Equal(stream.Length, stream.Position);
            again = (new(setting, state), kept);
        }
    }

    [Fact]
    public void What_went_unheard_is_in_its_bytes()
    {
        var record = Record.Of(JournalFile.Read(Story.Demo("first-shutdown")));
        var setting = Opening.SettingOf("first-shutdown", record, null).With(64);
        var session = new Session(setting);
        foreach (var exchange in record.Exchanges.Take(40))
        {
            session.Hear(exchange.Line!);
        }

        session.Hear(new Text(session.State.Now!.Value, "flames in the stove"));
        Assert.NotNull(session.State.Unheard);
        using var stream = new MemoryStream(Bytes(session.State, new Course(setting)));
        Assert.Equal(session.State.Unheard, StateBytes.Read(stream, setting).State.Unheard);
    }

    /// <summary>Whoever adds a property to the state writes and reads it in StateBytes, and counts it here.</summary>
    [Fact]
    public void Every_property_of_a_state_is_in_its_bytes()
    {
        Assert.Equal(44, typeof(SessionState).GetProperties().Count(property => property.SetMethod is not null));
        Assert.Equal(6, typeof(Totals).GetProperties().Count(property => property.SetMethod is not null));
    }

    [Fact]
    public void R1_a_record_is_gone_on_with_from_its_snapshot_and_the_answers_are_those_without()
    {
        for (var cut = 40; cut < Lines.Count - 1; cut += 9)
        {
            using var scratch = new Scratch();
            StreamRun.Of(Lines.Take(cut), scratch["boil.jsonl"]);
            Assert.True(File.Exists(Snapshot.PathOf(scratch["boil.jsonl"])));
            File.Copy(scratch["boil.jsonl"], scratch["bare.jsonl"]);
            Assert.Equal(StreamRun.Of(Lines.Skip(cut), scratch["bare.jsonl"]).Output, StreamRun.Of(Lines.Skip(cut), scratch["boil.jsonl"]).Output);
            Assert.Equal(File.ReadAllBytes(scratch["bare.jsonl"]), File.ReadAllBytes(scratch["boil.jsonl"]));
            Assert.Equal(0, Recorded.Verify(File.ReadAllBytes(scratch["boil.jsonl"])).Exit);
        }
    }

    [Fact]
    public void A_snapshot_counts_for_the_very_bytes_that_it_covers_the_very_setting_and_is_whole()
    {
        using var scratch = new Scratch();
        var path = scratch["boil.jsonl"];
        StreamRun.Of(Lines.Take(50), path);
        var (record, snapshot) = (File.ReadAllBytes(path), File.ReadAllBytes(Snapshot.PathOf(path)));
        var setting = Recorded.Setting(record);
        Assert.NotNull(Read(setting));

        File.WriteAllBytes(path, record.WithLine(20, line => line.Replace("e", "a", StringComparison.Ordinal)));
        Assert.Null(Read(setting));
        File.WriteAllBytes(path, record[..^1]);
        Assert.Null(Read(setting));
        File.WriteAllBytes(path, record);
        Assert.Null(Read(new(setting.Flow, setting.Rig, Guidance.Practised, setting.Header.Program)));
        Assert.Null(Read(new(setting.Flow, setting.Rig, setting.Guidance, "panside of another day")));

        var random = new Random(20310308);
        for (var round = 0; round < 200; round++)
        {
            var flipped = snapshot.ToArray();
            flipped[round < 100 ? random.Next(400) : random.Next(flipped.Length)] ^= (byte)(1 << random.Next(8));
            File.WriteAllBytes(Snapshot.PathOf(path), round % 3 == 0 ? flipped[..random.Next(flipped.Length)] : flipped);
            Assert.Null(Read(setting));
        }

        File.WriteAllBytes(Snapshot.PathOf(path), snapshot);
        Assert.NotNull(Read(setting));

        Snapshot? Read(Setting with)
        {
            using var journal = JournalFile.Open(path);
            return Snapshot.Read(journal, with);
        }
    }

    [Fact]
    public void A_boil_that_is_over_leaves_no_snapshot()
    {
        using var scratch = new Scratch();
        StreamRun.Of(WholeBoil.Lines, scratch["boil.jsonl"]);
        Assert.Equal(["boil.jsonl"], Directory.EnumerateFiles(scratch.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void R1_twenty_thousand_lines_are_gone_on_with_within_a_second_or_so()
    {
        using var scratch = new Scratch();
        var path = scratch["boil.jsonl"];
        StreamRun.Of(Lines.Take(Lines.Count - 4), path);
        var last = Record.Of(JournalFile.Read(path)).Exchanges[^1].Line!.At.Time;
        using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
        {
            // Of so long a night most lines are notes: they tell nothing new of the rig, and make the record long.
            for (var note = 1; Length(path) < 2_400_000; note++)
            {
                session.Hear(new Text(Moment.Of(last.AddSeconds(note)), "note " + new string('x', 2000)));
            }
        }

        var watch = Stopwatch.StartNew();
        using var again = Opening.Open(new(null, null, "beginner", path, scratch.Folder));

        // A second is the promise for the native build; here the code is not yet compiled, and other work goes on.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(3), $"{watch.Elapsed.TotalSeconds:F1} s");

        static long Length(string path) => new FileInfo(path).Length;
    }

    private static byte[] Bytes(SessionState state, Course course)
    {
        using var stream = new MemoryStream();
        StateBytes.Write(stream, state, course);
        return stream.ToArray();
    }
}
