namespace Panside.Arguments;

/// <summary>Arguments or files that cannot be used; the message is a sentence for the operator.</summary>
/// <param name="message">The sentence.</param>
/// <param name="more">What is told below it, a line each; null for nothing.</param>
public sealed class UnusableException(string message, IReadOnlyList<string>? more = null) : Exception(message)
{
    /// <summary>What is told below the message, a line each.</summary>
    public IReadOnlyList<string> More { get; } = more ?? [];
}
