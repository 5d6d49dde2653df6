namespace Panside.Journal;

/// <summary>Another file has taken a record's place while it was written: it is not ours to write into.</summary>
internal sealed class ReplacedException() : IOException("another file has taken its place");
