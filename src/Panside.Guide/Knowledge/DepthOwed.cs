namespace Panside.Guide.Knowledge;

/// <summary>How it is known that the depth is to be read first of all, by who comes back to the pan or has found its feed shut.</summary>
internal static class DepthOwed
{
    /// <summary>Set until the depth is read.</summary>
    public const string Mark = "depth-owed";
}
