using Panside.Picturing;

namespace Panside.Workshop.Shutdowns;

/// <summary>What is drawn of a shutdown into a panel.</summary>
internal static class ShutdownCurves
{
    /// <summary>A forecast's bands and median, and the truth over them.</summary>
    public static void Forecast(this Panel panel, SvgPage page, IReadOnlyList<ShutdownLook> looks, Func<ShutdownLook, Fan> fan)
    {
        panel.Band(page, looks, look => fan(look).P5, look => fan(look).P95);
        panel.Band(page, looks, look => fan(look).P25, look => fan(look).P75);
        panel.Curve(page, Ink.Median, looks, look => fan(look).P50);
        panel.Curve(page, Ink.Truth, looks, look => fan(look).Truth);
    }

    /// <summary>A value over time.</summary>
    public static void Curve(this Panel panel, SvgPage page, Stroke stroke, IReadOnlyList<ShutdownLook> looks, Func<ShutdownLook, double> value) =>
        page.Line(stroke, looks.Select(look => panel.At(look.Minute, value(look))));

    private static void Band(this Panel panel, SvgPage page, IReadOnlyList<ShutdownLook> looks, Func<ShutdownLook, double> low, Func<ShutdownLook, double> high) =>
        page.Area(
            Ink.Forecast, Ink.Band,
            looks.Select(look => panel.At(look.Minute, high(look))).Concat(looks.Reverse().Select(look => panel.At(look.Minute, low(look)))));
}
