using System.CommandLine;
using Panside.Faces;
using Panside.Journal;

namespace Panside.Commands;

/// <summary><c>panside boil</c>: guides a boil.</summary>
internal static class BoilCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var plain = new Option<bool>("--plain") { Description = "The conversation as lines of text; chosen by itself without a terminal." };
        var stream = new Option<bool>("--stream") { Description = "The conversation as JSON Lines, for programs." };
        var command = new Command("boil", "Guides a boil.") { plain, stream };
        var guided = new GuidedOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            var (isPlain, isStream) = (parsed.GetValue(plain), parsed.GetValue(stream));
            if (isPlain && isStream)
            {
                throw new UnusableException("--plain and --stream are two faces; choose one.");
            }

            var arguments = guided.Read(parsed);
            var unfinished = isStream || arguments.Journal is not null
                ? null
                : UnfinishedBoil.In(Home.Of(arguments.Home).Sessions, TimeProvider.System.GetUtcNow());
            using var session = Opening.Open(arguments);
            return isStream
                ? StreamFace.Run(session, Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.Error)
                : Talk(session, isPlain, unfinished);
        });
        return command;
    }

    /// <summary>The conversation with a person: on the full screen where there is one and it is wanted, else in lines.</summary>
    public static int Talk(RecordedSession session, bool plain, string? unfinished = null)
    {
        var conversation = new RecordedConversation(session)
        {
            Notice = unfinished is null ? null : $"An unfinished boil is there. To go on with it: panside boil --journal {unfinished}",
        };
        var screen = !plain && !Console.IsInputRedirected && !Console.IsOutputRedirected
            && Environment.GetEnvironmentVariable("TERM") is not ("dumb" or null or "");
        if (screen)
        {
            return FullScreenFace.Run(session, conversation, TimeProvider.System);
        }

        using var interrupt = new Interrupt();
        new PlainFace(conversation, Console.In, Console.Out, Console.Error, TimeProvider.System).Run(interrupt.Token);
        return BoilEnd.Tell(session, Console.Out);
    }
}
