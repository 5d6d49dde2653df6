using System.Diagnostics;
using System.Globalization;

namespace Panside.Tests.Terminals;

/// <summary>A program in a real terminal of a given size, typed at and looked at through tmux.</summary>
internal sealed class Tmux : IDisposable
{
    private readonly string _name = "panside-" + Guid.NewGuid().ToString("N")[..8];

    public Tmux(int columns, int rows, string command)
    {
        Run("-f", "/dev/null", "new-session", "-d", "-x", columns.ToString(), "-y", rows.ToString(), "-s", "boil", command);
    }

    /// <summary>Whether tmux is there; <c>.ci/run</c> installs it.</summary>
    public static bool IsThere { get; } = Has("tmux");

    /// <summary>Whether a program is there.</summary>
    public static bool Has(string program) =>
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(':').Any(folder => File.Exists(Path.Combine(folder, program)));

    public string Screen => Run("capture-pane", "-p", "-t", "boil");

    /// <summary>With its colors.</summary>
    public string Colored => Run("capture-pane", "-e", "-p", "-t", "boil");

    public void Letters(string text) => Run("send-keys", "-t", "boil", "-l", text);

    public void Type(string text)
    {
        Letters(text);
        Run("send-keys", "-t", "boil", "Enter");
    }

    public void Press(string key) => Run("send-keys", "-t", "boil", key);

    /// <summary>The program that the shell in this terminal runs.</summary>
    public int Child =>
        int.Parse(Output("ps", "-o", "pid=", "--ppid", Run("display-message", "-p", "-t", "boil", "#{pane_pid}").Trim()), CultureInfo.InvariantCulture);

    /// <summary>Sends a signal to the program that the shell in this terminal runs, and to no other.</summary>
    public void Signal(string name) => Output("kill", "-" + name, Child.ToString(CultureInfo.InvariantCulture));

    /// <summary>Hangs up: the terminal is gone.</summary>
    public void HangUp() => Run("kill-session", "-t", "boil");

    public void Resize(int columns, int rows) => Run("resize-window", "-t", "boil", "-x", $"{columns}", "-y", $"{rows}");

    public void Dispose() => Run("kill-server");

    /// <summary>Waits until something is so, or fails with what the screen shows.</summary>
    public void Wait(Func<bool> so, string what)
    {
        for (var tries = 0; tries < 400; tries++)
        {
            if (so())
            {
                return;
            }

            Thread.Sleep(50);
        }

        Assert.Fail($"Waited in vain for {what}. The screen:\n{Screen}");
    }

    private string Run(params string[] arguments) => Output("tmux", ["-L", _name, .. arguments]);

    private static string Output(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["TERM"] = "xterm-256color";

        // The tests of the screen turn the real terminal off for this process; the program in tmux must have it.
        start.Environment.Remove("DisableRealDriverIO");
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return output;
    }
}
