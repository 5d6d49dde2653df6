using System.Collections.Concurrent;
using System.Text;
using Panside.Commands;
using Panside.Guide.Knowledge;
using Panside.Guide.Sessions;
using Panside.Journal;
using Panside.Tests.Stream;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Records;

/// <summary>The record of an invented boil, as bytes to damage, and a session that is brought through one again.</summary>
internal static class Recorded
{
    private static readonly ConcurrentDictionary<(int LinesIn, int? Members), Lazy<byte[]>> Boils = new();

    /// <summary>The first lines in of the whole boil, with a note in letters of several bytes; said once for all tests.</summary>
    /// <param name="linesIn">How many.</param>
    /// <param name="members">So many possible rigs, where the record is heard again with as few; null for as many as the program has.</param>
    public static byte[] Boil(int linesIn = 20, int? members = null) =>
        [.. Boils.GetOrAdd((linesIn, members), _ => new(() => Said(linesIn, members))).Value];

    private static byte[] Said(int linesIn, int? members)
    {
        using var scratch = new Scratch();
        string[] lines = [.. WholeBoil.Lines.Take(1), StreamRun.At(0, "\"text\":\"note sève trouble, ½ 🍁\""), .. WholeBoil.Lines.Skip(1).Take(linesIn)];
        _ = members is { } few ? StreamRun.Of(lines, scratch["boil.jsonl"], few) : StreamRun.Of(lines, scratch["boil.jsonl"]);
        return File.ReadAllBytes(scratch["boil.jsonl"]);
    }

    public static PastSession Past(byte[] bytes) => new("boil.jsonl", () => RecordBytes.Lines(bytes), Setting(bytes));

    public static Setting Setting(byte[] bytes) => Opening.SettingOf("boil.jsonl", Record.Of(RecordBytes.Lines(bytes)), null);

    public static (int Exit, string Said, string Errors) Verify(byte[] bytes)
    {
        using var output = new StringWriter { NewLine = "\n" };
        using var errors = new StringWriter { NewLine = "\n" };
        return (Past(bytes).Verify(output, errors), output.ToString(), errors.ToString());
    }

    public static byte[] Bytes(this string text) => Encoding.UTF8.GetBytes(text);

    public static string Text(this byte[] bytes) => Encoding.UTF8.GetString(bytes);

    public static string[] Lines(this byte[] bytes) => bytes.Text().TrimEnd('\n').Split('\n');

    /// <summary>The record with one line (from 1) changed.</summary>
    public static byte[] WithLine(this byte[] bytes, int number, Func<string, string> change)
    {
        var lines = bytes.Lines();
        lines[number - 1] = change(lines[number - 1]);
        return (string.Join('\n', lines) + "\n").Bytes();
    }
}
