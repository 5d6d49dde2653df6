using System.CommandLine;
using System.CommandLine.Parsing;

namespace Panside.Commands;

/// <summary>Names of files and folders on the command line: what can be none is refused before any command looks at it.</summary>
internal static class GivenPaths
{
    /// <summary>Refuses a name that can be no file's.</summary>
    /// <exception cref="UnusableException">A name is empty, or holds what no name can.</exception>
    public static void Demand(ParseResult parsed)
    {
        for (SymbolResult? at = parsed.CommandResult; at is CommandResult command; at = at.Parent)
        {
            foreach (var child in command.Children)
            {
                var (name, help) = child switch
                {
                    OptionResult option => (option.Option.Name, option.Option.HelpName),
                    ArgumentResult argument => (argument.Argument.Name, argument.Argument.Name),
                    _ => ("", null),
                };
                foreach (var token in IsPath(help) ? child.Tokens : [])
                {
                    Demand(name, token.Value);
                }
            }
        }
    }

    private static bool IsPath(string? help) =>
        help is not null && (help.Contains("FILE", StringComparison.Ordinal) || help.Contains("FOLDER", StringComparison.Ordinal));

    private static void Demand(string name, string path)
    {
        if (string.IsNullOrWhiteSpace(path))
        {
            throw new UnusableException($"{name}: the name is empty. Name a file or folder, or leave it out.");
        }

        if (path.Contains('\0', StringComparison.Ordinal))
        {
            throw new UnusableException($"{name}: a name cannot hold a NUL character. Check it.");
        }
    }
}
