using Panside.Commands;
using Panside.Guide.Debriefing;
using Panside.Journal;
using Panside.Tests.Reporting;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Screen.Support;

/// <summary>A demo session, or the first part of it, as a past boil.</summary>
internal static class Demo
{
    private static readonly Lazy<PastBoil> Long = new(() => Past("long-boil").Boil());
    private static readonly OncePerCollection<string, PastBoil> Boils = new();

    /// <summary>The long boil, heard once for all tests of the collection of this name: they look at it one after the other, and none changes it.</summary>
    public const string LongBoil = "the long boil";

    /// <inheritdoc cref="LongBoil"/>
    public static PastBoil SharedLongBoil => Long.Value;

    /// <summary>Heard once for the tests of a collection; none of them changes it.</summary>
    public static PastBoil Boil(string name) => Boils.Of(name, () => Past(name).Boil());

    /// <summary>The first part of one.</summary>
    public static PastBoil Boil(string name, int exchanges) => Past(name, exchanges).Boil();

    public static PastSession Past(string name, int? exchanges = null)
    {
        var path = Story.Demo(name);
        var lines = JournalFile.Read(path);
        var record = Record.Of(lines);
        return new(
            path, () => exchanges is { } first ? lines.Take(record.Exchanges[first].LineNumber - 1) : lines, Opening.SettingOf(path, record, null));
    }
}
