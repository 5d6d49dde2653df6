namespace Panside.Arguments;

/// <summary>The exit statuses that the program promises.</summary>
public static class ExitStatus
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The thing checked is wrong, or a boil ended unsafe.</summary>
    public const int Wrong = 1;

    /// <summary>Unusable arguments or files.</summary>
    public const int Unusable = 2;

    /// <summary>A fault of ours.</summary>
    public const int OurFault = 70;

    /// <summary>Interrupted.</summary>
    public const int Interrupted = 130;

    /// <summary>Each with its meaning, as the help tells it.</summary>
    public static IReadOnlyList<(int Code, string Means)> All { get; } =
    [
        (Done, "done"),
        (Wrong, "what was checked is wrong, or a boil ended unsafe"),
        (Unusable, "arguments or files that cannot be used; nothing was done"),
        (OurFault, "a fault of ours; the record is whole"),
        (Interrupted, "interrupted, or nobody takes the output; a boil can be gone on with"),
    ];
}
