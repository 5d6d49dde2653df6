using Panside.Guide.Knowledge;
using Panside.Guide.Lines;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Journal;
using Panside.Reckoning.Ensemble;

namespace Panside.Commands;

/// <summary>
/// What past boils have taught of a rig, kept in a file beside the rig's: <c>rig.yaml</c> has <c>rig.learned.yaml</c>. For the
/// built-in rig it lies in the home folder. A boil never fails for want of it.
/// </summary>
internal sealed class Learning
{
    /// <summary>With fewer readings of the tank than this, a boil teaches nothing that its rig's size does not say: no source.</summary>
    private const int LeastTankReadings = 3;

    /// <summary>With a shorter fire than this neither: no source.</summary>
    private const double LeastMinutes = 45;

    private readonly string _path;
    private readonly Func<Rig> _rigNow;

    private Learning(string path, Func<Rig> rigNow, LearnedRig? rig, string? notice) => (_path, _rigNow, Rig, Notice) = (path, rigNow, rig, notice);

    /// <summary>What a new session begins with; null where nothing was learned.</summary>
    public LearnedRig? Rig { get; }

    /// <summary>Why what was learned is left out, for a person; null where it is not.</summary>
    public string? Notice { get; }

    /// <summary>Opens what was learned of the rig that the arguments name.</summary>
    /// <param name="rigFile">The rig's file as named; null for the usual one.</param>
    /// <param name="home">The home folder.</param>
    /// <param name="forget">Whether to delete it first.</param>
    public static Learning Open(string? rigFile, Home home, bool forget = false)
    {
        var file = rigFile ?? (File.Exists(home.RigFile) ? home.RigFile : Path.Combine(home.Folder, Library.BuiltInRig));
        var path = Path.ChangeExtension(file, ".learned.yaml");
        Rig RigNow() => Library.Rig(rigFile, home);
        try
        {
            if (forget)
            {
                var was = File.Exists(path);
                File.Delete(path);
                return new(path, RigNow, null, was ? "Forgotten: what was learned of this rig." : "Nothing was learned of this rig yet.");
            }

            if (!File.Exists(path))
            {
                return new(path, RigNow, null, null);
            }

            var learned = LearnedFile.Read(path, File.ReadAllText(path));
            return learned.Mark == RigMark.Of(RigNow())
                ? new(path, RigNow, learned, null)
                : new(path, RigNow, null, $"The rig's file has changed since {learned.Date}: what {learned.Boils} boils taught is left out. This boil begins anew.");
        }
        catch (DirectoryNotFoundException)
        {
            return new(path, RigNow, null, null);
        }
        catch (FaultyFileException fault)
        {
            return new(path, RigNow, null, $"{fault.Faults[0]}. What was learned is left out; mend or delete the file.");
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return new(path, RigNow, null, $"{path}: cannot be read ({fault.Message.TrimEnd('.')}). What was learned is left out.");
        }
    }

    /// <summary>Keeps what a boil has taught, once it is over.</summary>
    /// <returns>A sentence for a person; null where the boil is not over, or was practice.</returns>
    public string? Keep(RecordedSession session)
    {
        var (state, setting) = (session.State, session.Setting);
        if (!state.IsOver || setting.Header.Practice || state.Now is not { } now)
        {
            return null;
        }

        if (!Teaches(state))
        {
            return $"Too little was read to learn of this rig: {LeastTankReadings} readings of the tank and {LeastMinutes:0} minutes of fire are wanted.";
        }

        try
        {
            // A boil that was gone on with may be of another rig than the one that is named now.
            if (RigMark.Of(_rigNow()) != RigMark.Of(setting.Rig))
            {
                return "This boil was of another rig than its file now describes: nothing is learned.";
            }
        }
        catch (Exception fault) when (fault is FaultyFileException or UnusableException)
        {
            return $"The rig's file cannot be read now: nothing is learned. {fault.Message.Split('\n')[0]}";
        }

        if (StandsAgainst(setting) is { } reason)
        {
            return reason;
        }

        var learned = LearnedFile.Write(setting.Rig, state.Rigs.Traits(), setting.Learned, now.Time);
        try
        {
            PrivateFile.Replace(_path, learned.Text);
            return $"Learned: {learned.Says(setting.Learned)} Kept in {_path}.";
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return $"What was learned cannot be kept ({fault.Message.TrimEnd('.')}). {learned.Says(setting.Learned)}";
        }
    }

    /// <summary>
    /// Why what is there already is left as it is; null where nothing is lost. A boil that did not begin with it holds less than
    /// it: put in its place, it would wipe the earlier boils out.
    /// </summary>
    private string? StandsAgainst(Setting setting)
    {
        try
        {
            if (!File.Exists(_path))
            {
                return null;
            }

            var there = LearnedFile.Read(_path, File.ReadAllText(_path));
            var isOfThisRig = there.Mark == RigMark.Of(setting.Rig);
            return !isOfThisRig || there.Text == setting.Learned?.Text
                ? null
                : $"Kept as it was: what {(there.Boils == 1 ? "1 boil" : $"{there.Boils} boils")} before taught of this rig, since this boil did not begin with it; without '--learn false' a boil begins with it and adds to it.";
        }
        catch (FaultyFileException fault)
        {
            return $"{fault.Faults[0]}. Nothing is learned while it stands there; mend or delete the file.";
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            return $"{_path}: cannot be read ({fault.Message.TrimEnd('.')}). Nothing is learned.";
        }
    }

    private static bool Teaches(SessionState state) =>
        state.Readings.TryGetValue(ReadingName.TankVolume, out var tank) && tank.Count >= LeastTankReadings
        && state.Last(DeedName.LitFire) is { } lit && state.Last(DeedName.AddWood) is { } wood
        && (wood.At.Time - lit.At.Time).TotalMinutes >= LeastMinutes;
}
