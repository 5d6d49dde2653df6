namespace Panside.Guide.Lines;

/// <summary>The words that answer an open prompt.</summary>
public static class AnswerWords
{
    /// <summary>It is so; it is done.</summary>
    public const string Yes = "yes";

    /// <summary>It is not so; not done.</summary>
    public const string No = "no";

    /// <summary>Go past it; it stays listed.</summary>
    public const string Skip = "skip";

    /// <summary>Ask again in a while.</summary>
    public const string Later = "later";

    /// <summary>All four.</summary>
    public static readonly IReadOnlyList<string> All = [Yes, No, Skip, Later];
}
