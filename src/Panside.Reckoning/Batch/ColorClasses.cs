namespace Panside.Reckoning.Batch;

/// <summary>The color class of a measured light transmittance.</summary>
public static class ColorClasses
{
    /// <summary>The class at a transmittance in percent, at 560 nm through 10 mm, glycerol being 100 %.</summary>
    /// <remarks>
    /// Source: [S30] and [S31]. Range: 0 to 100 %. Accuracy: that of the light meter; the law states tenths of a
    /// percent; what lies between two classes belongs to the darker one. Not covered: a class also asks for the taste
    /// and for no off-flavor, which no light tells.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 100 %.</exception>
    public static ColorClass FromTransmittance(double percent) => percent switch
    {
        >= 75 and <= 100 => ColorClass.Golden,
        >= 50 and < 75 => ColorClass.Amber,
        >= 25 and < 50 => ColorClass.Dark,
        >= 0 and < 25 => ColorClass.VeryDark,
        _ => throw OutOfRange.For("The light transmittance in percent", percent, "0 to 100"),
    };
}
