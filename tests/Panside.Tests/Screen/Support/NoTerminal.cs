using System.Runtime.CompilerServices;

namespace Panside.Tests.Screen.Support;

internal static class NoTerminal
{
    /// <summary>The terminal library then draws into memory only.</summary>
    [ModuleInitializer]
    internal static void Init() => Environment.SetEnvironmentVariable("DisableRealDriverIO", "1");
}
