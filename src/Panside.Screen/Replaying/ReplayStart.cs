namespace Panside.Screen.Replaying;

/// <summary>How a replay begins.</summary>
/// <param name="Speed">Times real time.</param>
/// <param name="From">Where it begins; null for the beginning of the record.</param>
/// <param name="To">Where it pauses; where no beginning is named it opens there. Null for nowhere.</param>
/// <param name="Notice">What a person should know first; null for nothing.</param>
public sealed record ReplayStart(double Speed, DateTimeOffset? From, DateTimeOffset? To, string? Notice);
