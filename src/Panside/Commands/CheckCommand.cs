using System.CommandLine;

namespace Panside.Commands;

internal static class CheckCommand
{
    public static Command Create() => new("check", "Validates flows, rigs and records.");
}
