namespace Panside.Guide.Hearing.Talk;

/// <summary>What a piece of talk means, with how sure that is.</summary>
/// <param name="Kind">One of the kinds that the ear was fitted to: <c>reading:tank-volume</c>, <c>did:add-wood</c>, <c>ask:leave</c>.</param>
/// <param name="Amount">Its amount; null where it has none.</param>
/// <param name="Share">How likely it is among all kinds: a share of 1.</param>
/// <param name="Words">What was said.</param>
internal sealed record Meaning(string Kind, SpokenAmount? Amount, double Share, string Words)
{
    /// <summary>What means nothing here.</summary>
    public const string None = "none";

    /// <summary>What cries of a danger.</summary>
    public const string Cry = "cry";

    /// <summary>What is more than one thing, and must be cut.</summary>
    public const string Several = "several";

    /// <summary>What the kind begins with: <c>reading</c>, <c>observed</c>, <c>did</c>, <c>ask</c> …</summary>
    public string Root => Kind.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon ? Kind[..colon] : Kind;

    /// <summary>What stands behind it: <c>tank-volume</c>.</summary>
    public string Rest => Kind.IndexOf(':', StringComparison.Ordinal) is > 0 and var colon ? Kind[(colon + 1)..] : "";
}
