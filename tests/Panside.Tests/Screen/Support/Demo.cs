using Panside.Commands;
using Panside.Guide.Debriefing;
using Panside.Journal;
using Panside.Tests.Reporting;
using Record = Panside.Journal.Record;

namespace Panside.Tests.Screen.Support;

/// <summary>A demo session, or the first part of it, as a past boil.</summary>
internal static class Demo
{
    public static PastBoil Boil(string name, int? exchanges = null) => Past(name, exchanges).Boil();

    public static PastSession Past(string name, int? exchanges = null)
    {
        var path = Story.Demo(name);
        var record = Record.Of(JournalFile.Read(path));
        return new(
            path, exchanges is { } first ? record with { Exchanges = [.. record.Exchanges.Take(first)] } : record,
            Opening.SettingOf(path, record, null));
    }
}
