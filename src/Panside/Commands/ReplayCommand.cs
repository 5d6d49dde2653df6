using System.CommandLine;
using Panside.Faces;
using Panside.Guide.Debriefing;
using Panside.Screen;
using Panside.Screen.Replaying;

namespace Panside.Commands;

/// <summary><c>panside replay</c>: plays a past session.</summary>
internal static class ReplayCommand
{
    private const double DefaultSpeed = 60;
    private const double DefaultScreenSpeed = 16;

    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string>("FILE") { Description = "The session's record." };
        var plain = new Option<bool>("--plain") { Description = "Print it as lines of text; at once, unless a speed is named." };
        var speed = new Option<double?>("--speed") { Description = $"Play at N times real time. On the screen {ReplaySpeed.Slowest} to {ReplaySpeed.Fastest}, {DefaultScreenSpeed} unless said.", HelpName = "N" };
        var from = new Option<string?>("--from") { Description = "Begin at a time: 17:05, or 2031-03-08T17:05:00-05:00.", HelpName = "TIME" };
        var to = new Option<string?>("--to") { Description = "Stop at a time. On the screen without --from: open there.", HelpName = "TIME" };
        var moments = new Option<bool>("--moments") { Description = "Print its alarms and draws only, each with what was forecast then beside what came." };
        var verify = new Option<bool>("--verify") { Description = "Run the record through the assistant again; the first difference ends with status 1. With another --flow: tells where that one says otherwise." };
        var flow = new Option<string?>("--flow") { Description = "The flow that it was made with. Without it: the built-in flow for a divided pan.", HelpName = "FILE" };
        var command = new Command("replay", "Plays a past session. Nothing is written to its record.") { file, plain, speed, from, to, moments, verify, flow };
        var looks = new LookOptions().AddTo(command);
        command.SetAction(parsed => Run(
            new(
                parsed.GetValue(file)!, parsed.GetValue(plain), parsed.GetValue(speed), parsed.GetValue(from), parsed.GetValue(to),
                parsed.GetValue(moments), parsed.GetValue(verify), looks.Read(parsed)),
            parsed.GetValue(flow)));
        return command;
    }

    private static int Run(Arguments asked, string? flow)
    {
        if (asked.Verify && (asked.Plain || asked.Moments || asked.Speed is not null || asked.From is not null || asked.To is not null))
        {
            throw new UnusableException("--verify shows nothing of the session; leave out --plain, --moments, --speed, --from and --to.");
        }

        if (asked.Moments && asked.Speed is not null)
        {
            throw new UnusableException("--moments are printed at once; leave out --speed.");
        }

        if (asked.Speed is not null and not (>= 0.25 and <= 3600))
        {
            throw new UnusableException($"--speed is {asked.Speed}. Expected 0.25 to 3600 times real time.");
        }

        if (asked.Moments || (!asked.Plain && !asked.Verify && FullScreenFace.IsThere))
        {
            GivenFile.DemandToHear(asked.Path);
        }

        using var progress = new Progress("Reading the record", Console.Error, TimeProvider.System);
        var isPaced = asked.Speed is not null || (!asked.Verify && !asked.Moments && !asked.Plain);
        var record = RecordSetting.Told(asked.Path, flow, Console.Error, takesOther: asked.Verify && flow is not null);
        var session = new PastSession(
            asked.Path, () => GivenFile.Lines(asked.Path, isPaced && !FullScreenFace.IsThere ? null : progress.Tell), record.Setting);
        if (asked.Verify)
        {
            return session.Verify(Console.Out, Console.Error, record.OtherFlow);
        }

        if (asked.Moments)
        {
            foreach (var line in PastMoments.Of(Boil(session, asked.Path), Player.Minute(asked.Begin(session)), asked.End(session)))
            {
                Console.Out.WriteLine(line);
            }

            return ExitStatus.Done;
        }

        return !asked.Plain && FullScreenFace.IsThere ? OnScreen(session, asked) : InLines(session, asked);
    }

    private static int OnScreen(PastSession session, Arguments asked)
    {
        var speed = asked.Speed ?? DefaultScreenSpeed;
        if (!ReplaySpeed.IsOne(speed))
        {
            throw new UnusableException($"--speed is {speed}. On the screen expected {ReplaySpeed.Slowest} to {ReplaySpeed.Fastest}; faster in lines, with --plain.");
        }

        var boil = Boil(session, asked.Path);
        var start = new ReplayStart(speed, Player.Minute(asked.Begin(session)), asked.End(session), session.Notice);
        return GuardedConsole.Lifted(() =>
        {
            FullScreen.Replay(boil, start, TimeProvider.System, ExitStatus.Interrupted, asked.Look);
            return ExitStatus.Done;
        });
    }

    private static int InLines(PastSession session, Arguments asked)
    {
        var atOnce = asked.Plain || Console.IsOutputRedirected;
        using var interrupt = new Interrupt();
        return new Player(Console.Out, Console.Error, TimeProvider.System)
            .Play(session, asked.Speed ?? (atOnce ? null : DefaultSpeed), asked.From, asked.To, interrupt.Token);
    }

    private static PastBoil Boil(PastSession session, string path) =>
        session.Boil() is { Exchanges.Count: > 0 } boil ? boil : throw new UnusableException($"{path}: the record holds no line with a time. 'panside check {path}' tells more.");

    private sealed record Arguments(string Path, bool Plain, double? Speed, string? From, string? To, bool Moments, bool Verify, ScreenLook Look)
    {
        public DateTimeOffset? Begin(PastSession session) => Player.TimeOf("--from", From, session.Start);

        public DateTimeOffset? End(PastSession session) => Player.TimeOf("--to", To, session.Start);
    }
}
