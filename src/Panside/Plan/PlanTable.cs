using Panside.Commands;
using Panside.Guide.Advice;
using Panside.Guide.Knowledge;
using Panside.Guide.Measures;
using Panside.Reckon;
using Panside.Reckoning.Batch;
using Panside.Reckoning.Ensemble;
using Panside.Reckoning.Quantities;
using Usual = Panside.Reckon.Inputs;

namespace Panside.Plan;

/// <summary>A plan's inputs and figures, in the form of a calculation.</summary>
internal sealed class PlanTable(Setting setting, ClockTime? lit, ClockTime? end)
{
    /// <summary>What is taken, beside clock times.</summary>
    public static IReadOnlyList<Input> Inputs { get; } =
    [
        Usual.Volume("sap", "the sap to boil, beside what fills the pan", "60 gal") with { Limits = new(1, 20_000, Unit.Liter) },
        Usual.Sugar("sugar", "the sugar of the sap", "2.1", 0.5, 20) with { IsOptional = true },
        Usual.Sugar("pan-sugar", "the sugar of what stands in the pan from the last boil", "12", 0, 66) with { IsOptional = true },
    ];

    /// <summary>What is taken where an input is left out, for the help.</summary>
    public static string Without(Input input) => input.Name switch
    {
        "sugar" => "; about 2 Brix unless said",
        "pan-sugar" => "; filled with the same sap unless said",
        _ => "",
    };

    /// <summary>The plan.</summary>
    public Calculation Calculation => new("plan", "a boil before it is lit")
    {
        Example = "--sap '60 gal' --end '9 pm'",
        Inputs = Inputs,
        Reckon = Reckon,
        Basis = new(
            $"{RigEnsemble.UsualCount} possible rigs of this size: the pan cold at its run depth, {setting.Rig.OfFire("fired at the rig's charge and interval until the tank comes to the reserve, then the last charge", "the burner on until the tank comes to the reserve, then off")}, and on until no pan boils",
            setting.Rig.IsBurner ? ["S1", "S3"] : ["S1", "S3", "S18"],
            "bands hold nine of ten such rigs; their spread has no source and is calibrated (docs/model.md)",
            setting.Rig.OfFire("pauses in firing, wet wood, filtering and canning; leaving comes after the boil is still, when the coals are down", "pauses, filtering and canning; leaving comes after the boil is still")),
    };

    /// <summary>The answer with all that it stands on among its inputs.</summary>
    public Answer With(Answer answer) => answer with
    {
        Inputs =
        [
            .. answer.Inputs,
            .. answer.Inputs.Any(pair => pair.Key == "sugar") ? [] : Standing("sugar", new() { Measure = new(2, Unit.Brix), IsUsual = true }),
            .. Clock("lit", lit), .. Clock("end", end),
            .. Standing("guidance", new() { Word = setting.Header.Guidance }), .. Standing("rig", new() { Word = setting.Rig.Name }),
        ],
    };

    private static KeyValuePair<string, Value>[] Standing(string name, Value value) => [KeyValuePair.Create(name, value)];

    private static KeyValuePair<string, Value>[] Clock(string name, ClockTime? time) =>
        time is { } told ? Standing(name, new() { Word = told.ToString() }) : [];

    private Result Reckon(Given given)
    {
        var plan = BoilPlan.Of(setting, given.Volume("sap"), Sugar("sugar"), Sugar("pan-sugar"));
        var boil = plan.Boil;
        var unit = given.Units.From(Syrup(boil.SugarKilograms.At(0.5))).Value < 1 ? given.Units.SmallVolume : given.Units.Preferred(Dimension.Volume);
        List<Figure> figures =
        [
            Volumes("syrup", boil.SugarKilograms),
            Volumes("of-it-drawn", boil.DrawnKilograms),
            Volumes("of-it-in-the-pan", boil.PanKilograms),
            Banded(Show.Number("hours", 0, 1, "h"), boil.StillMinutes, minutes => minutes / 60),
            .. setting.Rig.IsBurner ? Array.Empty<Figure>() : [given.Mass("wood", Wood(0.5), (Wood(0.05), Wood(0.95)), 2)],
            given.Volume("reserve", plan.Reserve, 2),
            Show.Word("reserve-says", plan.FloorSpeaks ? "common practice" : "the reckoning"),
            Banded(Show.Number(setting.Rig.OfFire("last-charge-after", "shut-off-after"), 0, 0, "min"), boil.LastChargeMinutes, PlanClock.ToFive),
        ];
        figures.AddRange(PlanClock.Figures(boil, setting.Rig.OfFire("last-charge", "shut-off"), lit, end));
        return new(figures, [.. Notes(given, plan), .. PlanClock.Notes(boil, lit, end)]);

        SugarContent? Sugar(string name) => given.Has(name) ? given.Sugar(name) : null;

        Mass Wood(double quantile) => Mass.FromKilograms(boil.WoodKilograms.At(quantile));

        Figure Volumes(string name, RankedValues kilograms) => Banded(
            new(name) { Unit = unit.Shown(), Code = unit.Code(), Digits = 1 }, kilograms, value => given.Units.From(Syrup(value), unit).Value);
    }

    private IEnumerable<string> Notes(Given given, BoilPlan plan)
    {
        yield return "Hours are from lighting until the boil is still. What stays in the pan is sugar that the next boil draws as syrup.";
        if (!given.Has("sugar"))
        {
            yield return "Nobody has measured the sap's sugar: about 2 Brix is assumed, a fifth more or less.";
        }

        if (plan.Boil.DrawnKilograms.At(0.5) < plan.Boil.SugarKilograms.At(0.5) / 50)
        {
            yield return "Likely there is no draw this time: the sugar goes to sweeten the pan.";
        }

        if (setting.Guidance == Guidance.Practised)
        {
            var cautious = CommonPractice.ReserveAtLastCharge(setting.Rig.WholeArea, cautious: true);
            yield return $"On the season's first shutdown keep {given.Volume("", cautious, 2).Text} at the least.";
        }

        if (setting.Rig.TankIsStated && given.Volume("sap") > setting.Rig.Tank)
        {
            yield return $"The tank holds {given.Volume("", setting.Rig.Tank, 2).Text}: refill it as it goes down.";
        }
    }

    private Volume Syrup(double kilograms) =>
        Portion.OfMass(Mass.FromKilograms(kilograms / setting.Rig.Target.MassFraction), setting.Rig.Target, Temperature.FromCelsius(20)).Volume;

    private static Figure Banded(Figure figure, RankedValues values, Func<double, double> shown) => figure with
    {
        Value = shown(values.At(0.5)),
        Band = (shown(values.At(0.05)), shown(values.At(0.95))),
    };
}
