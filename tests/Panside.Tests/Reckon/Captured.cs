using Panside.Commands;

namespace Panside.Tests.Reckon;

/// <summary>The program run in this process, with what it wrote.</summary>
internal sealed record Captured(int Status, string Out, string Errors)
{
    /// <summary>Runs <c>panside</c> as if its input were redirected, which it is under a test.</summary>
    public static Captured Run(params string[] args)
    {
        var (output, errors) = (Console.Out, Console.Error);
        using var said = new StringWriter();
        using var complained = new StringWriter();
        try
        {
            Console.SetOut(said);
            Console.SetError(complained);
            var status = CommandLine.Run(args);
            return new(status, said.ToString(), complained.ToString());
        }
        finally
        {
            Console.SetOut(output);
            Console.SetError(errors);
        }
    }
}

/// <summary>Tests that take over the console run alone.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class ConsoleAlone
{
    public const string Name = "console";
}
