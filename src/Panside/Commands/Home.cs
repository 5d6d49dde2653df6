using System.Globalization;

namespace Panside.Commands;

/// <summary>The folder where rigs, flows and sessions live.</summary>
internal sealed record Home(string Folder)
{
    /// <summary>The rig that is used unless another is named.</summary>
    public string RigFile => Path.Combine(Folder, "rig.yaml");

    /// <summary>The records.</summary>
    public string Sessions => Path.Combine(Folder, "sessions");

    /// <summary>The records of practice.</summary>
    public string Practice => Path.Combine(Folder, "practice");

    /// <summary>The folder given, or the one of the XDG base directories.</summary>
    public static Home Of(string? folder)
    {
        if (folder is not null)
        {
            return new(Path.GetFullPath(folder));
        }

        var data = Environment.GetEnvironmentVariable("XDG_DATA_HOME");
        if (string.IsNullOrEmpty(data) || !Path.IsPathRooted(data))
        {
            var user = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
            data = Path.Combine(user.Length > 0 ? user : Path.GetTempPath(), ".local", "share");
        }

        return new(Path.Combine(data, "panside"));
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
