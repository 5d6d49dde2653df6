using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Rigs;
using Panside.Journal;

namespace Panside.Commands;

/// <summary>Opens a session: a new one, or one that goes on from its record.</summary>
internal static class Opening
{
    /// <summary>Opens what the arguments say.</summary>
    /// <exception cref="UnusableException">The record cannot be gone on from.</exception>
    public static RecordedSession Open(GuidedArguments arguments, bool practice = false, Rig? rig = null)
    {
        var home = Home.Of(arguments.Home);
        if (arguments.Journal is { } named)
        {
            GivenFile.DemandToWrite(named);
        }

        if (arguments.Journal is { } path && File.Exists(path) && new FileInfo(path).Length > 0)
        {
            return GoOn(path, arguments);
        }

        var setting = SettingOf(arguments, practice, rig);
        var folder = practice ? home.Practice : home.Sessions;
        return RecordedSession.New(
            setting, at => OtherNames.OnDisk.Begin(arguments.Journal ?? Home.NewRecord(folder, at.Time)), arguments.Journal, near => OtherNames.OnDisk.Spare(near, folder),
            snapshots: !practice); // a simulated rig is not gone on with
    }

    /// <summary>What the arguments say that a new session runs on.</summary>
    /// <param name="arguments">The arguments.</param>
    /// <param name="practice">Whether the rig is simulated.</param>
    /// <param name="rig">The rig where the arguments name none; null for the one in the home folder, or the built-in one.</param>
    /// <exception cref="Guide.Yaml.FaultyFileException">A file has a fault, or the flow would keep somebody at this rig for ever.</exception>
    public static Setting SettingOf(GuidedArguments arguments, bool practice, Rig? rig = null)
    {
        var on = (arguments.Rig is null ? rig : null) ?? Library.Rig(arguments.Rig, Home.Of(arguments.Home));
        return new(Library.FlowFor(on, arguments.Flow), on, RigOptions.Meant(arguments.Guidance), Product.Name, practice, arguments.Learned, arguments.Imported);
    }

    /// <summary>What a record says that it ran on.</summary>
    public static Setting SettingOf(string path, Record record, string? flowFile) => RecordSetting.Of(path, record.Head, flowFile, null).Setting;

    /// <summary>A changed flow goes on only from a record on which it would have said the same: what was marked and asked is then its own.</summary>
    private static void RefuseOther(string path, JournalFile journal, Setting setting, string other)
    {
        LongRecordException.Demand(journal.Length);
        using var progress = new Progress("Comparing the flows on the record", Console.Error, TimeProvider.System);
        var first = ChangedFlow.FirstDifference(setting, new Exchanges().Of(journal.ReadLines(0, progress.Tell)));
        throw new UnusableException(other,
        [
            .. first is null ? ["It says the same on this record so far, but a record tells of one flow."] : ChangedFlow.Told(path, setting.Flow, first),
            "Name the flow that it was made with: --flow FILE. Or begin a new session with this one: name a new file with --journal; nothing is lost of this one.",
        ]);
    }

    private static RecordedSession GoOn(string path, GuidedArguments arguments)
    {
        var home = Home.Of(arguments.Home);
        var journal = OtherNames.OnDisk.GoOn(path, home.Sessions, out var elsewhere);
        try
        {
            var record = RecordSetting.Of(path, [.. journal.ReadLines().Take(Exchanges.HeadLines)], arguments.Flow, arguments, takesOther: true);
            var (setting, warning) = record;
            if (record.OtherFlow is { } other)
            {
                RefuseOther(path, journal, setting, other);
            }

            using var progress = new Progress("Hearing the record again", Console.Error, TimeProvider.System);
            var recorded = RecordedSession.On(setting, journal, near => OtherNames.OnDisk.Spare(near, home.Sessions), progress.Tell);
            if (recorded.State.IsOver)
            {
                throw new UnusableException($"{path}: this boil is over. Start another, or look at it with 'panside replay {path}'.");
            }

            recorded.Warn(warning);
            recorded.Warn(elsewhere);
            return recorded;
        }
        catch (LongRecordException fault)
        {
            journal.Dispose();
            throw new UnusableException($"{path}: {fault.Message}, and no boil waits for that. Name a new file with --journal; nothing is lost of this one.");
        }
        catch
        {
            journal.Dispose();
            throw;
        }
    }
}
