using Panside.Commands;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>Mending a batch: thinning, boiling on, blending.</summary>
internal static class BatchTable
{
    private static readonly Input Batch = Inputs.Volume("volume", "how much of it", "2 gal");
    private static readonly Input BatchBrix = Inputs.Sugar("brix", "its true density", "68.5");
    private static readonly Input BatchTemperature = Inputs.Temperature("temperature", "its temperature, at which the volume was read", "190F");

    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Mend a batch",
    [
        new("thin", "how much thinner liquid brings a heavy batch to target")
        {
            Example = "--volume '2 gal' --brix 68.5 --temperature 190F --thinner-brix 2",
            Inputs =
            [
                Batch, BatchBrix, BatchTemperature,
                Inputs.Sugar("thinner-brix", "the sugar of the thinner liquid: sap, thin syrup, or 0 for water", "2"),
                Inputs.Temperature("thinner-temperature", "the temperature of the thinner liquid", "40F") with { Usual = "40 °F" },
                Inputs.Target,
            ],
            Reckon = Thin,
            Basis = new("balances of mass, sugar and heat", ["S3", "S7"],
                "0 to 85 Brix, 0 to 110 °C; as exact as the densities given",
                "what boils away meanwhile: stir, and test again"),
        },
        new("boil-off", "how much water must still boil off a thin batch")
        {
            Example = "--volume '2 gal' --brix 64 --temperature 190F",
            Inputs = [Batch, BatchBrix with { Example = "64" }, BatchTemperature, Inputs.Target],
            Reckon = BoilOff,
            Basis = new("a balance of sugar", ["S3"],
                "0 to 85 Brix, 0 to 110 °C; a tenth of a Brix given is 0.15 % of the batch",
                "what sticks to pan and filter"),
        },
        new("blend", "what two batches make together")
        {
            Example = "--volume '2 gal' --brix 68 --temperature 180F --other-volume '1 gal' --other-brix 65 --other-temperature 180F",
            Inputs =
            [
                Batch, BatchBrix, BatchTemperature,
                Inputs.Volume("other-volume", "how much of the other", "1 gal"),
                Inputs.Sugar("other-brix", "the other's true density", "65"),
                Inputs.Temperature("other-temperature", "the other's temperature", "180F"),
            ],
            Reckon = BlendOf,
            Basis = new("balances of mass, sugar and heat", ["S3", "S7"],
                "0 to 85 Brix, 0 to 110 °C; as exact as the densities given",
                "heat that is lost on pouring"),
        },
    ]);

    private static Portion Of(Given given) => Portion.OfVolume(given.Volume("volume"), given.Sugar("brix"), given.Temperature("temperature"));

    private static Result Thin(Given given)
    {
        var batch = Of(given);
        if (batch.SugarContent <= given.Sugar("target"))
        {
            throw new UnusableException(
                $"--brix: {given.Text("brix")} is not over the target of {given.Text("target")}. A thin batch is boiled on: 'panside reckon boil-off'.");
        }

        if (given.Sugar("thinner-brix") >= given.Sugar("target"))
        {
            throw new UnusableException(
                $"--thinner-brix: {given.Text("thinner-brix")} is not under the target of {given.Text("target")}; only thinner liquid thins.");
        }

        var add = Blend.ThinnerToAdd(batch, given.Sugar("target"), given.Sugar("thinner-brix"), given.Temperature("thinner-temperature"));
        var whole = Blend.Of(batch, add);
        return new(
            [
                given.Volume("add", add.Volume),
                given.Volume("makes", whole.Volume),
                given.Temperature("at", whole.Temperature, digits: 0),
            ],
            ["Stir it in, heat it through, and test again before it is packed."]);
    }

    private static Result BoilOff(Given given)
    {
        var (batch, target) = (Of(given), given.Sugar("target"));
        if (batch.SugarContent >= target)
        {
            throw new UnusableException(
                $"--brix: {given.Text("brix")} is not under the target of {given.Text("target")}. A heavy batch is thinned: 'panside reckon thin'.");
        }

        var water = Finishing.WaterToBoilOff(batch, target);
        return new(
            [
                given.Volume("water-to-boil-off", Portion.OfMass(water, default, batch.Temperature).Volume),
                given.Mass("its-mass", water),
                given.Volume("leaves", Finishing.Left(batch, target, batch.Temperature).Volume),
            ]);
    }

    private static Result BlendOf(Given given)
    {
        var other = Portion.OfVolume(given.Volume("other-volume"), given.Sugar("other-brix"), given.Temperature("other-temperature"));
        var whole = Blend.Of(Of(given), other);
        return new(
            [
                Show.Brix("density", whole.SugarContent.Brix),
                given.Volume("volume", whole.Volume),
                given.Temperature("temperature", whole.Temperature, digits: 0),
            ]);
    }
}
