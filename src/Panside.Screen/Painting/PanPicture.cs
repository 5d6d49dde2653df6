using System.Globalization;
using Panside.Guide.Advice;

namespace Panside.Screen.Painting;

/// <summary>The pan from the float to the draw-off, channel by channel: how sweet each is reckoned to be.</summary>
internal static class PanPicture
{
    private const int LabelWidth = 10;

    /// <summary>Brix of a full bar: finished syrup.</summary>
    private const double FullBrix = 67;

    /// <summary>The rows; none before there is a fire.</summary>
    public static IEnumerable<PanelRow> Of(Situation now, int width)
    {
        if (!now.IsLit)
        {
            yield break;
        }

        var channels = now.State.Rigs.ChannelBrix;
        var bar = width - LabelWidth - 18;
        if (bar < 4)
        {
            yield break;
        }

        yield return new("Pan, reckoned sugar in Brix", PanelRow.Gap, Tone.Strong);
        for (var index = 0; index < channels.Count; index++)
        {
            var (low, middle, high) = (channels[index].P5, channels[index].P50, channels[index].P95);
            var name = index == channels.Count - 1 ? "draw-off" : index == 0 ? "float" : $"channel {index + 1}";
            yield return PanelRow.Of(
                name, LabelWidth, Bar(low, middle, high, bar) + $" {Whole(middle)} ({Whole(low)}-{Whole(high)})", PanelRow.Gap);
        }
    }

    /// <summary>Full up to the low bound, and dotted up to the high one.</summary>
    private static string Bar(double low, double middle, double high, int width)
    {
        int Columns(double brix) => int.Clamp((int)double.Round(brix / FullBrix * width), 0, width);
        var (sure, likely, possible) = (Columns(low), Columns(middle), Columns(high));
        return (new string('#', sure) + new string('=', likely - sure) + new string('.', possible - likely)).PadRight(width);
    }

    private static string Whole(double brix) => brix.ToString("0", CultureInfo.InvariantCulture);
}
