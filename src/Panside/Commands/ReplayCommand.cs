using System.CommandLine;

namespace Panside.Commands;

internal static class ReplayCommand
{
    public static Command Create() => new("replay", "Plays a past session.");
}
