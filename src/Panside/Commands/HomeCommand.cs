using Panside.Faces;
using Panside.Guide.Rigs;
using Panside.Guide.Yaml;
using Panside.Reporting;
using Panside.Screen;

namespace Panside.Commands;

/// <summary><c>panside</c> alone: the home screen, and then what was chosen there; without a terminal it shows the help.</summary>
internal static class HomeCommand
{
    /// <summary>Runs it.</summary>
    /// <param name="homeFolder">The home folder as named; null for the usual one.</param>
    /// <param name="plain">Whether lines of text are wanted.</param>
    /// <param name="look">How the full screen looks.</param>
    public static int Run(string? homeFolder, bool plain, ScreenLook look)
    {
        if (!plain && (Console.IsInputRedirected || Console.IsOutputRedirected))
        {
            return CommandLine.Run(["--help"]);
        }

        IReadOnlyList<string> opening = [];
        while (true)
        {
            var asking = new HomeAsking(HomeSight.Of(Home.Of(homeFolder), TimeProvider.System.GetUtcNow()), opening);
            AskingFace.Run(asking, plain, look);
            if (asking.Chosen == HomeChoice.Season)
            {
                var sessions = Home.Of(homeFolder).Sessions;
                opening = Directory.Exists(sessions) ? SeasonLines.Of(SeasonBook.Of(sessions, practice: false)) : SeasonLines.Empty;
                continue;
            }

            if (asking.Chosen != HomeChoice.Rig)
            {
                return Follow(asking.Chosen ?? HomeChoice.Leave, asking.With, homeFolder, plain, look);
            }

            var (status, told) = RigCommand.Make(null, homeFolder, plain, look);
            if (told is null)
            {
                return status;
            }

            opening = told;
        }
    }

    /// <summary>The emergency list at once: in the boil that goes on, else in a new one.</summary>
    public static int Emergency(string? homeFolder, bool plain, ScreenLook look)
    {
        var face = new BoilFace(plain, look, First: "emergency");
        var left = UnfinishedBoil.Of(Home.Of(homeFolder).Sessions, TimeProvider.System.GetUtcNow());
        Func<int>[] ways =
        [
            .. left is { IsOffered: true } ? [() => BoilCommand.Guide(Arguments(homeFolder) with { Journal = left.Path }, face)] : Array.Empty<Func<int>>(),
            () => BoilCommand.Guide(Arguments(homeFolder), face),
        ];
        foreach (var way in ways)
        {
            try
            {
                return way();
            }
            catch (Exception fault) when (fault is UnusableException or FaultyFileException)
            {
                // Whatever is wrong with a record or a rig's file, the list must come.
            }
        }

        return BoilCommand.Guide(Arguments(homeFolder), face, rig: RigFile.Read(Library.BuiltInRig, Library.BuiltIn("rigs/" + Library.BuiltInRig)));
    }

    private static int Follow(HomeChoice choice, string? with, string? homeFolder, bool plain, ScreenLook look)
    {
        string[] home = homeFolder is null ? [] : ["--home", homeFolder];
        string[] lines = plain ? ["--plain"] : [];
        string[] shown = [.. lines, .. LookOptions.Arguments(look)];
        return choice switch
        {
            HomeChoice.GoOn => GoOn(with!, homeFolder, new(plain, look)),
            HomeChoice.Start => BoilCommand.Guide(Arguments(homeFolder), new(plain, look)),
            HomeChoice.Emergency => Emergency(homeFolder, plain, look),
            HomeChoice.Practise when with == ScenarioLibrary.Refresher => CommandLine.Run(["practice", RefresherOffer.RefresherOption, .. home, .. shown]),
            HomeChoice.Practise => CommandLine.Run(["practice", "--scenario", with!, .. home, .. shown]),
            HomeChoice.Replay => CommandLine.Run(["replay", with!, .. shown]),
            _ => ExitStatus.Done,
        };
    }

    private static int GoOn(string path, string? homeFolder, BoilFace face)
    {
        try
        {
            return BoilCommand.Guide(Arguments(homeFolder) with { Journal = path }, face);
        }
        catch (Exception fault) when (fault is UnusableException or FaultyFileException)
        {
            throw new UnusableException($"{fault.Message} Or start a new boil: 'panside boil'.", (fault as UnusableException)?.More);
        }
    }

    private static GuidedArguments Arguments(string? homeFolder) => new(null, null, "beginner", null, homeFolder);
}
