using Panside.Guide.Measures;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>What sugar solutions weigh, and what it takes to warm them.</summary>
internal static class PropertyTable
{
    private static readonly Input Brix = Inputs.Sugar("brix", "its sugar by mass", "66.9");
    private static readonly Input Temperature = Inputs.Temperature("temperature", "its temperature", "68F");

    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Properties",
    [
        new("density", "what sap or syrup weighs; the Brix of a weighed volume")
        {
            Example = "--brix 66.9 --temperature 68F",
            Inputs =
            [
                Brix with { IsOptional = true },
                Inputs.Mass("mass", "what a volume of it weighs, without the vessel", "11.08 lb") with { IsOptional = true, With = "volume" },
                Inputs.Volume("volume", "the volume that was weighed", "1 gal") with { IsOptional = true },
                Temperature,
            ],
            OneOf = ["brix", "mass"],
            Reckon = DensityOf,
            Basis = new("the density polynomial of pure sugar in water", ["S3"],
                "0 to 85 Brix, 0 to 110 °C; 0.3 kg/m³ (0.05 Brix) of the handbook table up to 75 Brix at 20 °C; above 80 °C extrapolated, "
                + "which a state's hydrometer chart bears out to 1.5 kg/m³",
                "minerals and invert sugar; air and foam in the sample"),
        },
        new("baume", "degrees Baume of a density, and back")
        {
            Example = "--baume 36",
            Inputs =
            [
                Brix with { IsOptional = true },
                new("baume", "degrees Baume, modulus 145", "36") { IsOptional = true },
                Inputs.Temperature("reference", "the temperature that the Baume scale is made for", "60F") with { Usual = "68 °F" },
            ],
            OneOf = ["baume", "brix"],
            Reckon = Baume,
            Basis = new("145 - 145 / specific gravity, at the reference temperature", ["S16", "S3", "S10"],
                "0 to 85 Brix; 0.03 degree of the law's two pairs, 66.9 = 36 and 68.9 = 37, which fit a scale for 68 °F",
                "scales of another modulus"),
        },
        new("specific-heat", "what it takes to warm sap or syrup by a degree")
        {
            Example = "--brix 66.9 --temperature 180F",
            Inputs = [Brix, Temperature with { Example = "180F" }],
            Reckon = given =>
            {
                var kilojoules = SugarSolution.SpecificHeatKilojoulesPerKilogramKelvin(given.Sugar("brix"), given.Temperature("temperature"));
                return new([given.Units == UnitSystem.Metric
                    ? Show.Number("specific-heat", kilojoules, 2, "kJ/(kg K)")
                    : Show.Number("specific-heat", kilojoules / 4.1868, 3, "Btu/(lb °F)")]);
            },
            Basis = new("4.1868 - 0.0251 B + 0.000075 B t kJ/(kg K), B in Brix, t in °C", ["S7"],
                "0 to 85 Brix, 0 to 110 °C; plain water at 100 °C comes out 0.7 % low",
                "minerals and invert sugar"),
        },
    ]);

    private static Result DensityOf(Given given)
    {
        var temperature = given.Temperature("temperature");
        var density = given.Has("brix")
            ? SugarSolution.DensityOf(given.Sugar("brix"), temperature)
            : Density.FromKilogramsPerCubicMeter(given.Mass("mass").Kilograms / given.Volume("volume").Liters * 1000);
        var water = SugarSolution.DensityOf(default, temperature);
        Figure[] brix = given.Has("brix") ? [] : [Show.Brix("density", SugarSolution.SugarContentOf(density, temperature).Brix)];
        var gallon = given.Units.Volume(new(1, Unit.Gallon)).Liters / 1000;
        return new(
            [
                .. brix,
                given.Units == UnitSystem.Metric
                    ? Show.Number("weighs", density.KilogramsPerCubicMeter, 1, "kg/m³")
                    : Show.Number("weighs", Mass.FromKilograms(density.KilogramsPerCubicMeter * gallon).Pounds, 2, "lb/gal"),
                Show.Number("specific-gravity", density.KilogramsPerCubicMeter / water.KilogramsPerCubicMeter, 4),
            ]);
    }

    private static Result Baume(Given given)
    {
        var reference = given.Temperature("reference");
        return given.Has("baume")
            ? new([Show.Brix("density", BaumeScale.SugarContentAt(given.Baume("baume"), reference).Brix)])
            : new([Show.Number("baume", BaumeScale.DegreesBaumeOf(given.Sugar("brix"), reference), 2, "Baume")]);
    }
}
