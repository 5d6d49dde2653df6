namespace Panside.Commands;

/// <summary>Arguments or files that cannot be used; the message is a sentence for the operator.</summary>
internal sealed class UnusableException(string message) : Exception(message);
