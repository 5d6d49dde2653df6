using Panside.Guide.Flows;
using Panside.Guide.Rigs;
using Panside.Guide.Sessions;
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
        if (arguments.Journal is { } path && File.Exists(path) && new FileInfo(path).Length > 0)
        {
            return GoOn(path, arguments);
        }

        var setting = SettingOf(arguments, practice, rig);
        var folder = practice ? home.Practice : home.Sessions;
        return RecordedSession.New(setting, at => Begin(arguments.Journal ?? Home.NewRecord(folder, at.Time)));
    }

    /// <summary>What the arguments say that a new session runs on.</summary>
    /// <param name="arguments">The arguments.</param>
    /// <param name="practice">Whether the rig is simulated.</param>
    /// <param name="rig">The rig where the arguments name none; null for the one in the home folder, or the built-in one.</param>
    public static Setting SettingOf(GuidedArguments arguments, bool practice, Rig? rig = null) => new(
        Library.Flow(arguments.Flow), (arguments.Rig is null ? rig : null) ?? Library.Rig(arguments.Rig, Home.Of(arguments.Home)), RigOptions.Meant(arguments.Guidance), Product.Name, practice, arguments.Learned, arguments.Imported);

    /// <summary>Begins a record; between the look at its name and the first line another program may have begun the same.</summary>
    private static JournalFile Begin(string path)
    {
        var journal = JournalFile.Open(path);
        if (journal.Lines.Count == 0)
        {
            return journal;
        }

        journal.Dispose();
        throw new UnusableException($"{path}: another panside has begun this record meanwhile. Start again to go on with it, or name another file.");
    }

    /// <summary>What boil number so many is judged on: the rig named, or the two built-in ones in turn; both guidances in turn.</summary>
    public static Setting SettingToJudge(GuidedArguments arguments, int boil, Rig? wanted = null)
    {
        var rig = arguments.Rig is null && wanted is not null ? wanted : arguments.Rig is null
            ? RigFile.Read("built-in", Library.BuiltIn(boil % 2 == 0 ? "rigs/two-by-four-natural.yaml" : "rigs/two-by-four-forced.yaml"))
            : Library.Rig(arguments.Rig, Home.Of(arguments.Home));
        return new(
            Library.Flow(arguments.Flow), rig, boil / 2 % 2 == 0 ? Guidance.Beginner : Guidance.Practised, Product.Name, practice: true, arguments.Learned);
    }

    /// <summary>What a record says that it ran on.</summary>
    public static Setting SettingOf(string path, Record record, string? flowFile)
    {
        if (record.Header is not { } header)
        {
            throw new UnusableException($"{path}:1:1: no session line was found, expected the record of a boil. Name another file, or a new one.");
        }

        var flow = Library.Flow(flowFile);
        if (flow.Hash != header.FlowHash)
        {
            throw new UnusableException(
                $"{path}: was made with the flow '{header.Flow}' ({header.FlowHash}); this one is '{flow.Name}' ({flow.Hash}). Name the flow it was made with: --flow FILE.");
        }

        var guidance = RigOptions.Meant(header.Guidance);
        var learned = header.LearnedText is { } text ? LearnedFile.Read($"{path} (learned-file)", text) : null;
        return new(flow, RigFile.Read($"{path} (rig)", header.RigText), guidance, header.Program, header.Practice, learned, header.Imported);
    }

    private static RecordedSession GoOn(string path, GuidedArguments arguments)
    {
        JournalFile journal;
        try
        {
            journal = JournalFile.Open(path);
        }
        catch (IOException fault)
        {
            throw new UnusableException($"{path}: cannot be opened for writing ({fault.Message.TrimEnd('.')}). Is another panside going on with it?");
        }

        try
        {
            var recorded = RecordedSession.On(SettingOf(path, Record.Of(journal.Lines), arguments.Flow), journal);
            if (recorded.State.IsOver)
            {
                throw new UnusableException($"{path}: this boil is over. Start another, or look at it with 'panside replay {path}'.");
            }

            return recorded;
        }
        catch
        {
            journal.Dispose();
            throw;
        }
    }
}
