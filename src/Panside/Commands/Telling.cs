using Panside.Guide.Yaml;

namespace Panside.Commands;

/// <summary>
/// Tells faults: each on one line, which is what was asked for, and below it on the other stream the place in its file, a hint and the
/// code of its kind. On a terminal both stand together; a program that takes the first gets one fault a line.
/// </summary>
internal static class Telling
{
    /// <summary>More of them are told on one line only.</summary>
    private const int ShownAtMost = 20;

    /// <summary>Tells them.</summary>
    /// <param name="output">Takes the line of each fault.</param>
    /// <param name="errors">Takes what is told beside it.</param>
    /// <param name="faults">The faults.</param>
    /// <param name="text">The text of their file; null where it is too long to be shown.</param>
    public static void Faults(TextWriter output, TextWriter errors, IReadOnlyList<Fault> faults, string? text)
    {
        foreach (var (number, fault) in faults.Index())
        {
            output.WriteLine(fault);
            output.Flush();
            foreach (var line in text is null || number >= ShownAtMost ? [] : fault.More(text))
            {
                errors.WriteLine(line);
            }
        }
    }
}
