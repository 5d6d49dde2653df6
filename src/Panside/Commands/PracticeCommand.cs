using System.CommandLine;

namespace Panside.Commands;

internal static class PracticeCommand
{
    public static Command Create() => new("practice", "Guides a boil on a simulated rig.");
}
