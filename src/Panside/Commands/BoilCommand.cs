using System.CommandLine;
using Panside.Faces;
using Panside.Journal;
using Panside.Screen;

namespace Panside.Commands;

/// <summary><c>panside boil</c>: guides a boil.</summary>
internal static class BoilCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var plain = new Option<bool>("--plain") { Description = "The conversation as lines of text; chosen by itself without a terminal." };
        var stream = new Option<bool>("--stream") { Description = "The conversation as JSON Lines, for programs." };
        var forget = new Option<bool>("--forget") { Description = "Forget what past boils taught of this rig, and begin from its file." };
        var learn = new Option<bool>("--learn") { Description = "Begin with what past boils taught of this rig; its forecasts of the shutdown are a little too sure (docs/learning.md). With --stream it also keeps what this boil teaches." };
        var say = SayOption.Create();
        var command = new Command("boil", "Guides a boil.") { plain, stream, forget, learn, say };
        var looks = new LookOptions().AddTo(command);
        var guided = new GuidedOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            var (isPlain, isStream) = (parsed.GetValue(plain), parsed.GetValue(stream));
            if (isPlain && isStream)
            {
                throw new UnusableException("--plain and --stream are two faces; choose one.");
            }

            if (isStream && parsed.GetValue(say) is not null)
            {
                throw new UnusableException("--say is for a person; with --stream the advice is in the lines.");
            }

            var (arguments, look) = (guided.Read(parsed), looks.Read(parsed));
            var unfinished = isStream || arguments.Journal is not null
                ? null
                : UnfinishedBoil.In(Home.Of(arguments.Home).Sessions, TimeProvider.System.GetUtcNow());
            var now = TimeProvider.System.GetUtcNow();
            if (unfinished is not null && !Console.IsInputRedirected && !Console.IsOutputRedirected)
            {
                // A person is asked first; a script is told, for its first line is an answer to something else.
                arguments = UnfinishedOffer.IsTaken(unfinished, now, Console.In, Console.Out) ? arguments with { Journal = unfinished } : arguments;
                unfinished = null;
            }

            var learning = Learning.Open(arguments.Rig, Home.Of(arguments.Home), parsed.GetValue(forget));
            var begun = arguments with { Learned = parsed.GetValue(learn) ? learning.Rig : null };
            if (!isStream)
            {
                using var session = Opening.Open(begun);
                var before = arguments.Journal is null ? Before(Home.Of(arguments.Home), session, now) : null;
                return Talk(session, learning, isPlain, unfinished, before, parsed.GetValue(say), look);
            }

            // The same lines in give a program the same lines out, whatever was boiled before: learning is for it to ask for.
            using var streamed = Opening.Open(begun);
            var status = StreamFace.Run(streamed, Console.OpenStandardInput(), Console.OpenStandardOutput(), Console.Error);
            if (parsed.GetValue(learn))
            {
                learning.Keep(streamed);
            }

            return status;
        });
        return command;
    }

    /// <summary>What is told before a new boil: what the last one left in the pan, else the offer to practise; null where there is nothing to tell.</summary>
    public static string? Before(Home home, RecordedSession session, DateTimeOffset now) =>
        LeftOver.Of(home, session.Setting, now) ?? RefresherOffer.Of(home, now);

    /// <summary>The conversation with a person: on the full screen where there is one and it is wanted, else in lines.</summary>
    public static int Talk(RecordedSession session, Learning learning, bool plain, string? unfinished = null, string? before = null, string? say = null, ScreenLook look = default)
    {
        var opening = string.Join(' ', new[] { learning.Notice, before }.OfType<string>());
        var notice = unfinished is not null ? $"{UnfinishedOffer.Told(unfinished, TimeProvider.System.GetUtcNow())}. To go on with it: panside boil --journal {unfinished}"
            : opening.Length > 0 ? opening : null;
        var status = SayOption.Spoken(say, new RecordedConversation(session) { Notice = notice }, conversation => Talk(session, plain, conversation, look));
        if (learning.Keep(session) is { } taught)
        {
            Console.Out.WriteLine($"- {taught}");
        }

        return status;
    }

    private static int Talk(RecordedSession session, bool plain, IConversation conversation, ScreenLook look)
    {
        if (!plain && FullScreenFace.IsThere)
        {
            return FullScreenFace.Run(session, conversation, TimeProvider.System, look);
        }

        using var interrupt = new Interrupt();
        new PlainFace(conversation, Console.In, Console.Out, Console.Error, TimeProvider.System).Run(interrupt.Token);
        return BoilEnd.Tell(session, Console.Out);
    }
}
