using System.CommandLine;
using Panside.Faces;
using Panside.Guide.Rigs;
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
        var learn = new Option<bool?>("--learn") { Description = "Whether to begin with what past boils taught of this rig: yes, unless false is said. With --stream only if asked for; then what this boil teaches is kept as well.", HelpName = "true|false" };
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
            if (!isStream)
            {
                var unfinished = arguments.Journal is null ? UnfinishedBoil.Of(Home.Of(arguments.Home).Sessions, TimeProvider.System.GetUtcNow()) : null;
                if (unfinished is { IsOffered: true } && !Console.IsInputRedirected && !Console.IsOutputRedirected)
                {
                    // A person is asked first; a script is told, for its first line is an answer to something else.
                    arguments = UnfinishedOffer.IsTaken(unfinished, Console.In, Console.Out) ? arguments with { Journal = unfinished.Path } : arguments;
                    unfinished = null;
                }

                return Guide(
                    arguments, new(isPlain, look, parsed.GetValue(say)), unfinished is { IsLast: true } ? unfinished : null,
                    parsed.GetValue(forget), parsed.GetValue(learn) ?? true);
            }

            var learning = Learning.Open(arguments.Rig, Home.Of(arguments.Home), parsed.GetValue(forget));

            // The same lines in give a program the same lines out, whatever was boiled before: learning is for it to ask for.
            using var streamed = Opening.Open(arguments with { Learned = parsed.GetValue(learn) == true ? learning.Rig : null });
            var status = StreamFace.Run(streamed, StandardStreams.Input, StandardStreams.Output, Console.Error);
            if (parsed.GetValue(learn) == true)
            {
                learning.Keep(streamed);
            }

            return status;
        });
        return command;
    }

    /// <summary>Guides a person through a boil, a new one or one that is gone on with.</summary>
    /// <param name="arguments">On what.</param>
    /// <param name="face">How it is shown.</param>
    /// <param name="unfinished">A boil that was left and is not gone on with, to be told; null for none.</param>
    /// <param name="forget">Whether what past boils taught of the rig is forgotten first.</param>
    /// <param name="learn">Whether to begin with what they taught.</param>
    /// <param name="rig">The rig where the arguments name none; null for the person's own, or the built-in one.</param>
    /// <returns>The exit status.</returns>
    public static int Guide(GuidedArguments arguments, BoilFace face, UnfinishedBoil? unfinished = null, bool forget = false, bool learn = true, Rig? rig = null)
    {
        var home = Home.Of(arguments.Home);
        var learning = Learning.Open(arguments.Rig, home, forget);
        var begun = learn && !File.Exists(arguments.Journal) ? learning.Rig : null;
        using var session = Opening.Open(arguments with { Learned = learn ? learning.Rig : null }, rig: rig);
        var isNew = arguments.Journal is null && face.First is null;
        string?[] told =
        [
            unfinished is null ? null : $"{UnfinishedOffer.Told(unfinished)}. To go on with it: panside boil --journal {unfinished.Path}",
            learning.Notice,
            begun?.Says(null),
            isNew ? LeftOver.Of(home, session.Setting, TimeProvider.System.GetUtcNow()) ?? RefresherOffer.Of(home, TimeProvider.System.GetUtcNow()) : null,
            isNew && arguments.Rig is null && !File.Exists(home.RigFile) ? "No rig file of yours: a rig of 2 ft by 4 ft is assumed. 'panside rig' asks for yours." : null,
        ];
        var notice = string.Join(' ', told.OfType<string>());
        var conversation = new RecordedConversation(session) { Notice = notice.Length > 0 ? notice : null, First = face.First };
        var status = SayOption.Spoken(face.Say, conversation, spoken => Talk(session, face, spoken));
        if (learning.Keep(session) is { } taught)
        {
            Console.Out.WriteLine($"- {taught}");
        }

        return status;
    }

    private static int Talk(RecordedSession session, BoilFace face, IConversation conversation)
    {
        if (!face.Plain && FullScreenFace.IsThere)
        {
            return FullScreenFace.Run(session, conversation, TimeProvider.System, face.Look);
        }

        using var interrupt = new Interrupt();
        new PlainFace(conversation, Console.In, Console.Out, Console.Error, TimeProvider.System).Run(interrupt.Token);
        return BoilEnd.Tell(session, Console.Out);
    }
}

/// <summary>How a boil is shown to a person.</summary>
/// <param name="Plain">As lines of text.</param>
/// <param name="Look">How the full screen looks.</param>
/// <param name="Say">Also spoken, by this command; null for none.</param>
/// <param name="First">Said at once, as if a person had typed it; null for nothing.</param>
internal sealed record BoilFace(bool Plain, ScreenLook Look = default, string? Say = null, string? First = null);
