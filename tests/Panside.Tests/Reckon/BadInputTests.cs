using Panside.Commands;

namespace Panside.Tests.Reckon;

/// <summary>A value that is not believed: the value, the range and the likely slip, in a sentence.</summary>
public class BadInputTests
{
    [Theory]
    [InlineData("density --brix -2 --temperature 68F", "-2 Brix", "0 to 85 Brix", "dash")]
    [InlineData("density --brix 86 --temperature 68F", "86 Brix", "0 to 85 Brix", "near 67")]
    [InlineData("density --brix 669 --temperature 68F", "669 Brix", "0 to 85 Brix", "66.9")]
    [InlineData("density --brix 66.9 --temperature 300F", "300 °F", "32 to 230 °F", "again")]
    [InlineData("density --brix 66.9 --temperature -300C", "-300 °C", "0 to 110 °C", "again")]
    [InlineData("hydrometer --reading 59 --temperature 211C", "211 °C", "0 to 105 °C", "'211F'")]
    [InlineData("draw-point --boiling-water 99.5", "99.5 °F", "197.2 to 215.2 °F", "'99.5C'")]
    [InlineData("draw-point --boiling-water 211 --units metric", "211 °C", "91.8 to 101.8 °C", "'211F'")]
    [InlineData("thermometer --shown 99 --altitude 900", "99 °F", "186.8 to 226.4 °F", "'99C'")]
    [InlineData("draw-point --pressure 1013", "1013 inHg", "22.15 to 31.89 inHg", "'1013 hPa'")]
    [InlineData("draw-point --pressure 29 --units metric", "29 hPa", "750 to 1080 hPa", "'29 inHg'")]
    [InlineData("draw-point --pressure 30inHg --altitude 2000", "30 inHg", "27.82 inHg", "--barometer")]
    [InlineData("boiling-water --barometer 27 --altitude 900", "27 inHg", "27.76 to 31.3 inHg", "--pressure")]
    [InlineData("boiling-water --altitude 4000m", "4000 m", "-400 to 2200 m", "'4000 ft'")]
    [InlineData("hydrometer --reading 36 --temperature 211F", "36 Brix", "45 to 75 Brix", "Baume")]
    [InlineData("wood --brix 2 --efficiency 0.3", "0.3 %", "5 to 85 %", "'30 %'")]
    [InlineData("hours --volume 60gal --brix 2 --rate 0", "0 gal/h", "0.03 to 26417 gal/h", "again")]
    public void It_is_refused_with_the_value_the_range_and_the_likely_slip(string arguments, string value, string range, string slip)
    {
        var ran = Captured.Run(["reckon", .. Examples.Words(arguments)]);
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Equal("", ran.Out);
        Assert.All([value, range, slip], part => Assert.Contains(part, ran.Errors, StringComparison.Ordinal));
        Assert.Single(ran.Errors.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("elevation --temperature 205F --boiling-water 210.4F", "205 °F is under boiling water")]
    [InlineData("thin --volume 2gal --brix 66 --temperature 190F --thinner-brix 2", "boil-off")]
    [InlineData("thin --volume 2gal --brix 68 --temperature 190F --thinner-brix 67", "--thinner-brix")]
    [InlineData("boil-off --volume 2gal --brix 68 --temperature 190F", "panside reckon thin")]
    [InlineData("boiling-water --barometer 30", "--barometer needs it")]
    [InlineData("draw-point --boiling-water 210F --pressure 29", "Give one of them")]
    [InlineData("hours --volume 60gal --brix 2 --pan-length 48", "--pan-width is missing")]
    [InlineData("baume --baume 66", "near 66 is Brix")]
    [InlineData("sap-hydrometer --reading 0.1 --temperature 38F --calibration 68F", "another temperature")]
    [InlineData("bottling --volume 3gal --temperature 60F", "shelf")]
    [InlineData("density-law --place Ohio", "New York")]
    [InlineData("density --brix warm --temperature 68F", "'warm'")]
    [InlineData("density --brix 66.9 --temperature 68lb", "'lb'")]
    [InlineData("yield --volume 0gal --brix 2", "0 gal")]
    [InlineData("wood --brix 0", "plain water")]
    [InlineData("thermometer --shown 226F --altitude 0", "rolling boil")]
    public void What_does_not_go_together_is_refused_in_a_sentence(string arguments, string said)
    {
        var ran = Captured.Run(["reckon", .. Examples.Words(arguments)]);
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("(Parameter", ran.Errors, StringComparison.Ordinal);
        Assert.Single(ran.Errors.TrimEnd('\n').Split('\n'));
    }

    [Theory]
    [InlineData("draw-point", "--boiling-water")]
    [InlineData("hydrometer --reading 59", "--temperature is missing")]
    [InlineData("blend --volume 1gal --brix 66 --temperature 180F", "--other-volume is missing")]
    [InlineData("off-target", "--reading")]
    [InlineData("off-target --reading 59", "--temperature is missing")]
    public void A_missing_input_is_named_where_nobody_can_be_asked(string arguments, string said)
    {
        var ran = Captured.Run(["reckon", .. Examples.Words(arguments)]);
        Assert.Equal(ExitStatus.Unusable, ran.Status);
        Assert.Contains(said, ran.Errors, StringComparison.Ordinal);
    }
}
