using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>Which way a reading goes: the last one against the one before it.</summary>
internal static class Trend
{
    /// <summary>Its sign and its word for rising, falling and staying; both empty where there is only one reading.</summary>
    public static (string Sign, string Word) Of(SessionState state, ReadingName name)
    {
        if (!state.Readings.TryGetValue(name, out var all) || all.Count < 2 || all[^1].Value.Unit != all[^2].Value.Unit)
        {
            return ("", "");
        }

        return all[^1].Value.Value.CompareTo(all[^2].Value.Value) switch
        {
            > 0 => ("↑", "rising"),
            < 0 => ("↓", "falling"),
            _ => ("·", "steady"),
        };
    }
}
