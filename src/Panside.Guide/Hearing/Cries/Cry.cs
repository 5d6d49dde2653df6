namespace Panside.Guide.Hearing.Cries;

/// <summary>A sentence that may be a danger.</summary>
/// <param name="Hazards">What it may be, the likeliest first; empty where it does not tell.</param>
/// <param name="IsSure">Whether the first is meant beyond doubt; else the list of dangers is to be opened.</param>
public sealed record Cry(IReadOnlyList<string> Hazards, bool IsSure);
