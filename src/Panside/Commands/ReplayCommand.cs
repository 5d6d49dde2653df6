using System.CommandLine;
using Panside.Faces;
using Panside.Journal;

namespace Panside.Commands;

/// <summary><c>panside replay</c>: plays a past session.</summary>
internal static class ReplayCommand
{
    private const double DefaultSpeed = 60;

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The session's record." };
        var plain = new Option<bool>("--plain") { Description = "Print it as lines of text; at once, unless a speed is named." };
        var speed = new Option<double?>("--speed") { Description = $"Play at N times real time; {DefaultSpeed} unless said.", HelpName = "N" };
        var to = new Option<string?>("--to") { Description = "Stop at a time: 17:05, or 2031-03-08T17:05:00-05:00.", HelpName = "TIME" };
        var verify = new Option<bool>("--verify") { Description = "Run the record through the assistant again; the first difference ends with status 1." };
        var flow = new Option<string?>("--flow") { Description = "The flow that it was made with. Without it: the built-in flow for a divided pan.", HelpName = "FILE" };
        var command = new Command("replay", "Plays a past session.") { file, plain, speed, to, verify, flow };
        command.SetAction(parsed =>
        {
            var (path, times, until) = (parsed.GetValue(file)!, parsed.GetValue(speed), parsed.GetValue(to));
            if (parsed.GetValue(verify) && (parsed.GetValue(plain) || times is not null || until is not null))
            {
                throw new UnusableException("--verify shows nothing of the session; leave out --plain, --speed and --to.");
            }

            if (times is not null and not (>= 0.25 and <= 3600))
            {
                throw new UnusableException($"--speed is {times}. Expected 0.25 to 3600 times real time.");
            }

            var record = Record.Of(RecordBytes.Lines(GivenFile.Read(path)));
            var session = new PastSession(path, record, Opening.SettingOf(path, record, parsed.GetValue(flow)));
            if (parsed.GetValue(verify))
            {
                return session.Verify(Console.Out, Console.Error);
            }

            var atOnce = parsed.GetValue(plain) || Console.IsOutputRedirected;
            using var interrupt = new Interrupt();
            return new Player(Console.Out, Console.Error, TimeProvider.System)
                .Play(session, times ?? (atOnce ? null : DefaultSpeed), until, interrupt.Token);
        });
        return command;
    }
}
