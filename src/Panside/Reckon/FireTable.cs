using Panside.Guide.Measures;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Properties;
using Panside.Reckoning.Quantities;

namespace Panside.Reckon;

/// <summary>Wood, brick and time.</summary>
internal static class FireTable
{
    private const double LeastEfficiency = 0.18;
    private const double MostEfficiency = 0.43;

    private static readonly Input SapTemperature = Inputs.Temperature("temperature", "the temperature of the sap", "40F") with { Usual = "40 °F" };
    private static readonly Input SapBrix = Inputs.Sugar("brix", "the sugar of the sap", "2");
    private static readonly Input PanLength = new("pan-length", "the length of a flat pan", "48 in")
    {
        Dimension = Dimension.Length,
        Limits = new(0.1, 10, Unit.Meter),
        IsOptional = true,
        With = "pan-width",
    };

    /// <summary>The calculations.</summary>
    public static Group Group { get; } = new("Wood, brick and time",
    [
        new("wood", "the heat of wood as fired, and the wood for a gallon of syrup")
        {
            Example = "--brix 2 --species 'sugar maple' --moisture 20%",
            Inputs =
            [
                SapBrix,
                Inputs.Species,
                Inputs.Share("moisture", "water by mass of the bone-dry wood", "20%", 1, 150) with { Usual = "20 %" },
                Inputs.Volume("volume", "how much syrup", "1 gal") with { Usual = "1 gal" },
                SapTemperature,
                Inputs.Target,
                Inputs.Share("efficiency", "the part of the wood's heat that reaches the sap", "30%", 5, 85) with
                {
                    IsOptional = true,
                },
                Inputs.Altitude with { IsOptional = false, Usual = "0 ft" },
            ],
            Reckon = Wood,
            Basis = new("the heat that warms the sap and boils its water away, over that of the wood less the steam in its smoke",
                ["S1", "S3", "S7", "S17", "S18", "S35"],
                "1 to 150 % moisture of the dry mass, efficiency 5 to 85 %; flat pans over wood: 18 to 43 %; a cord to 15 % at best",
                "starting up and shutting down; your own rig's efficiency, until it is known"),
        },
        new("firebrick", "the heat of hot firebrick, and the water it could boil away")
        {
            Example = "--mass '120 lb' --temperature 1000F",
            Inputs =
            [
                Inputs.Mass("mass", "the mass of the brick", "120 lb"),
                Inputs.Temperature("temperature", "how hot it is", "1000F", 0, 1200),
                Inputs.Temperature("cooled-to", "what it cools to", "212F", 0, 1200) with { Usual = "212 °F" },
            ],
            Reckon = Brick,
            Basis = new("the specific heat of fireclay, summed over the temperatures", ["S20", "S1"],
                "0 to 1200 °C; exact at the table's rows from 400 °C; under that the first row is held, 0.5 % at 205 °C",
                "how much of it reaches the pan, which is only a part"),
        },
        new("hours", "the hours that a tank of sap takes")
        {
            Example = "--volume '60 gal' --brix 2 --rate '8 gal/h'",
            Inputs =
            [
                Inputs.Volume("volume", "how much sap", "60 gal"),
                SapBrix,
                new("rate", "the water that leaves the pan, by volume", "8 gal/h")
                {
                    Dimension = Dimension.VolumeRate,
                    Limits = new(0.1, 100_000, Unit.LiterPerHour),
                    IsOptional = true,
                },
                PanLength,
                PanLength with { Name = "pan-width", What = "the width of a flat pan", Example = "24 in", With = null },
                new("draft", "how the fire gets its air", "forced") { Words = ["natural", "forced"], Usual = "natural" },
                SapTemperature,
                Inputs.Target,
            ],
            OneOf = ["rate", "pan-length"],
            Reckon = Hours,
            Basis = new("the water to boil off, over the rate; for a pan 1 US gallon an hour a square foot, 1.5 with forced draft", ["S3", "S37"],
                "the rate of a pan is a first guess; flat pans were reported from under 1.1 to 1.33 gallons",
                "starting up, pauses in firing, and the shutdown"),
        },
    ]);

    private static Result Wood(Given given)
    {
        var species = FirewoodNames.FromName(given.Word("species"))!.Value;
        var moisture = given.Percent("moisture") / 100;
        var (target, brix) = (given.Sugar("target"), given.Sugar("brix"));
        if (brix.Brix <= 0)
        {
            throw new UnusableException("--brix: 0 Brix is plain water; no syrup comes of it.");
        }

        var boiling = BoilingWater.TemperatureAt(StandardAtmosphere.PressureAt(given.Length("altitude")));
        var syrup = Portion.OfVolume(given.Volume("volume"), target, Temperature.FromCelsius(20));
        var sap = Portion.OfMass(syrup.Sugar * (1 / brix.MassFraction), brix, given.Temperature("temperature"));
        var useful = WoodForSyrup.UsefulHeat(sap, target, boiling);
        var known = given.Has("efficiency");
        var wood = WoodForSyrup.MassFor(useful, species, moisture,
            known ? given.Percent("efficiency") / 100 : Math.Sqrt(LeastEfficiency * MostEfficiency));
        (Mass Low, Mass High)? band = known ? null : (
            WoodForSyrup.MassFor(useful, species, moisture, MostEfficiency),
            WoodForSyrup.MassFor(useful, species, moisture, LeastEfficiency));
        var one = Firewood.HeatAsFired(species, given.Units == UnitSystem.Metric ? Mass.FromKilograms(1) : Mass.FromPounds(1), moisture);
        return new(
            [
                given.Mass("wood", wood, band, 2),
                Show.Significant("cords", Cords(wood), 2) with { Band = band is { } b ? (Cords(b.Low), Cords(b.High)) : null },
                given.Volume("sap", sap.Volume),
                given.Heat("heat-to-the-sap", useful),
                given.Heat(given.Units == UnitSystem.Metric ? "heat-of-a-kilogram" : "heat-of-a-pound", one),
            ],
            known ? [] : ["The band is from the best to the poorest flat pan reported; what your rig burns in a season says more."]);

        double Cords(Mass mass) => WoodForSyrup.CordsOf(mass, species, moisture);
    }

    private static Result Brick(Given given)
    {
        var heat = Firebrick.HeatOnCooling(given.Mass("mass"), given.Temperature("temperature"), given.Temperature("cooled-to"));
        var boiling = Temperature.FromCelsius(100);
        var water = Mass.FromKilograms(Math.Max(0, heat.Megajoules) / Steam.LatentHeatMegajoulesPerKilogram(boiling));
        return new(
            [
                given.Heat("heat", heat),
                given.Volume("water-at-most", Portion.OfMass(water, default, boiling).Volume, 2),
            ],
            ["No more than that water can boil away by this brick; the coals come on top."]);
    }

    private static Result Hours(Given given)
    {
        var sap = Portion.OfVolume(given.Volume("volume"), given.Sugar("brix"), given.Temperature("temperature"));
        var known = given.Has("rate");
        var rate = known
            ? given.Rate("rate")
            : BoilingTime.TypicalEvaporation(
                Area.FromSquareMeters(given.Length("pan-length").Meters * given.Length("pan-width").Meters), given.Word("draft") == "forced");
        var time = BoilingTime.For(sap, given.Sugar("target"), rate);
        return new(
            [Show.Number("hours", time.TotalHours, 1, "h"), given.Rate("rate", rate)],
            known ? [] : ["A first guess: use your own rig's rate as soon as you know it."]);
    }
}
