using System.CommandLine;
using Panside.Faces;
using Panside.Guide.Rigs.Making;
using Panside.Screen;

namespace Panside.Commands;

/// <summary><c>panside rig</c>: asks what this boiler is, and makes its rig file.</summary>
internal static class RigCommand
{
    /// <summary>The command with its options.</summary>
    public static Command Create()
    {
        var file = new Argument<string?>("FILE") { Description = "The file to make. Without it: rig.yaml in the home folder, which every boil uses unless another is named.", Arity = ArgumentArity.ZeroOrOne };
        var plain = new Option<bool>("--plain") { Description = "The questions as lines of text; chosen by itself without a terminal." };
        var home = new Option<string?>("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };
        var command = new Command("rig", "Asks what your boiler is, with pictures of what to measure, and makes its rig file: two minutes.") { file, plain, home };
        var looks = new LookOptions().AddTo(command);
        command.SetAction(parsed =>
        {
            var made = Make(parsed.GetValue(file), parsed.GetValue(home), parsed.GetValue(plain), looks.Read(parsed));
            foreach (var line in made.Told ?? [])
            {
                Console.Out.WriteLine(line);
            }

            return made.Status;
        });
        return command;
    }

    /// <summary>Asks, and writes the file once all is answered and said to be right.</summary>
    /// <param name="file">The file; null for the one in the home folder.</param>
    /// <param name="homeFolder">The home folder as named; null for the usual one.</param>
    /// <param name="plain">Whether lines of text are wanted.</param>
    /// <param name="look">How the full screen looks.</param>
    /// <returns>The exit status, and what came of it; null where something graver came between.</returns>
    public static (int Status, IReadOnlyList<string>? Told) Make(string? file, string? homeFolder, bool plain, ScreenLook look)
    {
        var place = new RigPlace(file ?? Home.Of(homeFolder).RigFile);
        if (Directory.Exists(place.Path))
        {
            throw new UnusableException($"{place.Path}: is a folder. Name a file in it, like {Path.Combine(place.Path, "rig.yaml")}.");
        }

        GivenFile.DemandToWrite(place.Path);
        var making = new RigMaking(place.Path, place.There, RigMeaning.Of);
        making.HearAgain(place.Answers());
        AskingFace.Run(making, plain, look);
        return making.End switch
        {
            RigMade.Written => (ExitStatus.Done, Write(place, making.Text, file, homeFolder)),
            RigMade.Stopped => (ExitStatus.Done, Keep(place, making)),
            RigMade.Emergency => (HomeCommand.Emergency(homeFolder, plain, look), null),
            _ => (ExitStatus.Interrupted, ["- Left before the end: nothing was written."]),
        };
    }

    private static IReadOnlyList<string> Keep(RigPlace place, RigMaking making)
    {
        if (making.Answered == 0)
        {
            return [];
        }

        place.Keep(making.Heard);
        return [$"- Stopped; {making.Answered} {(making.Answered == 1 ? "answer is" : "answers are")} kept. 'panside rig' goes on."];
    }

    private static IReadOnlyList<string> Write(RigPlace place, string text, string? file, string? homeFolder)
    {
        try
        {
            var before = place.Write(text);
            var with = file is not null ? $" --rig {place.Path}" : homeFolder is not null ? $" --home {homeFolder}" : "";
            return
            [
                $"- Written: {place.Path}",
                .. before is null ? Array.Empty<string>() : [$"- The one before it: {before}"],
                $"- Your next boil uses it: panside boil{with}",
            ];
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            // What was answered is not lost: a person can still save it.
            Console.Out.Write(text);
            throw new UnusableException($"{place.Path}: cannot be written ({fault.Message.TrimEnd('.')}). The file's text is above: save it elsewhere, and name it with --rig.");
        }
    }
}
