using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>How much syrup, in how many containers, of which class, lawful where.</summary>
internal static class SyrupTable
{
    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("How much syrup, and which",
    [
        new("yield", "the syrup in a tank of sap")
        {
            Example = "--volume '100 gal' --brix 2",
            Inputs =
            [
                Inputs.Volume("volume", "how much sap", "100 gal"),
                Inputs.Sugar("brix", "the sugar of the sap", "2"),
                Inputs.Temperature("temperature", "the temperature of the sap", "38F") with { Usual = "38 °F" },
                Inputs.Target,
            ],
            Reckon = Yield,
            Basis = new("a balance of sugar; beside it 86 / Brix, and 87.1 / Brix - 0.32 (66.0) or 88.2 / Brix - 0.32 (66.9)",
                ["S3", "S27", "S28"],
                "the balance: any sap thinner than the syrup; the rules: 1 to 20 Brix of sap; syrup measured at 20 °C (68 °F)",
                "what sticks to pan and filter, and what is spilled"),
        },
        new("bottling", "the containers that hot syrup fills, and how it shrinks")
        {
            Example = "--volume '3 gal' --temperature 185F --container '1 qt'",
            Inputs =
            [
                Inputs.Volume("volume", "how much hot syrup", "3 gal"),
                Inputs.Temperature("temperature", "the temperature at which it is packed", "185F"),
                Inputs.Sugar("brix", "its true density", "66.9", 45, 75) with { Usual = "66.9 Brix" },
                Inputs.Volume("container", "what a container holds by its label", "1 pt") with
                {
                    Usual = "1 qt",
                    Assumed = units => units.SmallVolume,
                },
                Inputs.Temperature("shelf", "the temperature of the shelf", "68F") with { Usual = "68 °F" },
            ],
            Reckon = Bottling,
            Basis = new("densities hot and cold", ["S3"],
                "45 to 75 Brix, 0 to 110 °C, the shelf no hotter than the pack; 2.8 to 3.6 % from 180 to 211 °F",
                "the container's own shrinking, and the headspace that it asks for"),
        },
        new("grade", "the color class of a measured light transmittance")
        {
            Example = "--transmittance 62%",
            Inputs = [Inputs.Share("transmittance", "light through 10 mm at 560 nm, glycerol being 100 %", "62%", 0, 100)],
            Reckon = given => new(
                [Show.Word("class", Name(ColorClasses.FromTransmittance(given.Percent("transmittance"))))],
                ["The class also asks for its taste and for no off-flavor, which no light tells."]),
            Basis = new("the limits of the law: 75, 50 and 25 %", ["S30", "S31"],
                "0 to 100 %; as exact as the light meter", "taste, clarity and density"),
        },
        new("density-law", "the density that a place's law asks of syrup")
        {
            Example = "--place Vermont",
            Inputs = [Inputs.Place, Inputs.Sugar("brix", "the true density of a batch", "66.4", 45, 75) with { IsOptional = true }],
            Reckon = Law,
            Basis = new("the law as it was read", ["S30", "S31", "S32", "S33", "S10", "S34"],
                "the six places whose law was read; New Hampshire second-hand, and without an upper limit",
                "laws change; this is no legal advice"),
        },
    ]);

    private static Result Yield(Given given)
    {
        var (target, brix) = (given.Sugar("target"), given.Sugar("brix"));
        var sap = Portion.OfVolume(given.Volume("volume"), brix, given.Temperature("temperature"));
        var syrup = SyrupYield.ByMassBalance(sap, target);
        List<Figure> figures =
        [
            given.Volume("syrup", syrup),
            Show.Number("sap-for-one-of-syrup", sap.Volume / syrup, 1),
        ];
        var inRules = brix.Brix is >= 1 and <= 20;
        if (inRules)
        {
            figures.Add(given.Volume("by-the-rule-of-86", SyrupYield.ByRuleOf86(sap.Volume, brix)));
        }

        if (inRules && target.Brix is 66.0 or 66.9)
        {
            figures.Add(given.Volume("by-the-revised-rule", SyrupYield.ByRevisedRule(sap.Volume, brix, target)));
        }

        return new(figures, inRules ? [] : ["The two rules are for sap of 1 to 20 Brix only."]);
    }

    private static Result Bottling(Given given)
    {
        var (packed, shelf) = (given.Temperature("temperature"), given.Temperature("shelf"));
        var hot = Portion.OfVolume(given.Volume("volume"), given.Sugar("brix"), packed);
        var fill = HotPack.Fill(hot, given.Volume("container"), shelf);
        return new(
            [
                Show.Number("containers", fill.Filled, 0),
                given.Volume("hot-into-each", fill.HotVolumeOfEach),
                given.Volume("hot-left-over", fill.HotVolumeLeft, 2),
                Show.Number("shrinks", 100 * HotPack.ContractionFraction(hot.SugarContent, packed, shelf), 1, "%"),
            ]);
    }

    private static Result Law(Given given)
    {
        var place = JurisdictionNames.FromName(given.Word("place"))!.Value;
        var law = LegalDensity.In(place);
        List<Figure> figures = [Show.Brix("least", law.Least.Brix)];
        if (law.Most is { } most)
        {
            figures.Add(Show.Brix("most", most.Brix));
        }

        if (given.Has("brix"))
        {
            figures.Add(Show.Word("this-batch", law.Allows(given.Sugar("brix")) ? "lawful by its density" : "not lawful by its density"));
        }

        return new(figures);
    }

    private static string Name(ColorClass color) => color switch
    {
        ColorClass.Golden => "golden, delicate taste",
        ColorClass.Amber => "amber, rich taste",
        ColorClass.Dark => "dark, robust taste",
        _ => "very dark, strong taste",
    };
}
