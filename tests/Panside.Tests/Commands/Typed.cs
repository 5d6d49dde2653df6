using Panside.Tests.Reckon;

namespace Panside.Tests.Checks;

/// <summary>The program run in this process with lines typed at it.</summary>
internal static class Typed
{
    public static Captured Into(IEnumerable<string> lines, params string[] args)
    {
        using var input = new StringReader(string.Concat(lines.Select(line => line + "\n")));
        return Captured.Reading(input, args);
    }
}
