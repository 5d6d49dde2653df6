namespace Panside.Arguments;

/// <summary>Arguments or files that cannot be used; the message is a sentence for the operator.</summary>
public sealed class UnusableException(string message) : Exception(message);
