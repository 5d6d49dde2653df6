using Panside.Guide.Flows;
using Panside.Guide.Knowledge;
using Panside.Guide.Lines;

namespace Panside.Screen.Painting;

/// <summary>The line at the top: phase, practice, clock, time since the start.</summary>
internal static class TopRow
{
    private const string Mark = "PRACTICE";

    /// <summary>The phase of a state.</summary>
    public static string Phase(SessionState state, Setting setting) =>
        state.IsOver ? Flow.End : state.Step.Length == 0 ? "" : setting.Flow.PhaseOf(state.Step).Code;

    /// <summary>Whether there is an emergency.</summary>
    public static bool IsEmergency(SessionState state, Setting setting) => Phase(state, setting) == Panside.Guide.Flows.Phase.EmergencyCode;

    /// <summary>The word that no screen of a simulated rig is without; empty on a real one.</summary>
    public static string Practice(Setting setting, string before = "") => setting.Header.Practice ? before + Mark : "";

    /// <summary>The words that a screen is never without: of a replay, of a simulated rig; empty at a boil.</summary>
    public static string Marks(ScreenPicture picture, string before = "") =>
        (picture.Replay is null ? "" : before + ReplaySight.Mark) + Practice(picture.Setting, picture.Replay is null ? before : "  ");

    /// <summary>The row.</summary>
    public static StyledLine Of(ScreenPicture picture, int width)
    {
        var (state, setting) = (picture.State, picture.Setting);
        var tone = IsEmergency(state, setting) ? Tone.Danger : Tone.Bar;
        var left = " " + Phase(state, setting).Replace('-', ' ').ToUpperInvariant();
        left += Marks(picture, "   ");
        var clock = state.Now is { } now ? Entries.Clock(now) + " " : "";
        var since = state.Started is { } started ? $"{Times.Span(state.MinutesSince(started))} since start   " : "";
        foreach (var right in new[] { $"{setting.Header.Rig}   {since}{clock}", since + clock, clock })
        {
            if (Columns.Of(left) + Columns.Of(right) + 2 <= width)
            {
                var gap = new string(' ', width - Columns.Of(left) - Columns.Of(right));
                return StyledLine.Of(left + gap + right, tone);
            }
        }

        return StyledLine.Of(left, tone).Fit(width);
    }
}
