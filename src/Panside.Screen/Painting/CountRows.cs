using Panside.Guide.Advice;
using Panside.Guide.Measures;

namespace Panside.Screen.Painting;

/// <summary>The one figure that counts most, as the flow has it, large enough for three metres, and a bar of what is left of the way.</summary>
internal static class CountRows
{
    private const string Soon = "soon";
    private const char Ink = '█';
    private const char Left = '━';
    private const char Gone = '─';

    /// <summary>The rows; none where nothing counts or nothing has room.</summary>
    /// <param name="now">The situation.</param>
    /// <param name="width">Columns.</param>
    public static IReadOnlyList<StyledLine> Of(Situation now, int width) =>
        Counts.Most(now) is var (rule, count) ? Of(count.Value, count.Share, rule.Text, width, count.IsForecast) : [];

    /// <summary>The rows of a figure.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="share">What is left of the way, 0 to 1.</param>
    /// <param name="text">What it counts.</param>
    /// <param name="width">Columns.</param>
    /// <param name="isForecast">Whether it is likely and no more: a nought would be read as come already.</param>
    public static IReadOnlyList<StyledLine> Of(Measure value, double share, string text, int width, bool isForecast = false)
    {
        var shown = isForecast && value is { Unit: Unit.Minute, Value: 0 } ? Soon : value.Unit == Unit.Minute ? Times.Span(value.Value) : Amount.Shown(value);
        var large = LargeLetters.WidthOf(shown) <= width ? shown : shown.Split(' ')[0];
        if (LargeLetters.WidthOf(large) > width)
        {
            return [];
        }

        var left = (int)double.Round(double.Clamp(share, 0, 1) * width);
        return
        [
            StyledLine.Of(Columns.Cut(large == shown ? text : $"{shown} {text}", width)),
            .. LargeLetters.Rows(large, Ink).Select(row => StyledLine.Of(row, Tone.Strong)),
            StyledLine.Of(new string(Left, left) + new string(Gone, width - left)),
            StyledLine.Empty,
        ];
    }
}
