using System.CommandLine;
using System.Globalization;
using Panside.Guide.Yaml;

namespace Panside.Commands;

/// <summary>The program's command line, and what becomes of faults.</summary>
internal static class CommandLine
{
    /// <summary>Runs the program.</summary>
    public static int Run(string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            var parsed = Root().Parse(args);
            if (parsed.Errors.Count > 0)
            {
                foreach (var error in parsed.Errors)
                {
                    Console.Error.WriteLine(error.Message);
                }

                Console.Error.WriteLine("'panside --help' shows the commands, 'panside COMMAND --help' their options.");
                return ExitStatus.Unusable;
            }

            return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false });
        }
        catch (UnusableException fault)
        {
            Console.Error.WriteLine(fault.Message);
            return ExitStatus.Unusable;
        }
        catch (FaultyFileException fault)
        {
            foreach (var one in fault.Faults)
            {
                Console.Error.WriteLine(one);
            }

            return ExitStatus.Unusable;
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine(fault.Message);
            return ExitStatus.Unusable;
        }
        catch (Exception fault)
        {
            Console.Error.WriteLine($"A fault of ours. Please report it with {CrashFile.Write(fault)}. The session's record is whole: 'panside boil --journal FILE' goes on.");
            return ExitStatus.OurFault;
        }
    }

    /// <summary>All commands with their options.</summary>
    public static RootCommand Root()
    {
        var plain = new Option<bool>("--plain") { Description = "The home screen as lines of text." };
        var home = new Option<string?>("--home") { Description = "Where rigs, flows and sessions live.", HelpName = "FOLDER" };
        var root = new RootCommand("Stands beside a small maple sap boiler, from lighting the fire to leaving the pan safe.")
        {
            BoilCommand.Create(),
            PracticeCommand.Create(),
            CheckCommand.Create(),
            ReplayCommand.Create(),
            ReportCommand.Create(),
            SeasonCommand.Create(),
            ImportCommand.Create(),
            PlanCommand.Create(),
            ReckonCommand.Create(),
            RigCommand.Create(),
            CompletionCommand.Create(),
            plain,
            home,
        };
        var looks = new LookOptions().AddTo(root);
        root.SetAction(given => HomeCommand.Run(given.GetValue(home), given.GetValue(plain), looks.Read(given)));
        ExamplesFirst.AddTo(root);
        return root;
    }
}
