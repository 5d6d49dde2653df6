using System.Text.Json;
using Panside.Commands;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>A record that a power cut has cut off anywhere.</summary>
public class TornRecordTests
{
    /// <summary>Up to how many bytes each cut is tried, and each how many-eth beyond; all of them where there is time.</summary>
    private static readonly (int Every, int Each) Cuts = Thorough.IsAsked ? (64 * 1024, 1) : (6 * 1024, 13);

    private const string Next = """{"at":"2031-03-08T23:00:00-05:00","tick":true}""";

    [Fact]
    public void R2_a_record_cut_off_at_any_byte_keeps_all_whole_lines_and_nothing_is_glued_to_the_torn_one()
    {
        var boil = Recorded.Boil(200);
        var bytes = boil[..int.Min(boil.Length, 64 * 1024)];
        var lines = bytes.Lines();
        using var scratch = new MemoryFolder();
        var path = scratch["boil.jsonl"];
        var whole = 0;
        for (var cut = 0; cut <= bytes.Length; cut++)
        {
            whole += cut > 0 && bytes[cut - 1] == (byte)'\n' ? 1 : 0;
            if (cut > Cuts.Every && cut % Cuts.Each != 0)
            {
                continue;
            }

            var isTorn = cut > 0 && bytes[cut - 1] != (byte)'\n';
            File.WriteAllBytes(path, bytes.AsSpan(0, cut));
            using (var journal = JournalFile.Open(path))
            {
                Assert.Equal(isTorn, journal.WasTorn);
                journal.Append([Next]);
            }

            var read = JournalFile.Read(path);
            Assert.True(
                read.Count == whole + (isTorn ? 2 : 1) && read[^1] == Next && read.Take(whole).SequenceEqual(lines.Take(whole))
                && (!isTorn || lines[whole].StartsWith(read[whole], StringComparison.Ordinal)),
                $"cut after byte {cut}");
        }
    }

    [Fact]
    public void R2_a_boil_goes_on_from_a_record_cut_off_anywhere_and_the_record_agrees_with_itself()
    {
        var bytes = Recorded.Boil();
        var first = Array.IndexOf(bytes, (byte)'\n', Array.IndexOf(bytes, (byte)'\n') + 1) + 1;
        using var scratch = new MemoryFolder();
        var path = scratch["boil.jsonl"];
        for (var cut = first; cut <= bytes.Length; cut += Thorough.IsAsked ? 97 : 389)
        {
            File.WriteAllBytes(path, bytes.AsSpan(0, cut));
            using (var session = Opening.Open(new(null, null, "beginner", path, scratch.Folder)))
            {
                session.Hear(LineReader.Read(Next), Next);
            }

            var after = File.ReadAllBytes(path);
            var (exit, said, _) = Recorded.Verify(after);
            Assert.True(exit == 0, $"cut after byte {cut}: {said}");
            var numbers = JournalFile.Read(path).Select(Number).OfType<int>().ToList();
            Assert.Equal(Enumerable.Range(1, numbers.Count), numbers);
        }
    }

    [Fact]
    public void A_record_whose_last_line_only_lacks_its_line_break_is_whole()
    {
        var bytes = Recorded.Boil();
        var record = Record.Of(RecordBytes.Lines(bytes.AsSpan(0, bytes.Length - 1)));
        Assert.Empty(record.Damaged);
        Assert.All(record.Exchanges, exchange => Assert.True(exchange.IsComplete));
    }

    private static int? Number(string line)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return document.RootElement.TryGetProperty("seq", out var number) ? number.GetInt32() : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    /// <summary>A folder in memory where there is one: the test flushes tens of thousands of times.</summary>
    private sealed class MemoryFolder : IDisposable
    {
        public string Folder { get; } = Directory.Exists("/dev/shm")
            ? Directory.CreateDirectory($"/dev/shm/panside-test-{Guid.NewGuid():N}").FullName
            : Directory.CreateTempSubdirectory("panside-test-").FullName;

        public string this[string name] => Path.Combine(Folder, name);

        public void Dispose() => Directory.Delete(Folder, recursive: true);
    }
}
