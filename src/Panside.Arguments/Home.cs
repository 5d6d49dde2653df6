using System.Globalization;

namespace Panside.Arguments;

/// <summary>The folder where rigs, flows and sessions live.</summary>
public sealed record Home(string Folder)
{
    /// <summary>The rig that is used unless another is named.</summary>
    public string RigFile => Path.Combine(Folder, "rig.yaml");

    /// <summary>The records.</summary>
    public string Sessions => Path.Combine(Folder, "sessions");

    /// <summary>The records of practice.</summary>
    public string Practice => Path.Combine(Folder, "practice");

    /// <summary>Where what is known of a fault of ours is kept, by the XDG base directories.</summary>
    public static string State => Path.Combine(Base("XDG_STATE_HOME", "state"), "panside");

    /// <summary>The folder given, or the one of the XDG base directories.</summary>
    public static Home Of(string? folder)
    {
        if (folder is not null)
        {
            return new(Path.GetFullPath(folder));
        }

        return new(Path.Combine(Base("XDG_DATA_HOME", "share"), "panside"));
    }

    private static string Base(string variable, string usual)
    {
        if (Environment.GetEnvironmentVariable(variable) is { Length: > 0 } named && Path.IsPathRooted(named))
        {
            return named;
        }

        var user = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return Path.Combine(user.Length > 0 ? user : Path.GetTempPath(), ".local", usual);
    }

    /// <summary>A free name for a record that begins at a time.</summary>
    public static string NewRecord(string folder, DateTimeOffset at)
    {
        var name = at.ToString("yyyy-MM-dd-HHmm", CultureInfo.InvariantCulture);
        var path = Path.Combine(folder, name + ".jsonl");
        for (var number = 2; File.Exists(path); number++)
        {
            path = Path.Combine(folder, $"{name}-{number}.jsonl");
        }

        return path;
    }
}
