namespace Panside.Guide.Yaml;

/// <summary>What is wrong in a file, where, and what was expected.</summary>
/// <param name="File">The file's name as given.</param>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1.</param>
/// <param name="Wrong">What is wrong with this value.</param>
/// <param name="Expected">What was expected, and so what to do.</param>
public sealed record Fault(string File, int Line, int Column, string Wrong, string Expected)
{
    /// <summary><c>file:line:column: what is wrong, what was expected</c>.</summary>
    public override string ToString() => $"{File}:{Line}:{Column}: {Wrong}, expected {Expected}";
}

/// <summary>A file that cannot be used; carries every fault that was found.</summary>
public sealed class FaultyFileException(IReadOnlyList<Fault> faults)
    : Exception(string.Join('\n', faults))
{
    /// <summary>The faults in the order of the file.</summary>
    public IReadOnlyList<Fault> Faults { get; } = faults;
}
