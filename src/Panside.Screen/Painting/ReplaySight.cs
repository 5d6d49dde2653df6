using Panside.Guide.Debriefing;

namespace Panside.Screen.Painting;

/// <summary>What a screen shows of a replay, over and above the boil as it was.</summary>
/// <param name="Status">Speed, and where in the record it stands.</param>
/// <param name="Reply">The answer to the last word typed; empty for none.</param>
/// <param name="IsAtEnd">Whether the record ends here.</param>
/// <param name="Came">The forecasts of this moment beside what came of them.</param>
internal sealed record ReplaySight(string Status, string Reply, bool IsAtEnd, IReadOnlyList<ToldAndCame> Came)
{
    /// <summary>The word that no screen of a replay is without.</summary>
    public const string Mark = "REPLAY";

    /// <summary>What came of a forecast, as a row of its own under it; none where there is nothing beside it.</summary>
    public static IEnumerable<PanelRow> Row(ReplaySight? sight, string forecast) =>
        sight?.Came.FirstOrDefault(one => one.Told.Name == forecast) is { Came: var came }
            ? [PanelRow.Of(PanelRow.Useful, "  " + (came.StartsWith("after ", StringComparison.Ordinal) ? "It came " + came : "What came: " + came))]
            : [];
}
