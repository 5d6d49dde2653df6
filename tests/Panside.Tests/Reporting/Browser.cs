using System.Diagnostics;

namespace Panside.Tests.Reporting;

/// <summary>A real browser without a window. It may reach nothing but files: every name is mapped to nowhere.</summary>
internal static class Browser
{
    private static readonly string? Path = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':')
        .SelectMany(folder => new[] { System.IO.Path.Combine(folder, "chromium"), System.IO.Path.Combine(folder, "chromium-browser") })
        .FirstOrDefault(File.Exists);

    /// <summary>Whether it is there; <c>.ci/run</c> installs it.</summary>
    public static bool IsThere => Path is not null;

    /// <summary>Runs it on a file and gives what it writes to its output.</summary>
    public static string Run(string file, params string[] options)
    {
        using var scratch = new Scratch();
        var start = new ProcessStartInfo(
            Path!,
            [
                "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--host-resolver-rules=MAP * ~NOTFOUND", "--hide-scrollbars",
                "--virtual-time-budget=2000", $"--user-data-dir={scratch["browser"]}", .. options, $"file://{file}",
            ])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        var errors = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        Assert.True(process.WaitForExit(TimeSpan.FromMinutes(2)), "The browser did not end.");
        Assert.True(process.ExitCode == 0, errors.Result);
        return output;
    }
}
