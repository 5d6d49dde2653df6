using Panside.Screen.Painting;
using Terminal.Gui.Drawing;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace Panside.Screen;

/// <summary>The tones as attributes of a terminal: its own colors, and color only for what is not normal.</summary>
internal sealed class Palette(bool hasColor)
{
    /// <summary>Whether the environment asks for no color.</summary>
    public static bool AsksForColor => string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));

    /// <summary>The attribute of a tone.</summary>
    public Attribute Of(Tone tone) => tone switch
    {
        Tone.Plain => Own(TextStyle.None),
        Tone.Strong => Own(TextStyle.Bold),
        Tone.Bar => Own(TextStyle.Reverse),
        _ when !hasColor => Own(tone == Tone.Doubt ? TextStyle.Underline | TextStyle.Bold : TextStyle.Reverse | TextStyle.Bold),
        Tone.Danger => Colored(ColorName16.White, ColorName16.Red),
        Tone.Now => Colored(ColorName16.Black, ColorName16.Yellow),
        _ => Colored(ColorName16.Black, ColorName16.Cyan),
    };

    private static Attribute Own(TextStyle style) => new(Color.None, Color.None, style);

    private static Attribute Colored(ColorName16 text, ColorName16 ground) => new(new Color(text), new Color(ground), TextStyle.Bold);
}
