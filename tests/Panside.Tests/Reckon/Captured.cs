using Panside.Commands;
using Panside.Workshop.Commands;

namespace Panside.Tests.Reckon;

/// <summary>A program run in this process, with what it wrote.</summary>
internal sealed record Captured(int Status, string Out, string Errors)
{
    /// <summary>Runs <c>panside</c> as if its input were redirected, which it is under a test, and had nothing in it.</summary>
    public static Captured Run(params string[] args) => Of(CommandLine.Run, args, TextReader.Null);

    /// <summary>Runs <c>panside</c> with something to read.</summary>
    public static Captured Reading(TextReader input, string[] args) => Of(CommandLine.Run, args, input);

    /// <summary>Runs <c>panside-workshop</c>.</summary>
    public static Captured Workshop(params string[] args) => Of(WorkshopLine.Run, args, TextReader.Null);

    private static Captured Of(Func<string[], int> program, string[] args, TextReader input)
    {
        using var own = new OwnConsole(input);
        var status = program(args);
        return new(status, own.Out, own.Errors);
    }
}
