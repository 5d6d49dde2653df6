using System.CommandLine;
using System.Globalization;
using Panside.Guide.Yaml;

namespace Panside.Arguments;

/// <summary>Runs a program by its command line; a fault becomes a sentence on standard error and an exit status.</summary>
/// <param name="program">The program's name.</param>
/// <param name="version">Its version.</param>
/// <param name="demand">Looks at what was typed before anything runs, and throws where it cannot be used; null for nothing to look at.</param>
/// <param name="ending">Tells of a fault that has broken a command off, and gives the exit status; null for what every program says.</param>
public sealed class Running(string program, string version, Action<ParseResult>? demand = null, Func<Exception, int>? ending = null)
{
    /// <summary>Runs it.</summary>
    /// <param name="root">All commands with their options.</param>
    /// <param name="args">What was typed after the program's name.</param>
    public int Of(Func<RootCommand> root, string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentUICulture = CultureInfo.InvariantCulture;
        try
        {
            // A name that begins with @ is a file's like any other, and no list of arguments.
            var parsed = root().Parse(args, new ParserConfiguration { ResponseFileTokenReplacer = null });
            if (parsed.Errors.Count == 0)
            {
                demand?.Invoke(parsed);
                return parsed.Invoke(new InvocationConfiguration { EnableDefaultExceptionHandler = false, Output = Console.Out, Error = Console.Error });
            }

            foreach (var error in parsed.Errors)
            {
                Console.Error.WriteLine(error.Message);
            }

            Console.Error.WriteLine($"'{program} --help' shows the commands, '{program} COMMAND --help' their options.");
            return ExitStatus.Unusable;
        }
        catch (Exception fault)
        {
            // What boils at the same time as others fails with them.
            var one = fault is AggregateException many ? many.GetBaseException() : fault;
            return ending?.Invoke(one) ?? Told(one);
        }
    }

    private int Told(Exception fault)
    {
        switch (fault)
        {
            case FaultyFileException faulty:
                foreach (var one in faulty.Faults)
                {
                    Console.Error.WriteLine(one);
                }

                return ExitStatus.Unusable;
            case UnusableException or IOException or UnauthorizedAccessException:
                Console.Error.WriteLine(fault.Message);
                return ExitStatus.Unusable;
            default:
                Console.Error.WriteLine($"A fault of ours. Please report it with {CrashFile.Write(program, version, fault)}.");
                return ExitStatus.OurFault;
        }
    }
}
