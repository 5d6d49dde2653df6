using System.Numerics;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;
using Panside.Guide.Debriefing;
using Panside.Guide.Knowledge;
using Panside.Guide.Sessions;
using Panside.Guide.Snapshots;
using Panside.Reckoning.Ensemble;

namespace Panside.Journal;

/// <summary>
/// What was known after a part of a record, in a file beside it: only a cache, so that a long session is gone on with at once. It
/// counts for the very bytes that it covers, the very program and the very setting; on any doubt it is thrown away, and the record
/// is heard again.
/// </summary>
/// <param name="Covered">The bytes of the record that it stands for.</param>
/// <param name="Lines">The lines in them.</param>
/// <param name="Damaged">The numbers of damaged lines among them.</param>
/// <param name="DiffersAt">The first line that was answered otherwise; null where none was.</param>
/// <param name="State">What was known after them.</param>
/// <param name="Course">What the debrief keeps.</param>
internal sealed record Snapshot(long Covered, int Lines, IReadOnlyList<int> Damaged, int? DiffersAt, SessionState State, Course Course)
{
    private const int HashBytes = 32;

    /// <summary>A file that is larger is none of ours.</summary>
    private const long LongestFile = 256 * 1024 * 1024;

    /// <summary>The name of the file beside a record.</summary>
    public static string PathOf(string record) => record + ".snapshot";

    /// <summary>Reads the one beside a record; null where there is none, or it is in doubt.</summary>
    /// <param name="journal">The record.</param>
    /// <param name="setting">What the session runs on.</param>
    public static Snapshot? Read(JournalFile journal, Setting setting)
    {
        try
        {
            var file = new FileInfo(PathOf(journal.Path));
            if (!file.Exists || file.Length is < 4 * HashBytes or > LongestFile)
            {
                return null;
            }

            var bytes = File.ReadAllBytes(file.FullName);
            var body = bytes.AsSpan(0, bytes.Length - HashBytes);
            if (!SHA256.HashData(body).AsSpan().SequenceEqual(bytes.AsSpan(body.Length)))
            {
                return null;
            }

            using var stream = new MemoryStream(bytes, 0, body.Length);
            using var from = new BinaryReader(stream);
            if (!from.ReadBytes(HashBytes).AsSpan().SequenceEqual(KeyOf(setting)))
            {
                return null;
            }

            var (covered, hash) = (from.ReadInt64(), from.ReadBytes(HashBytes));
            if (covered > journal.Length || !journal.HashOf(covered).AsSpan().SequenceEqual(hash))
            {
                return null;
            }

            var lines = from.ReadInt32();
            var damaged = Enumerable.Range(0, from.ReadInt32()).Select(_ => from.ReadInt32()).ToList();
            var differs = from.ReadInt32();
            var (state, course) = StateBytes.Read(stream, setting);
            return new(covered, lines, damaged, differs > 0 ? differs : null, state, course);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or InvalidDataException or ArgumentException or FormatException)
        {
            return null;
        }
    }

    /// <summary>Puts it beside the record, whole or not at all. Where that cannot be, there is none.</summary>
    /// <param name="journal">The record.</param>
    /// <param name="setting">What the session runs on.</param>
    public void Write(JournalFile journal, Setting setting)
    {
        var path = PathOf(journal.Path);
        try
        {
            using var stream = new MemoryStream();
            using (var to = new BinaryWriter(stream, Encoding.UTF8, leaveOpen: true))
            {
                to.Write(KeyOf(setting));
                to.Write(Covered);
                to.Write(journal.HashOf(Covered));
                to.Write(Lines);
                to.Write(Damaged.Count);
                foreach (var number in Damaged)
                {
                    to.Write(number);
                }

                to.Write(DiffersAt ?? 0);
            }

            StateBytes.Write(stream, State, Course);
            stream.Write(SHA256.HashData(stream.GetBuffer().AsSpan(0, (int)stream.Length)));
            Delete(path + ".new");
            using (var file = PrivateFile.Open(path + ".new", FileMode.CreateNew, FileAccess.Write))
            {
                stream.WriteTo(file);
            }

            File.Move(path + ".new", path, overwrite: true);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Delete(path + ".new");
        }
    }

    /// <summary>Takes away what stands beside a record: of a boil that is over nobody goes on.</summary>
    public static void Discard(string record) => Delete(PathOf(record));

    private static void Delete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // A cache that stays is checked when it is read.
        }
    }

    /// <summary>What must be the very same: the code, the machine's way of reckoning, and all that the session runs on.</summary>
    private static byte[] KeyOf(Setting setting)
    {
        var header = setting.Header;
        string[] parts =
        [
            "panside snapshot 2", header.Program, header.Flow, header.FlowHash, header.Rig, header.RigText, header.Guidance, header.LearnedText ?? "-",
            $"{header.Practice} {header.Imported}", setting.Flow.Hash,
            typeof(Snapshot).Module.ModuleVersionId.ToString(), typeof(Session).Module.ModuleVersionId.ToString(), typeof(RigEnsemble).Module.ModuleVersionId.ToString(),
            RuntimeInformation.RuntimeIdentifier, RuntimeInformation.FrameworkDescription, $"{Vector<double>.Count}",
        ];
        return SHA256.HashData(Encoding.UTF8.GetBytes(string.Join('\0', parts)));
    }
}
