namespace Panside.Faces;

/// <summary>Nobody takes what is said any more, or it cannot be written: a conversation ends there as one that is interrupted.</summary>
internal sealed class OutputGoneException(IOException fault) : IOException(fault.Message, fault)
{
    /// <summary>The number of the error that a pipe without a reader gives.</summary>
    internal const int BrokenPipe = 32;

    /// <summary>Whether who read it has gone: then there is nobody to complain to.</summary>
    public bool IsClosed => InnerException?.HResult == BrokenPipe;
}
