using Panside.Screen.Painting;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Panside.Screen;

/// <summary>The tones as attributes of a terminal: 16 colors, each on a ground of its own, and color only for what is not normal.</summary>
internal sealed class Palette(Theme theme)
{
    /// <summary>The theme that is shown where one is wished: <c>NO_COLOR</c> goes before it, as everywhere.</summary>
    public static Theme Shown(Theme wished) =>
        string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR")) ? wished : Theme.Monochrome;

    /// <summary>The attribute of a tone.</summary>
    public Attribute Of(Tone tone) => theme switch
    {
        Theme.Monochrome => Monochrome(tone),
        Theme.Light => tone switch
        {
            Tone.Plain => Colored(ColorName16.Black, ColorName16.White, TextStyle.None),
            Tone.Strong => Colored(ColorName16.Black, ColorName16.White),
            Tone.Bar => Colored(ColorName16.White, ColorName16.Black),
            _ => Abnormal(tone),
        },
        Theme.Dark => tone switch
        {
            Tone.Plain => Colored(ColorName16.Gray, ColorName16.Black, TextStyle.None),
            Tone.Strong => Colored(ColorName16.White, ColorName16.Black),
            Tone.Bar => Colored(ColorName16.Black, ColorName16.Gray),
            _ => Abnormal(tone),
        },

        // White on red does not reach the contrast of the others: here danger takes the yellow.
        Theme.HighContrast => tone switch
        {
            Tone.Plain => Colored(ColorName16.White, ColorName16.Black, TextStyle.None),
            Tone.Strong => Colored(ColorName16.White, ColorName16.Black),
            Tone.Bar => Colored(ColorName16.Black, ColorName16.White),
            Tone.Danger => Colored(ColorName16.Black, ColorName16.BrightYellow),
            Tone.Now => Colored(ColorName16.Black, ColorName16.BrightCyan),
            _ => Colored(ColorName16.Black, ColorName16.BrightGreen),
        },
        _ => tone switch
        {
            Tone.Plain => Own(TextStyle.None),
            Tone.Strong => Own(TextStyle.Bold),
            Tone.Bar => Own(TextStyle.Reverse),
            _ => Abnormal(tone),
        },
    };

    private static Attribute Monochrome(Tone tone) => Own(tone switch
    {
        Tone.Plain => TextStyle.None,
        Tone.Strong => TextStyle.Bold,
        Tone.Bar => TextStyle.Reverse,
        Tone.Doubt => TextStyle.Underline | TextStyle.Bold,
        _ => TextStyle.Reverse | TextStyle.Bold,
    });

    private static Attribute Abnormal(Tone tone) => tone switch
    {
        Tone.Danger => Colored(ColorName16.White, ColorName16.Red),
        Tone.Now => Colored(ColorName16.Black, ColorName16.BrightYellow),
        _ => Colored(ColorName16.Black, ColorName16.Cyan),
    };

    private static Attribute Own(TextStyle style) => new(Color.None, Color.None, style);

    private static Attribute Colored(ColorName16 text, ColorName16 ground, TextStyle style = TextStyle.Bold) =>
        new(new Color(text), new Color(ground), style);
}
